package plainscale.document.edition;

import plainscale.document.Edition;
import plainscale.document.WorkedLesson;

/** A worked lesson as one HTML file, in an edition. */
public final class Handout {
  private Handout() {}

  /** The worked example as the notebook shows it. */
  public static String html(WorkedLesson worked) {
    return html(worked, Edition.WORKED, Fading.LAST);
  }

  /** An edition; in derivations of which something is blank, so many steps are. */
  public static String html(WorkedLesson worked, Edition edition, Fading fading) {
    Cells cells = Cells.of(worked, edition, fading);
    Page page =
        switch (edition) {
          case WORKED -> new WorkedPage(cells).page();
          case TEACHER -> new TeacherPage(cells, fading).page();
          case STUDENT -> new StudentPage(cells).page();
          case PROJECTOR -> new ProjectorPage(cells).page();
        };
    return page.html();
  }

  /** The name of its file: {@code two-balls.html}, {@code two-balls-teacher.html}. */
  public static String fileName(WorkedLesson worked, Edition edition) {
    String ending = edition == Edition.WORKED ? "" : "-" + edition.word();
    return worked.lesson().stem() + ending + ".html";
  }
}
