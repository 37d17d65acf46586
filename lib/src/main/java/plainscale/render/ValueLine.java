package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/** Lines of mathematics: {@code name = formula = value unit = the same with a prefix}. */
final class ValueLine {
  private final MathMarkup markup;
  private final Writing writing;

  ValueLine(MathMarkup markup, Writing writing) {
    this.markup = markup;
    this.writing = writing;
  }

  /** The whole line of a valued result. */
  String line(Result.Valued valued) {
    return join(sides(valued));
  }

  /**
   * The line in pieces that may stand below one another: {@code name = formula}, {@code = value},
   * {@code = with a prefix}.
   */
  List<String> pieces(Result.Valued valued) {
    List<String> sides = sides(valued);
    int first = Math.min(sides.size(), Math.max(1, labelled(valued.label()).size()));
    List<String> pieces = new ArrayList<>(List.of(join(sides.subList(0, first))));
    sides
        .subList(first, sides.size())
        .forEach(side -> pieces.add(markup.row(List.of(markup.sign("="), side))));
    return pieces;
  }

  private List<String> sides(Result.Valued valued) {
    List<String> sides = new ArrayList<>(labelled(valued.label()));
    sides.add(value(valued.shown()));
    valued.prefixed().ifPresent(p -> sides.add(value(p)));
    return sides;
  }

  /** Name and formula of a label, as far as they are there; empty if neither is. */
  Optional<String> label(Result.Label label) {
    List<String> sides = labelled(label);
    return sides.isEmpty() ? Optional.empty() : Optional.of(join(sides));
  }

  private List<String> labelled(Result.Label label) {
    List<String> sides = new ArrayList<>();
    label.name().map(markup::name).ifPresent(sides::add);
    label.formula().map(new FormulaWriter(markup, writing.digits())::write).ifPresent(sides::add);
    return sides;
  }

  private String join(List<String> sides) {
    List<String> parts = new ArrayList<>();
    for (String side : sides) {
      if (!parts.isEmpty()) {
        parts.add(markup.sign("="));
      }
      parts.add(side);
    }
    return markup.row(parts);
  }

  /** A value with its uncertainty, power of ten and unit. */
  String value(Shown shown) {
    NumberForm form = NumberForm.of(shown, writing.digits());
    List<String> parts = new ArrayList<>();
    parts.add(markup.number(form.value()));
    form.uncertainty().ifPresent(u -> parts.addAll(List.of(markup.sign("±"), markup.number(u))));
    boolean unit = !shown.unit().equals(UnitOfMeasure.ONE);
    boolean bracket = form.uncertainty().isPresent() && (unit || form.power().isPresent());
    List<String> all =
        new ArrayList<>(bracket ? List.of(markup.brackets(markup.row(parts))) : parts);
    form.power().ifPresent(p -> all.addAll(List.of(markup.sign("×"), tenToThe(p))));
    if (unit && !shown.unit().text().equals("°")) { // no space before ° (SI Brochure 5.4.3)
      all.add(markup.gap());
    }
    if (unit) {
      all.add(markup.unit(shown.unit()));
    }
    return markup.row(all);
  }

  private String tenToThe(int power) {
    return markup.power(markup.number("10"), markup.number(FormulaWriter.minus(power)));
  }
}
