package plainscale.document.edition;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import plainscale.document.Blank;
import plainscale.document.Edition;
import plainscale.document.LessonException;
import plainscale.document.Notebooks;
import plainscale.document.WorkedLesson;

/** Worksheets for tests: cells with a blank, as text in which a gap is {@code ____}. */
final class Worksheets {
  private Worksheets() {}

  /** What students see of the last of these cells, all with the same blank. */
  static String last(Blank blank, Fading fading, String... cells) throws LessonException {
    WorkedLesson worked = worked(blank, cells);
    Cells students = Cells.of(worked, Edition.STUDENT, fading);
    List<Worksheet> left = students.worksheet(worked.cells().get(cells.length - 1));
    return text(new WorksheetHtml(FixedWords.of(Optional.empty())).html(left));
  }

  static String last(Blank blank, String... cells) throws LessonException {
    return last(blank, Fading.LAST, cells);
  }

  static WorkedLesson worked(Blank blank, String... cells) throws LessonException {
    Notebooks notebook = new Notebooks();
    for (String cell : cells) {
      notebook.code(cell).says("{\"blank\": {\"student\": \"%s\"}}".formatted(blank.word()));
    }
    return WorkedLesson.run(notebook.lesson().in(folder()), done -> {});
  }

  /** A folder with a table of results. */
  private static Path folder() {
    String file =
        Objects.requireNonNull(Worksheets.class.getResource("class.csv"), "class.csv").getPath();
    return Objects.requireNonNull(Path.of(file).getParent());
  }

  /** The words of a page: gaps and boxes as signs, cells parted by |, lines by line feeds. */
  static String text(String html) {
    return html.replaceAll("(?s)<svg.*?<title>(.*?)</title>.*?</svg>", "[$1]\n")
        .replaceAll("<span class=\"ws-gap[^>]*></span>", "____")
        .replaceAll("<span class=\"ws-box\"></span>", "#")
        .replaceAll("</span>(?=<span class=\"ws-group\">)", " ")
        .replaceAll("<div class=\"ws-line\"></div>", "________\n")
        .replaceAll("</t[dh]>", "|")
        .replaceAll("</tr>|</p>|</div>", "\n")
        .replaceAll("<[^>]*>", "")
        .replace("&#x2061;", "")
        .replace("\u2062", " ")
        .replace("&amp;", "&")
        .replaceAll("[ \t]+\n", "\n")
        .replaceAll("\n{2,}", "\n")
        .strip();
  }
}
