package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;

/**
 * A contrast as HTML: the numbers in full digits on one decimal marker, the comparison, the ratio,
 * the ruler.
 */
final class ContrastHtml {
  private static final String WIDE =
      "<tr><td colspan=\"2\" style=\"text-align:left;vertical-align:baseline;"
          + "padding:0.2em 0.8em 0.2em 0\">%s</td></tr>";

  /** The width of a bold digit in em, on the safe side; a gap between groups is narrower. */
  private static final double DIGIT = 0.6;

  /** So many numbers, with their names and words, are on one screen. */
  private static final int TOGETHER = 2;

  private final Medium medium;
  private final Result.Contrasted contrast;
  private final ContrastText text;
  private final Writing writing;

  ContrastHtml(Medium medium, Result.Contrasted contrast) {
    this.medium = medium;
    this.contrast = contrast;
    this.text = new ContrastText(contrast);
    this.writing = contrast.writing();
  }

  String html() {
    return framed(numbers() + comparison() + picture());
  }

  /**
   * The numbers, two at a time, what their ratio says, and the ruler, each for itself. With each
   * goes how wide its digits are, in em, so that a page can make them as large as fits.
   */
  List<String> parts() {
    double numbers = width(Alignment.of(digits()));
    double ratio = width(Alignment.of(List.of(text.digits())));
    List<String> rows = rows();
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += TOGETHER) {
      List<String> some = rows.subList(from, Math.min(rows.size(), from + TOGETHER));
      parts.add(framed(sized(numbers, title() + Html.table(String.join("", some)))));
    }
    parts.add(framed(sized(ratio, title() + comparison())));
    parts.add(framed(picture()));
    return parts;
  }

  private static double width(Alignment alignment) {
    return DIGIT * (2 + alignment.wholeWidth() + alignment.partWidth());
  }

  private static String sized(double width, String part) {
    return "<div style=\"--ps-width:%s\">%s</div>".formatted(Math.round(width), part);
  }

  private static String framed(String part) {
    return "<div class=\"ps-contrast\">" + part + "</div>";
  }

  private String title() {
    return contrast.title().isEmpty()
        ? ""
        : "<p><b>" + medium.words().apply(contrast.title()) + "</b></p>";
  }

  private String numbers() {
    return title() + Html.table(String.join("", rows()));
  }

  private String comparison() {
    return "<p><b>"
        + medium.words().apply(text.comparison())
        + "</b></p>"
        + Html.table(ratio())
        + text.share().map(this::paragraph).orElse("")
        + text.perspective().map(this::paragraph).orElse("")
        + text.remarks().stream().map(this::paragraph).collect(Collectors.joining());
  }

  private String picture() {
    return medium.pictures().apply(Scenes.ruler(contrast));
  }

  private String paragraph(String words) {
    return "<p>" + medium.words().apply(words) + "</p>";
  }

  private List<Digits> digits() {
    return contrast.sides().stream()
        .map(side -> Digits.of(side.shown().value(), writing.digits()))
        .toList();
  }

  /** The rows of each side; all are aligned on one decimal marker. */
  private List<String> rows() {
    List<Alignment.Row> aligned = Alignment.of(digits()).rows();
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < aligned.size(); i++) {
      rows.add(side(contrast.sides().get(i), aligned.get(i)));
    }
    return rows;
  }

  private String ratio() {
    Alignment alone = Alignment.of(List.of(text.digits()));
    String power = text.power().isPresent() ? WIDE.formatted("= " + math(contrast.times())) : "";
    return WIDE.formatted(medium.words().apply(text.ratioLabel()))
        + DigitsHtml.rows(alone.rows().get(0), "")
        + power;
  }

  /** Label above, digits parted at the decimal marker so that the rows align on it, words below. */
  private String side(Result.Side side, Alignment.Row row) {
    Spelling words = ValueWords.of(side.shown(), side.exact(), writing);
    String uncertain = side.shown().uncertainty().isEmpty() ? "" : "; " + math(side.shown());
    String figures =
        " <span style=\"font-size:90%\">("
            + medium.words().apply(ContrastText.figures(row.digits(), side.exact(), writing))
            + ")</span>";
    String remark = words.remark().map(r -> "; " + medium.words().apply(r)).orElse("");
    return WIDE.formatted("<b>" + medium.words().apply(ContrastText.name(side)) + "</b>")
        + DigitsHtml.rows(row, medium.unit(side.shown().unit()))
        + WIDE.formatted(medium.words().apply(words.text()) + uncertain + figures + remark);
  }

  private String math(Shown shown) {
    return medium.mathematics().apply(new ValueLine(medium.markup(), writing).value(shown));
  }
}
