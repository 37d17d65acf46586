package plainscale.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.fraction.Fraction;
import plainscale.quantity.Shown;
import plainscale.sheet.Ending;
import plainscale.sheet.Result;
import plainscale.sheet.Trend;

/** What becomes of quantities near a limit, one sentence for each, the same in every medium. */
final class LimitText {
  private static final Map<Fraction, String> RAISED =
      Map.of(Fraction.ONE, "", Fraction.TWO, "²", new Fraction(3), "³", new Fraction(4), "⁴");

  private static final Set<Trend.Kind> QUICKLY =
      Set.of(Trend.Kind.QUICKLY_ZERO, Trend.Kind.QUICKLY_GROWS);

  private final Result.Limited limited;

  LimitText(Result.Limited limited) {
    this.limited = limited;
  }

  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (Ending ending : limited.endings()) {
      sentences.add(sentence(ending));
      remark(ending).ifPresent(sentences::add);
    }
    return sentences;
  }

  private String sentence(Ending ending) {
    String what = TableText.name(ending.label());
    String name = limited.name();
    return switch (ending.kind()) {
      case NOT_CONTAINED -> "%s does not contain %s.".formatted(what, name);
      case SAME -> "%s is the same in all these rows.".formatted(what);
      case LIMIT -> "%s tends to %s (by numbers).".formatted(what, number(ending));
      case ZERO -> "%s goes to zero as %s.".formatted(what, power(ending));
      case QUICKLY_ZERO -> "%s goes to zero faster than by any power.".formatted(what);
      case GROWS -> "%s grows without bound%s: %s".formatted(what, below(ending), law(ending));
      case QUICKLY_GROWS ->
          "%s grows without bound%s, faster than by any power.".formatted(what, below(ending));
      case SLOWLY ->
          "%s %s without bound, slowly: every row changes it by %s, as a logarithm does."
              .formatted(what, number(ending).startsWith("−") ? "falls" : "grows", number(ending));
      case UNCLEAR -> "%s reaches no clear limit in these steps.".formatted(what);
    };
  }

  private String number(Ending ending) {
    return ending.shown().map(this::text).orElse("");
  }

  private String text(Shown shown) {
    return ValueText.number(shown, limited.table().writing());
  }

  private static String below(Ending ending) {
    return ending.negative() ? " below zero" : "";
  }

  private String law(Ending ending) {
    if (Double.isNaN(ending.times())) {
      return "what grows in it goes as %s.".formatted(power(ending));
    }
    String nearer = limited.goal().isPresent() ? "ten times nearer" : "ten times " + limited.name();
    return "%s makes it %s times as much (it goes as %s)."
        .formatted(nearer, rounded(ending.times()), power(ending));
  }

  /** Nearer rows that do not count, and why. */
  private Optional<String> remark(Ending ending) {
    if (QUICKLY.contains(ending.kind())) {
      return Optional.empty(); // it has left the numbers that a sheet computes with
    }
    String place = limited.goal().isPresent() ? "Nearer than at " : "Beyond ";
    String where =
        ending.lastGood().map(s -> place + limited.name() + " = " + text(s)).orElse("Here");
    return switch (ending.stop()) {
      case NONE -> Optional.empty();
      case NO_VALUE -> Optional.of(where + " it has no value.");
      case SCATTER ->
          Optional.of(where + " its values scatter or their digits run out; they do not count.");
    };
  }

  /** "1/(90° − θ)²": the distance to its power, or that of the name where there is no goal. */
  private String power(Ending ending) {
    double sign = limited.goal().isPresent() ? 1 : -1;
    double exponent = sign * ending.exponent();
    String size =
        ending
            .fraction()
            .map(f -> raised(f.abs()))
            .orElseGet(() -> "^" + rounded(Math.abs(exponent)));
    return (exponent < 0 ? "1/" : "") + distance() + size;
  }

  private static String raised(Fraction size) {
    boolean whole = size.getDenominator() == 1;
    String plain =
        whole
            ? "^" + size.getNumerator()
            : "^(" + size.getNumerator() + "/" + size.getDenominator() + ")";
    return RAISED.getOrDefault(size, plain);
  }

  /** How far the name is from its goal. */
  private String distance() {
    String name = limited.name();
    Optional<Shown> goal = limited.goal().filter(g -> g.value().signum() != 0);
    return goal.map(g -> "(" + (limited.above() ? beyond(g) : text(g) + " − " + name) + ")")
        .orElse(name);
  }

  private String beyond(Shown goal) {
    Shown size = new Shown(goal.value().abs(), null, goal.unit());
    return limited.name() + (goal.value().signum() < 0 ? " + " : " − ") + text(size);
  }

  private static String rounded(double value) {
    BigDecimal number = new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros();
    return number.scale() < -5 ? number.toString().replace("E+", "e") : number.toPlainString();
  }
}
