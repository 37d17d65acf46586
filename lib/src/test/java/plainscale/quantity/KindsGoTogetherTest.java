package plainscale.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static plainscale.quantity.Quantities.exact;
import static plainscale.quantity.Quantities.q;
import static plainscale.quantity.Quantities.text;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.units.Kind;
import plainscale.units.UnitParser;

/** What may be added, what an angle is, and the sentences where something does not fit. */
class KindsGoTogetherTest {

  private static QuantityException refused(Executable operation) {
    return assertThrows(QuantityException.class, operation);
  }

  @Test
  void metresAreNotAddedToSeconds() {
    QuantityException e = refused(() -> q("2.0 m").plus(q("3.0 s")));
    assertEquals(
        "You are adding metres to seconds: a length and a time do not go together.", e.sentence());
    assertEquals(
        "You are subtracting a plain number from kilograms: a plain number and a mass do not go"
            + " together.",
        refused(() -> q("2.0 kg").minus(q("1"))).sentence());
  }

  @Test
  void anAngleIsNotAPlainNumber() {
    QuantityException e = refused(() -> q("30 °").plus(q("1")));
    assertEquals(
        List.of(
            "give the number its unit: [rad] or [°]",
            "make a plain number of the angle: angle/(1 [rad])"),
        e.repairs());
    assertEquals(
        "sin takes an angle, and this is a plain number: degrees or radians?",
        refused(() -> q("30").apply(ElementaryFunction.SIN)).sentence());
    assertEquals(
        "ln takes a plain number; this is an angle.",
        refused(() -> q("30 °").apply(ElementaryFunction.LN)).sentence());
    assertEquals(
        "sin takes an angle; this is a length.",
        refused(() -> q("30 m").apply(ElementaryFunction.SIN)).sentence());
  }

  @Test
  void anAngleTimesANumberIsAnAngleAndTimesALengthIsALength() {
    assertEquals(Kind.ANGLE, q("30 °").times(q("2")).kind());
    assertEquals(Kind.ANGLE, q("2").times(q("30 °")).kind());
    assertEquals(Kind.ANGLE, q("30 °").over(q("2")).kind());
    assertEquals("1.5 m", text(q("3.0 m").times(q("0.50 rad"))));
    assertEquals(Kind.NUMBER, q("30 °").over(q("15 °")).kind());
    assertEquals(Kind.NUMBER, q("30 °").over(exact("1", "rad")).kind());
  }

  @Test
  void anInverseFunctionGivesAnAngle() {
    Quantity angle = q("0.5").apply(ElementaryFunction.ASIN);
    assertEquals("30 °", text(angle));
    assertEquals("0.523599 rad", text(angle.in(UnitParser.parse("rad"))));
    assertEquals("0.5", text(angle.apply(ElementaryFunction.SIN)));
  }

  @ParameterizedTest
  @CsvSource({
    "2.0 m, s, This is a length; s measures a time.",
    "2.0 N, J, This is a force; J measures an energy.",
    "3, °, This is a plain number; ° measures an angle."
  })
  void aUnitOfAnotherKindIsRefused(String quantity, String unit, String sentence) {
    assertEquals(sentence, refused(() -> q(quantity).in(UnitParser.parse(unit))).sentence());
  }

  @Test
  void anExponentIsAPlainNumberAndExactWhereThereIsAUnit() {
    assertEquals(
        "An exponent is a plain number; this one is a length.",
        refused(() -> q("2").power(q("3 m"))).sentence());
    assertEquals(QuantityException.Fault.UNIT, refused(() -> q("2 m").power(q("2±0.1"))).fault());
    assertEquals(QuantityException.Fault.UNIT, refused(() -> q("2 m").power(q("0.123"))).fault());
  }

  @Test
  void whatHasNoValueIsRefused() {
    assertEquals("You are dividing by zero.", refused(() -> q("1").over(q("0 m"))).sentence());
    refused(() -> q("0").power(q("0")));
    refused(() -> q("0").power(q("-1")));
    refused(() -> q("-8").power(q("0.5")));
    assertEquals(
        QuantityException.Fault.LIMIT, refused(() -> q("1e200").times(q("1e200"))).fault());
    assertEquals(
        QuantityException.Fault.LIMIT, refused(() -> q("1e-200").times(q("1e-200"))).fault());
    assertEquals(QuantityException.Fault.LIMIT, refused(() -> q("10").power(q("301"))).fault());
  }
}
