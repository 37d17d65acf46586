package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.magnitude.Alignment;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Expansion;
import plainscale.magnitude.Spelling;
import plainscale.magnitude.Writing;
import plainscale.notation.Printer;
import plainscale.picture.Symbol;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/** Results as plain text, for terminals and for front ends without HTML. */
final class TextRenderer implements Result.Visitor<String> {
  @Override
  public String valued(Result.Valued valued) {
    String value = ValueText.number(valued.shown(), valued.writing());
    String also =
        valued.prefixed().map(p -> " = " + ValueText.number(p, valued.writing())).orElse("");
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
    Result.Numeral number = written.numeral();
    List<String> lines =
        new ArrayList<>(DigitsText.lines(ValueText.digits(number), unit(number.shown().unit())));
    lines.addAll(WrittenText.lines(number));
    return under(described(label(written.label()), written.label()), lines);
  }

  /** A heading, unless it is empty, and lines below it that are set in. */
  private static String under(String head, List<String> lines) {
    String body = lines.stream().map(line -> "  " + line).collect(Collectors.joining("\n"));
    return head.isBlank() ? body : head + "\n" + body;
  }

  private static String unit(UnitOfMeasure unit) {
    return unit.text().isEmpty() ? "" : " " + unit.text();
  }

  @Override
  public String contrasted(Result.Contrasted contrast) {
    ContrastText text = new ContrastText(contrast);
    Alignment aligned =
        Alignment.of(
            contrast.sides().stream()
                .map(side -> Digits.of(side.shown().value(), contrast.writing().digits()))
                .toList());
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < contrast.sides().size(); i++) {
      Result.Side side = contrast.sides().get(i);
      Alignment.Row row = aligned.rows().get(i);
      String after = unit(side.shown().unit()) + "   " + ContrastText.name(side);
      lines.addAll(DigitsText.lines(aligned, row, after));
      lines.add("  " + said(side, row.digits(), text, contrast.writing()));
    }
    lines.add("");
    lines.add(text.comparison());
    lines.add(text.ratioLabel());
    String power = text.power().map(p -> " = " + p).orElse("");
    DigitsText.lines(text.digits(), power).forEach(line -> lines.add("  " + line));
    text.share().ifPresent(lines::add);
    text.perspective().ifPresent(lines::add);
    lines.addAll(text.remarks());
    return under(contrast.title(), lines).replaceAll("(?m)\\h+$", "");
  }

  private static String said(Result.Side side, Digits digits, ContrastText text, Writing writing) {
    Spelling words = ValueWords.of(side.shown(), side.exact(), writing);
    return words.text()
        + "; "
        + ContrastText.figures(digits, side.exact(), writing)
        + text.uncertain(side).map(u -> "; " + u).orElse("")
        + words.remark().map(r -> "; " + r).orElse("");
  }

  @Override
  public String stated(Result.Stated stated) {
    String words = stated.description().isEmpty() ? "" : "    (" + stated.description() + ")";
    return stated.name() + ": " + stated.equation().text() + words;
  }

  @Override
  public String derived(Result.Derived derived) {
    DerivedText text = new DerivedText(derived);
    return under(text.head(), text.lines());
  }

  @Override
  public String compared(Result.Compared compared) {
    List<String> lines = new ArrayList<>(TableText.relations(compared));
    lines.addAll(Columns.lines(TableText.of(compared), 3));
    return under("", lines);
  }

  @Override
  public String sideBySide(Result.SideBySide sideBySide) {
    return sections(Sections.of(new CasesText(sideBySide)));
  }

  @Override
  public String forces(Result.Forces forces) {
    ForcesText text = new ForcesText(forces);
    return forces.diagram().edition().isOpen()
        ? sections(Sections.of(text))
        : under(text.head(), List.of("[" + ForcePictures.of(forces).alternative() + "]"));
  }

  private static String sections(Sections sections) {
    return under(sections.head(), sections.lines());
  }

  @Override
  public String paired(Result.Paired paired) {
    return under("", PairsText.lines(paired));
  }

  @Override
  public String field(FieldResult result) {
    FieldView view = result.accept(new FieldText());
    String picture = view.scene().map(scene -> "[" + scene.alternative() + "]").orElse("");
    String numbers = under(view.sections().head(), view.lines());
    return picture + (picture.isEmpty() || numbers.isBlank() ? "" : "\n") + numbers;
  }

  @Override
  public String varied(Result.Varied varied) {
    return table(TableText.of(varied));
  }

  @Override
  public String limited(Result.Limited limited) {
    String sentences = String.join("\n", new LimitText(limited).sentences());
    return table(TableText.of(limited.table())) + "\n" + sentences;
  }

  private static String table(List<List<String>> rows) {
    return under("", Columns.lines(rows, 3));
  }

  @Override
  public String dependence(Result.Dependence dependence) {
    return TableText.sentence(dependence);
  }

  @Override
  public String budgeted(Result.Budgeted budgeted) {
    BudgetText text = new BudgetText(budgeted);
    List<String> lines = new ArrayList<>(Columns.lines(text.table(), 2));
    lines.addAll(text.sentences());
    String value = ValueText.number(budgeted.shown(), budgeted.writing());
    String label = label(budgeted.label());
    String head = label.isEmpty() ? value : label + " = " + value;
    return under(described(head, budgeted.label()), lines);
  }

  @Override
  public String placed(Result.Placed placed) {
    return under(ContrastText.name(placed.side()), new PlacedText(placed).lines());
  }

  @Override
  public String expanded(Result.Expanded expanded) {
    List<String> lines = new ArrayList<>();
    int number = 1;
    for (Expansion.Step step : expanded.expansion().steps()) {
      lines.add(number++ + ". " + ExpandedText.reason(step, expanded.writing()));
      lines.add("   " + ExpandedText.after(step, expanded));
    }
    return under(ContrastText.name(expanded.side()), lines);
  }

  @Override
  public String pictured(Result.Pictured pictured) {
    return "[" + Scenes.of(pictured).alternative() + "]";
  }

  @Override
  public String drawn(Result.Drawn drawn) {
    return "[" + drawn.scene().alternative() + "]";
  }

  @Override
  public String narrated(Result.Narrated narrated) {
    String text = narrated.pieces().stream().map(TextRenderer::piece).collect(Collectors.joining());
    String remarks =
        WrittenText.remarks(narrated).stream()
            .map(remark -> "\nNote: " + remark)
            .collect(Collectors.joining());
    return text + remarks;
  }

  private static String piece(Piece piece) {
    if (piece instanceof Piece.Live live) {
      return ValueText.of(live.numeral());
    }
    if (piece instanceof Piece.Quoted quoted) {
      return DerivedText.number(quoted) + DerivedText.raised(quoted.equation().text());
    }
    return ((Piece.Words) piece).text();
  }

  @Override
  public String captioned(Result.Captioned captioned) {
    return WrittenText.caption(captioned);
  }

  @Override
  public String data(DataResult data) {
    Sections sections = data.acceptData(new DataSections(true));
    String told = sections.head().isEmpty() ? "" : sections(sections);
    String picture =
        data.acceptData(new DataPictures())
            .map(scene -> "[" + Symbol.spoken(scene.alternative()) + "]")
            .orElse("");
    return told + (told.isEmpty() || picture.isEmpty() ? "" : "\n") + picture;
  }

  @Override
  public String guard(GuardResult guard) {
    return GuardText.text(guard.acceptGuard(new GuardText()));
  }

  @Override
  public String law(LawResult law) {
    LawText text = LawText.of(law);
    List<String> lines = new ArrayList<>(Columns.lines(text.table(), 3));
    lines.addAll(text.sentences());
    return under(text.head(), lines);
  }

  @Override
  public String noted(Result.Noted noted) {
    return "Note: " + noted.remark();
  }

  @Override
  public String unfinished(Result.Unfinished unfinished) {
    return unfinished.sentence();
  }

  @Override
  public String printed(Result.Printed printed) {
    return printed.text().stripTrailing();
  }

  @Override
  public String failed(Result.Failed failed) {
    return String.join("\n", failed.lines());
  }

  @Override
  public String mistaken(Result.Mistaken mistaken) {
    return String.join("\n", ProblemText.lines(mistaken.problem()));
  }
}
