package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainscale.picture.Scene;
import plainscale.render.Screens.Part;
import plainscale.sheet.DataResult;
import plainscale.sheet.FieldResult;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;

/** What each kind of result is in pieces for screens. */
final class ScreenParts implements Result.Visitor<List<Part>> {
  /** Letters in a line of large type. */
  private static final int LETTERS = 78;

  private static final int ROWS = 7;
  private static final int SENTENCES = 4;
  private static final int STEPS = 3;

  private final HtmlRenderer html;
  private final Medium medium;

  ScreenParts(HtmlRenderer html, Medium medium) {
    this.html = html;
    this.medium = medium;
  }

  private List<Part> whole(Result result) {
    return List.of(Part.whole(result.accept(html)));
  }

  private List<Part> few(Result result, String words) {
    return List.of(Part.lines(result.accept(html), 1 + words.length() / LETTERS));
  }

  /** A fraction takes two lines. */
  @Override
  public List<Part> valued(Result.Valued valued) {
    int lines = valued.label().formula().isPresent() ? 3 : 2;
    return List.of(new Part(html.row(valued), lines, true));
  }

  @Override
  public List<Part> written(Result.Written written) {
    return whole(written);
  }

  @Override
  public List<Part> contrasted(Result.Contrasted contrast) {
    return wholes(new ContrastHtml(medium, contrast).parts());
  }

  private static List<Part> wholes(List<String> parts) {
    return parts.stream().map(Part::whole).toList();
  }

  @Override
  public List<Part> stated(Result.Stated stated) {
    return List.of(Part.lines(stated.accept(html), 3));
  }

  @Override
  public List<Part> derived(Result.Derived derived) {
    return wholes(new DerivedHtml(medium, derived).parts());
  }

  @Override
  public List<Part> compared(Result.Compared compared) {
    String relations = html.lines(TableText.relations(compared));
    return tables(relations, TableText.of(compared));
  }

  /** Each part with its head, and with what stands above. */
  private List<Part> tables(String above, List<List<String>> table) {
    return Sections.split(table, ROWS).stream()
        .map(part -> Part.whole(above + html.grid(part)))
        .toList();
  }

  @Override
  public List<Part> sideBySide(Result.SideBySide sideBySide) {
    return sections(Sections.of(new CasesText(sideBySide)), "ps-cases");
  }

  private List<Part> sections(Sections sections, String style) {
    return sections.parts(ROWS, SENTENCES).stream()
        .map(part -> Part.whole(part.html(medium, style)))
        .toList();
  }

  private Part picture(Scene scene) {
    return Part.whole(medium.pictures().apply(scene));
  }

  @Override
  public List<Part> forces(Result.Forces forces) {
    List<Part> parts = new ArrayList<>(sections(Sections.of(new ForcesText(forces)), "ps-forces"));
    parts.add(picture(ForcePictures.of(forces)));
    return parts;
  }

  @Override
  public List<Part> paired(Result.Paired paired) {
    List<Part> parts = new ArrayList<>();
    ForcePictures.of(paired).forEach(scene -> parts.add(picture(scene)));
    List<String> lines = PairsText.lines(paired);
    for (int from = 0; from < lines.size(); from += SENTENCES) {
      int to = Math.min(lines.size(), from + SENTENCES);
      parts.add(Part.whole(html.lines(lines.subList(from, to))));
    }
    return parts;
  }

  @Override
  public List<Part> field(FieldResult field) {
    FieldView view = field.accept(new FieldText());
    return pictureAnd(view.scene(), sections(view.sections(), "ps-field"));
  }

  private List<Part> pictureAnd(Optional<Scene> scene, List<Part> rest) {
    List<Part> parts = new ArrayList<>();
    scene.ifPresent(s -> parts.add(picture(s)));
    parts.addAll(rest);
    return parts;
  }

  @Override
  public List<Part> dependence(Result.Dependence dependence) {
    return few(dependence, TableText.sentence(dependence));
  }

  @Override
  public List<Part> varied(Result.Varied varied) {
    return tables("", TableText.of(varied));
  }

  @Override
  public List<Part> limited(Result.Limited limited) {
    List<Part> parts = new ArrayList<>(tables("", TableText.of(limited.table())));
    parts.add(Part.whole(html.lines(new LimitText(limited).sentences())));
    return parts;
  }

  @Override
  public List<Part> budgeted(Result.Budgeted budgeted) {
    return whole(budgeted);
  }

  @Override
  public List<Part> placed(Result.Placed placed) {
    String label = html.label(placed.side().label(), placed.writing());
    return List.of(
        Part.whole(label + html.lines(new PlacedText(placed).lines())),
        picture(Scenes.ruler(placed)));
  }

  @Override
  public List<Part> expanded(Result.Expanded expanded) {
    return wholes(new ExpandedHtml(medium, expanded).parts(STEPS));
  }

  @Override
  public List<Part> pictured(Result.Pictured pictured) {
    return whole(pictured);
  }

  @Override
  public List<Part> drawn(Result.Drawn drawn) {
    return whole(drawn);
  }

  @Override
  public List<Part> narrated(Result.Narrated narrated) {
    return few(narrated, narrated.accept(new TextRenderer()));
  }

  @Override
  public List<Part> captioned(Result.Captioned captioned) {
    return List.of(Part.lines(captioned.accept(html), 0));
  }

  @Override
  public List<Part> data(DataResult data) {
    List<Part> parts =
        new ArrayList<>(sections(data.acceptData(new DataSections(false)), "ps-data"));
    String formula = html.formula(data);
    if (!formula.isEmpty()) {
      parts.add(0, Part.whole(formula));
    }
    return pictureAnd(data.acceptData(new DataPictures()), parts);
  }

  @Override
  public List<Part> noted(Result.Noted noted) {
    return few(noted, noted.remark());
  }

  @Override
  public List<Part> unfinished(Result.Unfinished unfinished) {
    return few(unfinished, unfinished.sentence());
  }

  @Override
  public List<Part> guard(GuardResult guard) {
    return few(guard, guard.accept(new TextRenderer()));
  }

  @Override
  public List<Part> law(LawResult law) {
    return few(law, law.accept(new TextRenderer()));
  }

  @Override
  public List<Part> printed(Result.Printed printed) {
    return few(printed, printed.text());
  }

  @Override
  public List<Part> failed(Result.Failed failed) {
    return whole(failed);
  }

  @Override
  public List<Part> mistaken(Result.Mistaken mistaken) {
    return whole(mistaken);
  }
}
