package plainscale.render;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Role;
import plainscale.magnitude.Run;
import plainscale.magnitude.Words;
import plainscale.picture.MagnitudeRuler;
import plainscale.picture.Mark;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/**
 * Results as HTML in one medium. The elements and inline styles are those that a notebook front end
 * leaves in place when it sanitises: tables, images, simple text styles. Zeros that only keep the
 * place are thinner and paler: at 65 % ink black on white has a contrast of 7:1 (WCAG 2.2, 1.4.3
 * asks for 4.5:1).
 */
final class HtmlRenderer implements Result.Visitor<String> {
  private static final String PALE = "<span style=\"opacity:0.65\">";
  private static final String LEFT =
      "text-align:left;vertical-align:baseline;padding:0.2em 0.8em 0.2em 0";
  private static final String DIGITS =
      "text-align:%s;white-space:nowrap;vertical-align:baseline;padding:0.2em 0;font-size:120%%";

  private final Medium medium;
  private final Equation equation;

  HtmlRenderer(Medium medium) {
    this.medium = medium;
    this.equation = new Equation(medium.markup());
  }

  /** A row of the table in which neighbouring values stand. */
  String row(Result.Valued valued) {
    return cell(LEFT, math(equation.line(valued)))
        + cell(LEFT, muted(valued.label().description()));
  }

  @Override
  public String valued(Result.Valued valued) {
    return table("<tr>" + row(valued) + "</tr>");
  }

  static String table(String rows) {
    return "<table class=\"ps-values\" style=\"border:none;margin:0\"><tbody>"
        + rows
        + "</tbody></table>";
  }

  private static String digitCell(String align, String inner) {
    return "<td class=\"ps-digits\" style=\"" + DIGITS.formatted(align) + "\">" + inner + "</td>";
  }

  private static String cell(String style, String inner) {
    return "<td style=\"" + style + "\">" + inner + "</td>";
  }

  private String math(String inner) {
    return medium.mathematics().apply(inner);
  }

  private static String muted(String words) {
    return words.isEmpty() ? "" : "<i>" + Html.escape(words) + "</i>";
  }

  @Override
  public String written(Result.Written written) {
    Digits digits = Digits.of(written.shown().value());
    String label =
        equation
            .label(written.label())
            .map(l -> "<p>" + math(l) + " " + muted(written.label().description()) + "</p>")
            .orElse("");
    String words = Words.ENGLISH.spelled(written.shown().value()).text();
    return "<div class=\"ps-written\">"
        + label
        + "<p class=\"ps-digits\" style=\"font-size:120%\">"
        + digits(digits.runs())
        + unit(written.shown())
        + "</p>"
        + "<p><b>"
        + Html.escape(ValueWords.of(written.shown()))
        + "</b><br>"
        + Html.escape(words)
        + "</p>"
        + "<p style=\"font-size:90%\">"
        + ContrastText.figures(digits)
        + "</p></div>";
  }

  private String unit(Shown shown) {
    return shown.unit().text().isEmpty() ? "" : "&nbsp;" + math(medium.markup().unit(shown.unit()));
  }

  private static String digits(List<Run> runs) {
    return runs.stream().map(HtmlRenderer::run).collect(Collectors.joining());
  }

  private static String run(Run run) {
    String text = Html.escape(run.text());
    if (run.role() == Role.SIGNIFICANT) {
      return "<b>" + text + "</b>";
    }
    boolean pale = run.role() == Role.PLACEHOLDER || run.role() == Role.LEADING_ZERO;
    return pale ? PALE + text + "</span>" : text;
  }

  @Override
  public String contrasted(Result.Contrasted contrast) {
    String title =
        contrast.title().isEmpty() ? "" : "<p><b>" + Html.escape(contrast.title()) + "</b></p>";
    String perspective =
        ContrastText.perspective(contrast.ratio())
            .map(p -> "<p>" + Html.escape(p) + "</p>")
            .orElse("");
    return "<div class=\"ps-contrast\">"
        + title
        + "<table style=\"border:none;margin:0\"><tbody>"
        + side(contrast.first())
        + side(contrast.second())
        + "</tbody></table>"
        + "<p><b>"
        + Html.escape(ContrastText.comparison(contrast))
        + "</b></p>"
        + "<p>Ratio: "
        + digits(Digits.of(contrast.ratio().value()).runs())
        + power(contrast)
        + "</p>"
        + perspective
        + medium
            .pictures()
            .apply(
                MagnitudeRuler.of(
                    contrast.title(), List.of(mark(contrast.first()), mark(contrast.second()))))
        + "</div>";
  }

  private String power(Result.Contrasted contrast) {
    if (contrast.ratio().orders() < 3) {
      return "";
    }
    Shown ratio = new Shown(contrast.ratio().value(), null, UnitOfMeasure.ONE);
    return " = " + math(equation.value(ratio));
  }

  private static Mark mark(Result.Side side) {
    return new Mark(ContrastText.name(side), side.shown().value(), side.shown().unit().text());
  }

  /** Label above, digits parted at the decimal marker so that two rows align on it, words below. */
  private String side(Result.Side side) {
    Digits digits = Digits.of(side.shown().value(), DigitStyle.SI.uniform());
    int marker = marker(digits.runs());
    String whole = digits(digits.runs().subList(0, marker));
    String part = digits(digits.runs().subList(marker, digits.runs().size()));
    String row = digitCell("right", whole) + digitCell("left", part + unit(side.shown()));
    String below =
        Html.escape(ValueWords.of(side.shown()))
            + " <span style=\"font-size:90%\">("
            + ContrastText.figures(digits)
            + ")</span>";
    return wide("<b>" + Html.escape(ContrastText.name(side)) + "</b>")
        + "<tr>"
        + row
        + "</tr>"
        + wide(below);
  }

  private static String wide(String inner) {
    return "<tr><td colspan=\"2\" style=\"" + LEFT + "\">" + inner + "</td></tr>";
  }

  private static int marker(List<Run> runs) {
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).role() == Role.MARKER) {
        return i;
      }
    }
    return runs.size();
  }

  @Override
  public String narrated(Result.Narrated narrated) {
    return "<p class=\"ps-narrated\">"
        + narrated.pieces().stream().map(this::piece).collect(Collectors.joining())
        + "</p>";
  }

  private String piece(Result.Piece piece) {
    if (piece instanceof Result.Words words) {
      return Html.escape(words.text());
    }
    Result.Live live = (Result.Live) piece;
    return switch (live.style()) {
      case NUMBER -> math(equation.value(live.shown()));
      case DIGITS -> digits(Digits.of(live.shown().value()).runs()) + unit(live.shown());
      case WORDS -> Html.escape(ValueWords.of(live.shown()));
    };
  }

  @Override
  public String noted(Result.Noted noted) {
    return "<p class=\"ps-noted\"><i>" + Html.escape(noted.remark()) + "</i></p>";
  }

  @Override
  public String mistaken(Result.Mistaken mistaken) {
    List<String> lines = ProblemText.lines(mistaken.problem());
    Optional<String> repairs = lines.size() > 3 ? Optional.of(lines.get(3)) : Optional.empty();
    return "<div class=\"ps-mistaken\"><p><b>"
        + Html.escape(lines.get(0))
        + "</b></p><pre>"
        + Html.escape(lines.get(1) + "\n" + lines.get(2))
        + "</pre>"
        + repairs.map(r -> "<p>" + Html.escape(r) + "</p>").orElse("")
        + "</div>";
  }
}
