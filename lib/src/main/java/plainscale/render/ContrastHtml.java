package plainscale.render;

import java.util.List;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;
import plainscale.magnitude.Writing;
import plainscale.picture.DigitColumns;
import plainscale.picture.MagnitudeRuler;
import plainscale.picture.Mark;
import plainscale.picture.Marks;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;

/**
 * A contrast as HTML: both numbers in full digits on one decimal marker, the comparison, the ratio,
 * the ruler.
 */
final class ContrastHtml {
  private static final String PLAIN_TABLE =
      "<table style=\"border:none;margin:0\"><tbody>%s</tbody></table>";
  private static final String DIGITS =
      "<td class=\"ps-digits\" style=\"text-align:%s;white-space:nowrap;vertical-align:baseline;padding:0.2em 0;"
          + "font-size:120%%\">%s</td>";
  private static final String WIDE =
      "<tr><td colspan=\"2\" style=\"text-align:left;vertical-align:baseline;padding:0.2em 0.8em 0.2em 0\">%s</td></tr>";

  private final Medium medium;
  private final Result.Contrasted contrast;
  private final List<Mark> marks;

  ContrastHtml(Medium medium, Result.Contrasted contrast) {
    this.medium = medium;
    this.contrast = contrast;
    this.marks = List.of(mark(contrast.first()), mark(contrast.second()));
  }

  String html() {
    String perspective = ContrastText.perspective(contrast.ratio()).map(this::paragraph).orElse("");
    return "<div class=\"ps-contrast\">"
        + (medium.drawsDigits() ? drawn() : written())
        + "<p><b>"
        + medium.words().apply(ContrastText.comparison(contrast))
        + "</b></p>"
        + "<p>Ratio: "
        + DigitsHtml.of(Digits.of(contrast.ratio().value()).runs())
        + power()
        + "</p>"
        + perspective
        + medium
            .pictures()
            .apply(MagnitudeRuler.of("", Marks.of(marks).with(contrast.ratio()), Writing.USUAL))
        + "</div>";
  }

  private String paragraph(String text) {
    return "<p>" + medium.words().apply(text) + "</p>";
  }

  private static Mark mark(Result.Side side) {
    return new Mark(ContrastText.name(side), side.shown().value(), side.shown().unit().text());
  }

  private String drawn() {
    return medium.pictures().apply(DigitColumns.of(contrast.title(), marks));
  }

  private String written() {
    String title =
        contrast.title().isEmpty()
            ? ""
            : "<p><b>" + medium.words().apply(contrast.title()) + "</b></p>";
    return title + PLAIN_TABLE.formatted(side(contrast.first()) + side(contrast.second()));
  }

  /** Label above, digits parted at the decimal marker so that the rows align on it, words below. */
  private String side(Result.Side side) {
    Digits digits = Digits.of(side.shown().value(), DigitStyle.SI.uniform());
    int marker = marker(digits.runs());
    String whole = DigitsHtml.of(digits.runs().subList(0, marker));
    String part = DigitsHtml.of(digits.runs().subList(marker, digits.runs().size()));
    String uncertain = side.shown().uncertainty().isEmpty() ? "" : "; " + math(side.shown());
    String figures = " <span style=\"font-size:90%\">(" + ContrastText.figures(digits) + ")</span>";
    String words = medium.words().apply(ValueWords.of(side.shown())) + uncertain + figures;
    return WIDE.formatted("<b>" + medium.words().apply(ContrastText.name(side)) + "</b>")
        + "<tr>"
        + DIGITS.formatted("right", whole)
        + DIGITS.formatted("left", part + medium.unit(side.shown().unit()))
        + "</tr>"
        + WIDE.formatted(words);
  }

  private String math(Shown shown) {
    return medium.mathematics().apply(new Equation(medium.markup()).value(shown));
  }

  private static int marker(List<Run> runs) {
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).role() == Role.MARKER) {
        return i;
      }
    }
    return runs.size();
  }

  private String power() {
    boolean saysMore =
        !ValueText.number(contrast.times()).equals(Digits.of(contrast.times().value()).text());
    return saysMore ? " = " + math(contrast.times()) : "";
  }
}
