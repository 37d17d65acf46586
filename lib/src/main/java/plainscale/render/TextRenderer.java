package plainscale.render;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Words;
import plainscale.notation.Printer;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/** Results as plain text, for terminals and for front ends without HTML. */
final class TextRenderer implements Result.Visitor<String> {
  @Override
  public String valued(Result.Valued valued) {
    String value = ValueText.number(valued.shown());
    String also = valued.prefixed().map(p -> " = " + ValueText.number(p)).orElse("");
    String label = label(valued.label());
    String line = (label.isEmpty() ? "" : label + " = ") + value + also;
    return described(line, valued.label());
  }

  private static String label(Result.Label label) {
    return Stream.concat(label.name().stream(), label.formula().map(Printer::print).stream())
        .collect(Collectors.joining(" = "));
  }

  private static String described(String line, Result.Label label) {
    return label.description().isEmpty() ? line : line + "    (" + label.description() + ")";
  }

  @Override
  public String written(Result.Written written) {
    Digits digits = Digits.of(written.shown().value());
    String label = label(written.label());
    String head = described(label, written.label());
    return (head.isBlank() ? "" : head + "\n")
        + "  "
        + digits.text()
        + unit(written.shown().unit())
        + "\n"
        + "  "
        + ValueWords.of(written.shown())
        + "\n"
        + "  "
        + spelled(written)
        + "\n"
        + "  "
        + ContrastText.figures(digits);
  }

  private static String spelled(Result.Written written) {
    return Words.ENGLISH.spelled(written.shown().value()).text();
  }

  private static String unit(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "" : " " + unit.text();
  }

  @Override
  public String contrasted(Result.Contrasted contrast) {
    Alignment aligned =
        Alignment.of(
            List.of(
                Digits.of(contrast.first().shown().value()),
                Digits.of(contrast.second().shown().value())));
    String title = contrast.title().isEmpty() ? "" : contrast.title() + "\n";
    return title
        + side(contrast.first(), aligned.rows().get(0))
        + "\n"
        + side(contrast.second(), aligned.rows().get(1))
        + "\n"
        + ContrastText.comparison(contrast)
        + "\n"
        + "  ratio: "
        + ContrastText.digits(contrast)
        + ContrastText.perspective(contrast.ratio()).map(p -> "\n" + p).orElse("");
  }

  private static String side(Result.Side side, Alignment.Row row) {
    String digits = "  " + row.text() + unit(side.shown().unit());
    return digits
        + "   "
        + ContrastText.name(side)
        + "\n"
        + "    "
        + ValueWords.of(side.shown())
        + "; "
        + ContrastText.figures(row.digits())
        + ContrastText.uncertain(side).map(u -> "; " + u).orElse("");
  }

  @Override
  public String narrated(Result.Narrated narrated) {
    return narrated.pieces().stream().map(TextRenderer::piece).collect(Collectors.joining());
  }

  private static String piece(Result.Piece piece) {
    if (piece instanceof Result.Live live) {
      return ValueText.of(live.shown(), live.style());
    }
    return ((Result.Words) piece).text();
  }

  @Override
  public String noted(Result.Noted noted) {
    return "Note: " + noted.remark();
  }

  @Override
  public String mistaken(Result.Mistaken mistaken) {
    return String.join("\n", ProblemText.lines(mistaken.problem()));
  }
}
