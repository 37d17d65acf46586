package plainscale.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing is guessed: what can be read in two ways is refused, with the place and both repairs. */
class RefusalTest {
  private static final Names NAMES = KnownNames.of("a", "b", "c", "v", "m", "t", "mass");

  static Problem problem(String source, Names names) {
    List<Problem> problems =
        assertThrows(ProblemException.class, () -> Notation.parse(source, names), source)
            .problems();
    assertEquals(1, problems.size(), problems::toString);
    return problems.get(0);
  }

  private static void assertRefused(String source, String place, String sentence, String repairs) {
    Problem problem = problem(source, NAMES);
    Span span = problem.span();
    assertEquals(sentence, problem.sentence());
    assertEquals(place, source.substring(span.start(), span.end()));
    assertEquals(repairs, String.join(" or ", problem.repairs()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 m       | 2 m     | “2 m” is doubtful: m is a quantity of this sheet and also the unit metre. | 2*m (the quantity) or 2 [m] (the unit)",
        "2m        | 2m      | “2m” is doubtful: m is a quantity of this sheet and also the unit metre. | 2*m (the quantity) or 2 [m] (the unit)",
        "3.0 t v   | 3.0 t   | “3.0 t” is doubtful: t is a quantity of this sheet and also the unit tonne. | 3.0*t (the quantity) or 3.0 [t] (the unit)",
        "2 kg m    | 2 kg m  | “2 kg m” is doubtful: m is a quantity of this sheet and also the unit metre. | 2 [kg]*m (the quantity) or 2 [kg m] (the unit)"
      })
  void aUnitThatIsAlsoAQuantityIsDoubtful(
      String source, String place, String sentence, String repairs) {
    assertRefused(source, place, sentence, repairs);
  }

  // ISO 80000-2:2019, 2-10.6: no multiplication or division sign after a solidus without brackets.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a/b c       | (a/b)*c         | a/(b*c)",
        "a/b*c       | (a/b)*c         | a/(b*c)",
        "a/b·c       | (a/b)*c         | a/(b*c)",
        "a/b/c       | (a/b)/c         | a/(b/c)",
        "v a/b c     | (v a/b)*c       | v a/(b*c)",
        "a/b (b + c) | (a/b)*(b + c)   | a/(b*(b + c))",
        "(a + b)/c v | ((a + b)/c)*v   | (a + b)/(c*v)",
        "1/v a       | (1/v)*a         | 1/(v*a)",
        "1/2/v       | (1/2)/v         | 1/(2/v)"
      })
  void nothingFollowsWhatIsBelowTheLine(String source, String one, String other) {
    String sentence = "“" + source + "” is doubtful: what is below the line?";
    assertRefused(source, source, sentence, one + " or " + other);
  }

  @Test
  void aFractionOfPlainNumbersIsAFactor() {
    Statement.Show show = Notation.parseExpression("1/2 m v^2", NAMES);
    assertEquals("(((1/2)*m)*(v^2))", Bracketed.text(show.value()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2,70      | 2,70 | A number is written with a decimal point here, not a comma. | 2.70",
        "a + 3,5 v | 3,5  | A number is written with a decimal point here, not a comma. | 3.5",
        "1.2.3     | 1.2. | This number has two decimal points. |",
        ".5        | .    | A number below one begins with 0. | 0.5",
        "8 700     | 8 700 | A number after a space is doubtful. | 8*700 or 8700",
        "2 3       | 2 3  | A number after a space is doubtful. | 2*3 or 2^3",
        "a 2       | a 2  | A number after a space is doubtful. | a*2 or a^2",
        "(a + b) 2 | (a + b) 2 | A number after a space is doubtful. | (a + b)*2 or (a + b)^2",
        "2.70(5)   | 2.70(5) | Brackets right after a number mean its uncertainty, and that belongs to a given. | 2.70*5",
        "2 ± 1     | ±    | An uncertainty (±) belongs to a given, not into a formula. | given x = … ± …, then use x here",
        "2 +- 1    | +    | An uncertainty (±) belongs to a given, not into a formula. | given x = … ± …, then use x here"
      })
  void doubtfulNumbersAreRefused(String source, String place, String sentence, String repairs) {
    assertRefused(source, place, sentence, repairs == null ? "" : repairs);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "log(2)    | log  | “log” is doubtful: which base? | ln(…) or log10(…)",
        "sin 30    | sin  | sin needs brackets around what it is taken of. | sin(30)",
        "a sqrt b  | sqrt | sqrt needs brackets around what it is taken of. | sqrt(b)",
        "tan       | tan  | tan needs brackets around what it is taken of. | tan(…)",
        "sinus(2)  | sinus | I know no function “sinus”. | sin(…) or sinh(…)",
        "expo(2)   | expo | I know no function “expo”. | exp(…)"
      })
  void functionsAreCalledByTheirNamesWithBrackets(
      String source, String place, String sentence, String repairs) {
    assertRefused(source, place, sentence, repairs);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "givn x = 2 g  | givn | I know no word “givn”. | given",
        "shw m         | shw  | I know no word “shw”. | show",
        "contrst a with b | contrst | I know no word “contrst”. | contrast",
        "sya \"a\"     | sya  | I know no word “sya”. | say",
        "constant textbook | constant | I know no word “constant”. | constants",
        "say a         | a    | Here there is “a”; a text in quotation marks belongs here. |",
        "contrast a b  | ''   | Here the line ends; “with” and a second quantity belong here. |",
        "given x 2 g   | 2    | After the name comes = and the measured value. | given x = …",
        "given 2 = 2   | 2    | Here there is “2”; a name belongs here, as in: given m = 2.70 g. |",
        "sin = 2       | sin  | “sin” is a word of the notation. | sin_1",
        "a + b = c     | a + b = | Left of = stands one name. | name = formula",
        "show a to 0 figures | 0 | A number of figures runs from 1 to 30. | to 2 figures",
        "show a to 31 figures | 31 | A number of figures runs from 1 to 30. | to 2 figures",
        "show a to 2   | ''   | Here the line ends; “figures” belongs here. |",
        "x =           | ''   | Here the line ends; a number, a name or a bracket belongs here. |"
      })
  void wordsOfTheNotationAreHeldToTheirPlaces(
      String source, String place, String sentence, String repairs) {
    assertRefused(source, place, sentence, repairs == null ? "" : repairs);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(a + b    | (  | This bracket is not closed. | add ) where the part ends",
        "a + b)    | )  | This bracket closes nothing that was opened. | delete it",
        "2 [m      | [  | This square bracket is not closed; a unit in brackets ends with ]. |",
        "[m]       | [  | A unit in brackets needs a number or a quantity before it. | 1 [m]",
        "a ; b     | ;  | A line holds one statement. | begin a new line instead of ;",
        "a § b     | §  | I cannot read “§” here. | delete it",
        "say \"{a\" | {  | This brace is not closed. | add } after the value",
        "x = 1 \"a | \"a | This text is not closed: a \" is missing at its end. |"
      })
  void whatIsOpenedIsClosed(String source, String place, String sentence, String repairs) {
    assertRefused(source, place, sentence, repairs == null ? "" : repairs);
  }

  @Test
  void everyLineThatCannotBeReadIsTold() {
    ProblemException all =
        assertThrows(ProblemException.class, () -> Notation.parse("a/b c\na + b\n2,5\n(a", NAMES));
    assertEquals(List.of(1, 3, 4), all.problems().stream().map(Problem::line).toList());
  }
}
