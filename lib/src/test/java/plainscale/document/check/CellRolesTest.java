package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellRolesTest {
  private static String role(String role) {
    return "{\"role\": \"%s\"}".formatted(role);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "measurement | w = 2*3                  | it has no given and no data",
        "relation    | given m = 2 g            | it states no relation",
        "derivation  | relation a: x = 2        | nothing is derived in it",
        "result      | given m = 2 g            | it shows no result",
        "result      | locale de-CH             | it shows no result",
        "result      | use coulomb              | it shows no result",
        "contrast    | x = 2                    | no numbers are set against each other in it",
        "picture     | x = 2                    | it draws no picture",
        "question    | x = 2                    | it asks nothing",
      })
  void statementsThatDoNotFitTheirRoleAreTold(String role, String source, String missing) {
    assertEquals(
        List.of(
            "warning c1:0 The role of the cell is %s, and %s. → give it another role"
                .formatted(role, missing)),
        new TestLesson().code(source, role(role)).found("role"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "measurement | given m = 2 g",
        "relation    | relation a: x = 2",
        "relation    | w = 2*3",
        "relation    | use coulomb",
        "derivation  | w = 2*3",
        "result      | 2*3",
        "result      | say \"{2*3}\"",
        "contrast    | contrast 2 with 3",
        "contrast    | expand 10^9",
        "picture     | ruler 1 m with 3 m",
        "question    | expand 10^9 with boxes",
        "question    | say \"How large is it?\"",
        "question    | F = ?",
        "measurement | given m = ? g",
        "caution     | say \"Mind your eyes.\"",
        "text        | say \"Words.\"",
      })
  void statementsThatFitAreNotTold(String role, String source) {
    assertEquals(List.of(), new TestLesson().code(source, role(role)).found("role"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "picture  | ![balls](attachment:a.png)",
        "question | What is it?",
        "question | 1. Draw it.",
        "measurement | Measure the mass.",
        "derivation  | From the relations follows the charge.",
      })
  void aTextMayHaveTheRoleOfWhatItIntroduces(String role, String source) {
    assertEquals(List.of(), new TestLesson().prose(source, role(role)).found("role"));
  }

  @Test
  void aTextWithoutAQuestionOrAPictureIsTold() {
    assertEquals(
        List.of(
            "warning c1:0 The role of the cell is question, and it asks nothing. → give it another role",
            "warning c2:0 The role of the cell is picture, and it shows no picture. → give it another role"),
        new TestLesson()
            .prose("Draw it.", role("question"))
            .prose("A [link](a.png).", role("picture"))
            .found("role"));
  }

  @Test
  void linesToWriteOnAskForAnAnswer() {
    assertEquals(
        List.of(),
        new TestLesson().prose("Draw it.", "{\"role\": \"question\", \"lines\": 4}").found("role"));
  }

  @Test
  void anAnswerStandsBehindItsQuestion() {
    TestLesson lesson =
        new TestLesson()
            .prose("It is nine.", role("answer"))
            .prose("What is it?")
            .prose("Nine.", role("answer"));
    assertEquals(
        List.of(
            "warning c1:0 The role of the cell is answer, and no question stands before it. → put it behind its question, or give it another role"),
        lesson.found("role"));
  }

  @Test
  void cellsWithoutARoleOrWithOneThatIsNoneAreLeftAlone() {
    assertEquals(
        List.of(),
        new TestLesson().code("x = 2").code("x", role("measurment")).prose("T").found("role"));
  }
}
