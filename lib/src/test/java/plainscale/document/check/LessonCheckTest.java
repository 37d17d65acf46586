package plainscale.document.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All rules together. */
class LessonCheckTest {
  private static final int MANY = 10_000;

  @Test
  void everyRuleIsRunAndHasANameOfItsOwn() {
    List<Rule> rules = LessonCheck.RULES;
    Set<Class<?>> run = rules.stream().map(Object::getClass).collect(Collectors.toSet());
    assertEquals(Set.copyOf(Arrays.asList(Rule.class.getPermittedSubclasses())), run);
    Set<String> names = rules.stream().map(Rule::name).collect(Collectors.toSet());
    assertEquals(rules.size(), names.size());
    names.forEach(name -> assertTrue(name.matches("[a-z]+(-[a-z]+)*"), name));
  }

  @Test
  void findingsComeInTheOrderOfCellsAndLines() {
    TestLesson lesson =
        new TestLesson()
            .head("{\"minutes\": \"45\"}")
            .code("given a = 2.5\ngiven b = 3 m \"length\"\nc = b*z")
            .prose("Words.", "{\"lines\": 101}");
    assertEquals(
        List.of(
            "metadata :0",
            "title :0",
            "given-unit c1:1",
            "given-description c1:1",
            "unused-given c1:1",
            "mistake c1:3",
            "unused-result c1:3",
            "metadata c2:0"),
        lesson.findings().stream().map(f -> f.rule() + " " + f.cell() + ":" + f.line()).toList());
  }

  @Test
  void aLessonInOrderHasNoFindings() {
    TestLesson lesson =
        new TestLesson()
            .head(
                "{\"format\": 1, \"title\": \"T\", \"level\": \"school\", \"minutes\": 30, \"aims\": [\"weigh\"], \"hazards\": [\"loud_sound\"]}")
            .prose("# T", "{\"role\": \"text\"}")
            .prose("Mind your ears. Local rules decide.", "{\"role\": \"caution\"}")
            .code("given m = 2.70 g \"mass\"", "{\"role\": \"measurement\", \"minutes\": 10}")
            .code("w = m g_n \"weight\"", "{\"role\": \"result\", \"minutes\": 20}")
            .code("say \"It weighs {w}.\"");
    assertEquals(List.of(), lesson.findings());
  }

  @Test
  void tenThousandFindingsAreAllThere() {
    String aims = IntStream.range(0, MANY).mapToObj(i -> "0").collect(Collectors.joining(","));
    List<Finding> findings =
        new TestLesson().head("{\"aims\": [" + aims + "]}").prose("# T").findings();
    assertEquals(MANY, findings.size());
    assertEquals(
        "item 10000 of aims is 0, a number; a text belongs there.",
        findings.get(MANY - 1).sentence());
  }

  @Test
  void wrongTypesEverywhereAreFindingsAndNeverMore() {
    for (String wrong : List.of("null", "3", "\"x\"", "[]", "[1]", "{\"a\": 1}", "{}")) {
      String head =
          Stream.of(
                  "format",
                  "title",
                  "level",
                  "minutes",
                  "aims",
                  "hazards",
                  "locale",
                  "scale",
                  "constants",
                  "twin",
                  "role",
                  "lines",
                  "blank",
                  "alternative")
              .map(field -> "\"%s\": %s".formatted(field, wrong))
              .collect(Collectors.joining(", ", "{", "}"));
      List<Finding> findings = new ArrayList<>();
      findings.addAll(new TestLesson().head(wrong).prose("# T", wrong).findings());
      findings.addAll(new TestLesson().head(head).prose("# T", head).code("1", head).findings());
      assertFalse(findings.isEmpty(), wrong);
      findings.forEach(finding -> assertFalse(finding.sentence().isBlank(), wrong));
    }
  }

  @Test
  void emptyCellsHaveNothingToFind() {
    TestLesson lesson =
        new TestLesson().head("{\"title\": \"T\"}").prose("").code(" \n").code("# only a comment");
    assertEquals(List.of(), lesson.findings());
  }
}
