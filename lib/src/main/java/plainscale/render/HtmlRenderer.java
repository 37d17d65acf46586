package plainscale.render;

import java.util.List;
import java.util.stream.Collectors;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Words;
import plainscale.sheet.Result;

/**
 * Results as HTML in one medium. The elements and inline styles are those that a notebook front end
 * leaves in place when it sanitises: tables, images, simple text styles.
 */
final class HtmlRenderer implements Result.Visitor<String> {
  private static final String CELL =
      "<td style=\"text-align:left;vertical-align:middle;padding:0.2em 0.8em 0.2em 0\">";

  private final Medium medium;
  private final Equation equation;

  HtmlRenderer(Medium medium) {
    this.medium = medium;
    this.equation = new Equation(medium.markup());
  }

  /** A row of the table in which neighbouring values stand. */
  String row(Result.Valued valued) {
    String line = equation.pieces(valued).stream().map(this::math).collect(Collectors.joining(" "));
    return "<tr>"
        + CELL
        + line
        + "</td>"
        + CELL
        + muted(valued.label().description())
        + "</td></tr>";
  }

  static String table(String rows) {
    return "<table class=\"ps-values\" style=\"border:none;margin:0\"><tbody>"
        + rows
        + "</tbody></table>";
  }

  @Override
  public String valued(Result.Valued valued) {
    return table(row(valued));
  }

  private String math(String inner) {
    return medium.mathematics().apply(inner);
  }

  private String muted(String words) {
    return words.isEmpty() ? "" : "<i>" + medium.words().apply(words) + "</i>";
  }

  @Override
  public String written(Result.Written written) {
    Digits digits = Digits.of(written.shown().value());
    String description = muted(written.label().description());
    String label =
        equation
            .label(written.label())
            .map(l -> "<p>" + math(l) + " " + description + "</p>")
            .orElse("");
    String spelled = Words.ENGLISH.spelled(written.shown().value()).text();
    return "<div class=\"ps-written\">"
        + label
        + "<p class=\"ps-digits\" style=\"font-size:120%\">"
        + DigitsHtml.of(digits.runs())
        + medium.unit(written.shown().unit())
        + "</p>"
        + "<p><b>"
        + medium.words().apply(ValueWords.of(written.shown()))
        + "</b><br/>"
        + medium.words().apply(spelled)
        + "</p>"
        + "<p style=\"font-size:90%\">"
        + ContrastText.figures(digits)
        + "</p></div>";
  }

  @Override
  public String contrasted(Result.Contrasted contrast) {
    return new ContrastHtml(medium, contrast).html();
  }

  @Override
  public String narrated(Result.Narrated narrated) {
    String text = narrated.pieces().stream().map(this::piece).collect(Collectors.joining());
    return "<p class=\"ps-narrated\">" + text + "</p>";
  }

  private String piece(Result.Piece piece) {
    if (piece instanceof Result.Words words) {
      return medium.words().apply(words.text());
    }
    Result.Live live = (Result.Live) piece;
    return switch (live.style()) {
      case NUMBER -> math(equation.value(live.shown()));
      case DIGITS ->
          DigitsHtml.of(Digits.of(live.shown().value()).runs()) + medium.unit(live.shown().unit());
      case WORDS -> medium.words().apply(ValueWords.of(live.shown()));
    };
  }

  @Override
  public String noted(Result.Noted noted) {
    return "<p class=\"ps-noted\"><i>" + medium.words().apply(noted.remark()) + "</i></p>";
  }

  @Override
  public String mistaken(Result.Mistaken mistaken) {
    List<String> lines = ProblemText.lines(mistaken.problem());
    String repairs =
        lines.stream()
            .skip(3)
            .map(r -> "<p>" + medium.words().apply(r) + "</p>")
            .collect(Collectors.joining());
    return "<div class=\"ps-mistaken\"><p><b>"
        + medium.words().apply(lines.get(0))
        + "</b></p><pre>"
        + Html.escape(lines.get(1) + "\n" + lines.get(2))
        + "</pre>"
        + repairs
        + "</div>";
  }
}
