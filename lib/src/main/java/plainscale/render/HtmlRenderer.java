package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Writing;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;

/**
 * Results as HTML in one medium. The elements and inline styles are those that a notebook front end
 * leaves in place when it sanitises: tables, images, simple text styles.
 */
final class HtmlRenderer implements Result.Visitor<String> {
  private static final String CELL =
      "<td style=\"text-align:left;vertical-align:middle;padding:0.2em 0.8em 0.2em 0\">";

  private final Medium medium;

  HtmlRenderer(Medium medium) {
    this.medium = medium;
  }

  private ValueLine equation(Writing writing) {
    return new ValueLine(medium.markup(), writing);
  }

  /** A row of the table in which neighbouring values stand. */
  String row(Result.Valued valued) {
    String line =
        equation(valued.writing()).pieces(valued).stream().map(this::math).collect(joining(" "));
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
    Result.Numeral number = written.numeral();
    Alignment alone = Alignment.of(List.of(ValueText.digits(number)));
    String digits = DigitsHtml.rows(alone.rows().get(0), medium.unit(number.shown().unit()));
    List<String> lines = WrittenText.lines(number);
    return "<div class=\"ps-written\">"
        + label(written.label(), number.writing())
        + Html.table(digits)
        + "<p><b>"
        + medium.words().apply(lines.get(0))
        + "</b>"
        + lines.stream()
            .skip(1)
            .map(line -> "<br/>" + medium.words().apply(line))
            .collect(joining())
        + "</p></div>";
  }

  String label(Result.Label label, Writing writing) {
    String description = muted(label.description());
    return equation(writing)
        .label(label)
        .map(l -> "<p>" + math(l) + " " + description + "</p>")
        .orElse(description.isEmpty() ? "" : "<p>" + description + "</p>");
  }

  @Override
  public String contrasted(Result.Contrasted contrast) {
    return new ContrastHtml(medium, contrast).html();
  }

  @Override
  public String stated(Result.Stated stated) {
    FormulaWriter formula = new FormulaWriter(medium.markup(), stated.writing().digits());
    return "<p class=\"ps-stated\">"
        + medium.words().apply(stated.name())
        + ": "
        + math(formula.write(stated.equation()))
        + " "
        + muted(stated.description())
        + "</p>";
  }

  @Override
  public String derived(Result.Derived derived) {
    return new DerivedHtml(medium, derived).html();
  }

  @Override
  public String compared(Result.Compared compared) {
    return lines(TableText.relations(compared)) + grid(TableText.of(compared));
  }

  String lines(List<String> lines) {
    return lines.stream()
        .map(line -> "<p>" + medium.words().apply(line) + "</p>")
        .collect(joining());
  }

  @Override
  public String sideBySide(Result.SideBySide sideBySide) {
    return Sections.of(new CasesText(sideBySide)).html(medium, "ps-cases");
  }

  @Override
  public String forces(Result.Forces forces) {
    return Sections.of(new ForcesText(forces)).html(medium, "ps-forces")
        + medium.pictures().apply(ForcePictures.of(forces));
  }

  @Override
  public String paired(Result.Paired paired) {
    String pictures = ForcePictures.of(paired).stream().map(medium.pictures()).collect(joining());
    return "<div class=\"ps-paired\">" + pictures + lines(PairsText.lines(paired)) + "</div>";
  }

  @Override
  public String field(FieldResult result) {
    return result.accept(new FieldText()).html(medium);
  }

  @Override
  public String varied(Result.Varied varied) {
    return grid(TableText.of(varied));
  }

  @Override
  public String limited(Result.Limited limited) {
    return grid(TableText.of(limited.table())) + lines(new LimitText(limited).sentences());
  }

  String grid(List<List<String>> rows) {
    return rows.stream()
        .map(
            row ->
                row.stream()
                    .map(cell -> CELL + medium.words().apply(cell) + "</td>")
                    .collect(joining("", "<tr>", "</tr>")))
        .collect(
            joining("", "<table class=\"ps-grid\" style=\"margin:0\"><tbody>", "</tbody></table>"));
  }

  @Override
  public String dependence(Result.Dependence dependence) {
    return "<p>" + medium.words().apply(TableText.sentence(dependence)) + "</p>";
  }

  @Override
  public String budgeted(Result.Budgeted budgeted) {
    return new BudgetHtml(medium, budgeted).html();
  }

  @Override
  public String placed(Result.Placed placed) {
    List<String> lines = new PlacedText(placed).lines();
    return "<div class=\"ps-placed\">"
        + label(placed.side().label(), placed.writing())
        + lines.stream().map(line -> "<p>" + medium.words().apply(line) + "</p>").collect(joining())
        + medium.pictures().apply(Scenes.ruler(placed))
        + "</div>";
  }

  @Override
  public String expanded(Result.Expanded expanded) {
    return new ExpandedHtml(medium, expanded).html();
  }

  @Override
  public String pictured(Result.Pictured pictured) {
    return "<div class=\"ps-pictured\">" + medium.pictures().apply(Scenes.of(pictured)) + "</div>";
  }

  @Override
  public String drawn(Result.Drawn drawn) {
    return "<div class=\"ps-pictured\">" + medium.pictures().apply(drawn.scene()) + "</div>";
  }

  @Override
  public String narrated(Result.Narrated narrated) {
    String text = narrated.pieces().stream().map(this::piece).collect(joining());
    String remarks = WrittenText.remarks(narrated).stream().map(this::remark).collect(joining());
    return "<p class=\"ps-narrated\">" + text + "</p>" + remarks;
  }

  private String piece(Piece piece) {
    if (piece instanceof Piece.Words words) {
      return medium.words().apply(words.text());
    }
    if (piece instanceof Piece.Quoted quoted) {
      FormulaWriter formula = new FormulaWriter(medium.markup(), quoted.writing().digits());
      return DerivedText.number(quoted) + math(formula.write(quoted.equation()));
    }
    Result.Numeral number = ((Piece.Live) piece).numeral();
    return switch (number.style()) {
      case NUMBER -> math(equation(number.writing()).value(number.shown()));
      case DIGITS ->
          DigitsHtml.of(ValueText.digits(number).runs()) + medium.unit(number.shown().unit());
      default -> medium.words().apply(ValueWords.of(number).text());
    };
  }

  @Override
  public String captioned(Result.Captioned captioned) {
    return "<p class=\"ps-caption\"><b>"
        + medium.words().apply(WrittenText.caption(captioned))
        + "</b></p>";
  }

  @Override
  public String data(DataResult data) {
    return data.acceptData(new DataSections(false)).html(medium, "ps-data")
        + formula(data)
        + data.acceptData(new DataPictures()).map(medium.pictures()).orElse("");
  }

  /** The curve of a fit. */
  String formula(DataResult data) {
    return data instanceof DataResult.Fitted fitted
        ? "<p>"
            + math(
                new FormulaWriter(medium.markup(), fitted.writing().digits())
                    .write(fitted.formula()))
            + "</p>"
        : "";
  }

  @Override
  public String guard(GuardResult guard) {
    return GuardHtml.of(guard.acceptGuard(new GuardText()), medium);
  }

  @Override
  public String law(LawResult law) {
    return law.acceptLaw(new LawHtml(medium));
  }

  @Override
  public String noted(Result.Noted noted) {
    return remark(noted.remark());
  }

  @Override
  public String unfinished(Result.Unfinished unfinished) {
    return "<p class=\"ps-unfinished\">" + medium.words().apply(unfinished.sentence()) + "</p>";
  }

  private String remark(String words) {
    return "<p class=\"ps-noted\"><i>" + medium.words().apply(words) + "</i></p>";
  }

  @Override
  public String printed(Result.Printed printed) {
    return "<pre class=\"ps-printed\">" + Html.escape(printed.text().stripTrailing()) + "</pre>";
  }

  @Override
  public String failed(Result.Failed failed) {
    String rest = failed.lines().stream().skip(1).collect(joining("\n"));
    return "<div class=\"ps-mistaken\"><p><b>"
        + medium.words().apply(failed.lines().get(0))
        + "</b></p><pre>"
        + Html.escape(rest)
        + "</pre></div>";
  }

  @Override
  public String mistaken(Result.Mistaken mistaken) {
    List<String> lines = ProblemText.lines(mistaken.problem());
    String repairs =
        lines.stream()
            .skip(3)
            .map(r -> "<p>" + medium.words().apply(r) + "</p>")
            .collect(joining());
    return "<div class=\"ps-mistaken\"><p><b>"
        + medium.words().apply(lines.get(0))
        + "</b></p><pre>"
        + Html.escape(lines.get(1) + "\n" + lines.get(2))
        + "</pre>"
        + repairs
        + "</div>";
  }
}
