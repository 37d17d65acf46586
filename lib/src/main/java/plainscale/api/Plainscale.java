package plainscale.api;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plainscale.data.DataTable;
import plainscale.laws.Constant;
import plainscale.laws.Constants;
import plainscale.quantity.Quantity;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;

/**
 * Where a program begins; import it statically. Quantities are written as in the notation, and what
 * follows is methods.
 *
 * <pre>{@code
 * Quantity m = quantity("2.70(5) g");
 * Solution q = relation("k_e q^2/d^2 = m g_n tan(theta)").solveFor("q");
 * Quantity value = q.with("m", m).with("d", quantity("14.0 cm")).with("theta", quantity("4.5°"))
 *     .in("nC").value();
 * check(value.toString().equals("(67 ± 1) nC"));
 * }</pre>
 */
public final class Plainscale {
  private Plainscale() {}

  /**
   * A quantity as a given is written: {@code 2.70 ± 0.05 g}, {@code 2.70(5) g}, {@code 14.0 cm ± 2
   * %}, {@code 30°}, {@code 4.19e11}, or a list of readings {@code 1.21, 1.25, 1.19 s}. Its figures
   * are those that are written; with an uncertainty it is a measurement of its own, equal to no
   * other.
   *
   * @throws PhysicsException if the text is no quantity
   */
  public static Quantity quantity(String text) {
    return Quantities.of(text);
  }

  /**
   * Readings of one quantity in a unit: their mean, with its standard uncertainty (JCGM 100:2008,
   * 4.2).
   *
   * @throws PhysicsException if they are less than two, or if that is no unit
   */
  public static Quantity readings(String unit, double... values) {
    return Quantities.ofReadings(unit, values);
  }

  /**
   * A measured number of a unit with its standard uncertainty, as an instrument gives it to a
   * program: {@code measured(14.0, 0.5, "cm")}.
   *
   * @throws PhysicsException if that is no unit, or a number is not finite
   */
  public static Quantity measured(double value, double uncertainty, String unit) {
    return Quantities.of(value + " ± " + uncertainty + " " + unit);
  }

  /**
   * An exact amount of a unit: {@code exact(9, "m")}. It limits no figures.
   *
   * @throws PhysicsException if that is no unit, or the number is not finite
   */
  public static Quantity exact(double value, String unit) {
    return Quantities.exact(value, unit);
  }

  /** An exact number. */
  public static Quantity number(long value) {
    return Quantity.number(BigDecimal.valueOf(value));
  }

  /** A quantity with its name and what it is in words. */
  public static Named named(String name, Quantity quantity, String what) {
    return new Named(name, quantity, what);
  }

  /** A constant of nature by its usual symbol (CODATA 2022), as {@code constant("k_e")}. */
  public static Quantity constant(String symbol) {
    return Situation.NOTHING.value(symbol);
  }

  /** All constants, with what they are and where they are published. */
  public static List<Constant> constants() {
    return Constants.CODATA.symbols().stream()
        .flatMap(symbol -> Constants.CODATA.find(symbol).stream())
        .toList();
  }

  /**
   * Puts values before the reader at once, one after the other: in a notebook below the cell, in a
   * program on standard output.
   */
  public static void display(@Nullable Object... values) {
    for (Object value : values) {
      Displays.display(value);
    }
  }

  // Situations

  /** A situation in which nothing is given yet; the constants are there. */
  public static Situation situation() {
    return Situation.NOTHING;
  }

  /** A situation with a quantity under a name. */
  public static Situation given(String name, Quantity value) {
    return Situation.NOTHING.given(name, value);
  }

  /** A situation with a quantity under a name, and what it is in words. */
  public static Situation given(String name, Quantity value, String what) {
    return Situation.NOTHING.given(name, value, what);
  }

  /** A situation with a measured value, as a given is written. */
  public static Situation given(String name, String measured) {
    return Situation.NOTHING.given(name, measured);
  }

  /** A situation with a measured value, as a given is written, and what it is in words. */
  public static Situation given(String name, String measured, String what) {
    return Situation.NOTHING.given(name, measured, what);
  }

  /** A situation with a quantity that has its name with it. */
  public static Situation given(Named named) {
    return Situation.NOTHING.given(named);
  }

  /** A situation with an equation, as {@code relation("m g_n = T cos(θ)")}. */
  public static Situation relation(String equation) {
    return Situation.NOTHING.relation(equation);
  }

  /** A situation with an equation under a name. */
  public static Situation relation(String name, String equation) {
    return Situation.NOTHING.relation(name, equation);
  }

  /** A situation with an equation under a name, and what it says in words. */
  public static Situation relation(String name, String equation, String what) {
    return Situation.NOTHING.relation(name, equation, what);
  }

  // Laws and cautions

  /** A law by its name, as {@code law("pendulum")}. */
  public static LawUse law(String name) {
    return LawUse.of(name);
  }

  /** The laws that some words fit, the best first: {@code laws("how long does it swing")}. */
  public static Answer<LawResult.Found> laws(String words) {
    return Situation.NOTHING.ask("use " + Written.quoted(words), LawResult.Found.class);
  }

  /** The usual cautions of some hazards, as {@code caution("latex")}. */
  public static Answer<GuardResult.Cautioned> caution(String... hazards) {
    return Situation.NOTHING.caution(hazards);
  }

  // Magnitudes

  /** A quantity in the form that is chosen then: digits, words, roughly, a share. */
  public static Wording show(Quantity quantity) {
    Phrase phrase = new Phrase(Situation.NOTHING);
    String name = phrase.name(quantity);
    return Wording.ofValue(phrase.situation(), name);
  }

  /** Two to six quantities of one kind set against each other. */
  public static Contrast contrast(Quantity... quantities) {
    Sides sides = Sides.of(quantities);
    return Contrast.of(sides.situation(), sides.names()).unlabelled();
  }

  /** Two to six quantities of one kind set against each other, each with its own words. */
  public static Contrast contrast(Named... quantities) {
    Sides sides = Sides.of(quantities);
    return Contrast.of(sides.situation(), sides.names());
  }

  /** The landmarks just above and below a quantity. */
  public static Answer<Result.Placed> near(Quantity quantity) {
    Sides sides = Sides.of(quantity);
    return sides.situation().near(sides.names().get(0)).unlabelled();
  }

  /** The steps from a power of ten to digits and words. */
  public static Answer<Result.Expanded> expand(Quantity number) {
    Sides sides = Sides.of(number);
    return sides.situation().expand(sides.names().get(0)).unlabelled();
  }

  /** One to six quantities of one kind on a ruler in powers of ten, with landmarks. */
  public static Answer<Result.Pictured> ruler(Quantity... quantities) {
    Sides sides = Sides.of(quantities);
    return sides.situation().ruler(sides.names().toArray(String[]::new)).unlabelled();
  }

  /** One to six quantities of one kind on a ruler in powers of ten, each with its own words. */
  public static Answer<Result.Pictured> ruler(Named... quantities) {
    Sides sides = Sides.of(quantities);
    return sides.situation().ruler(sides.names().toArray(String[]::new));
  }

  /** Numbers as squares in squares, each holding a thousand of the next. */
  public static Answer<Result.Pictured> squares(Quantity... numbers) {
    Sides sides = Sides.of(numbers);
    return sides.situation().squares(sides.names().toArray(String[]::new)).unlabelled();
  }

  /** One to three numbers as dots. */
  public static Answer<Result.Pictured> dots(Quantity... numbers) {
    Sides sides = Sides.of(numbers);
    return sides.situation().dots(sides.names().toArray(String[]::new)).unlabelled();
  }

  // Pictures

  /** A body and what acts on it, which is said next. */
  public static ForcesOn forces(String body) {
    return Situation.NOTHING.forces(body);
  }

  /** A field by its name; its sources are said next. */
  public static FieldOf field(String name) {
    return Situation.NOTHING.field(name);
  }

  /** A place, or a velocity, by formulas: across to the right, and up. */
  public static At at(String x, String y) {
    return At.of(x, y);
  }

  /** A place, or a velocity: across to the right, and up. */
  public static At at(Quantity x, Quantity y) {
    return At.of(x, y);
  }

  // Class data

  /** A table from CSV text; its first row names the columns, with their units: {@code d (cm)}. */
  public static DataTable table(String name, String csv) {
    return TableOf.read(name, csv);
  }

  /** A table from lists; its columns are said next. */
  public static TableOf columns(String name) {
    return TableOf.of(name);
  }

  /** A situation with the columns of a table: statistics, histograms, fits and plots of them. */
  public static Situation data(DataTable table) {
    return Situation.NOTHING.data(table);
  }

  /** Two to six quantities that enter a statement together, under names that count them. */
  private record Sides(Situation situation, List<String> names) {
    private static final List<String> COUNTED =
        List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh");

    static Sides of(Quantity... quantities) {
      Situation situation = Situation.NOTHING;
      List<String> names = new ArrayList<>();
      for (Quantity quantity : quantities) {
        String name = COUNTED.get(Math.min(names.size(), COUNTED.size() - 1));
        situation = situation.given(name, quantity);
        names.add(name);
      }
      return new Sides(situation, names);
    }

    static Sides of(Named... quantities) {
      Situation situation = Situation.NOTHING;
      for (Named named : quantities) {
        situation = situation.given(named);
      }
      return new Sides(situation, Stream.of(quantities).map(Named::name).toList());
    }
  }
}
