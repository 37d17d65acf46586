package plainscale.render;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.fraction.Fraction;
import plainscale.magnitude.Writing;
import plainscale.notation.Printer;
import plainscale.sheet.Result;

/** What-ifs as tables of texts and as sentences, the same in every medium. */
final class TableText {
  private static final Map<Result.Row.Why, String> WHY =
      Map.of(
          Result.Row.Why.CHANGED, "changed",
          Result.Row.Why.FOLLOWS, "",
          Result.Row.Why.CANCELS, "stays: the change cancels",
          Result.Row.Why.NOT_CONTAINED, "stays: it does not contain the change");

  private TableText() {}

  /** The relations that were changed, before and after. */
  static List<String> relations(Result.Compared compared) {
    return compared.relations().stream()
        .map(
            r ->
                "%s: %s   instead of   %s".formatted(r.name(), r.after().text(), r.before().text()))
        .toList();
  }

  static List<List<String>> of(Result.Compared compared) {
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("", "before", "after", "factor", ""));
    for (Result.Row row : compared.rows()) {
      table.add(
          List.of(
              name(row.label()),
              ValueText.number(row.before(), compared.writing()),
              ValueText.number(row.after(), compared.writing()),
              row.factor().map(f -> factor(f, compared.writing())).orElse(""),
              WHY.getOrDefault(row.why(), "")));
    }
    return table;
  }

  private static String factor(BigDecimal factor, Writing writing) {
    boolean one = factor.compareTo(BigDecimal.ONE) == 0;
    return one ? "× 1" : "× " + writing.words().digits(factor).text();
  }

  static List<List<String>> of(Result.Varied varied) {
    List<List<String>> table = new ArrayList<>();
    table.add(varied.head().stream().map(TableText::name).toList());
    varied
        .rows()
        .forEach(
            row ->
                table.add(
                    row.stream()
                        .map(
                            cell ->
                                cell.map(shown -> ValueText.number(shown, varied.writing()))
                                    .orElse("–"))
                        .toList()));
    return table;
  }

  static String name(Result.Label label) {
    return label.name().or(() -> label.formula().map(Printer::print)).orElse("");
  }

  /** "q grows as d^(3/2): twice d makes it 2.83 times as much." */
  static String sentence(Result.Dependence dependence) {
    String what = name(dependence.label());
    String on = dependence.on();
    Optional<Fraction> exponent = dependence.exponent();
    if (exponent.isPresent() && exponent.get().equals(Fraction.ZERO)) {
      return "%s does not depend on %s.".formatted(what, on);
    }
    String twice =
        Double.isNaN(dependence.twice())
            ? "for twice %s it has no value.".formatted(on)
            : "twice %s makes it %s times as much.".formatted(on, rounded(dependence.twice()));
    return exponent
        .map(e -> "%s goes as %s: %s".formatted(what, power(on, e), twice))
        .orElseGet(
            () ->
                "%s follows %s by no single power; here 1 %% more of %s makes it %s %% %s, and %s"
                    .formatted(
                        what,
                        on,
                        on,
                        rounded(Math.abs(dependence.local())),
                        dependence.local() < 0 ? "less" : "more",
                        twice));
  }

  private static String power(String name, Fraction exponent) {
    if (exponent.compareTo(Fraction.ZERO) < 0) {
      return "1/" + power(name, exponent.negate());
    }
    if (exponent.equals(Fraction.ONE)) {
      return name;
    }
    boolean whole = exponent.getDenominator() == 1;
    return whole
        ? name + "^" + exponent.getNumerator()
        : name + "^(" + exponent.getNumerator() + "/" + exponent.getDenominator() + ")";
  }

  private static String rounded(double value) {
    return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
