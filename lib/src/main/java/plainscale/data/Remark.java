package plainscale.data;

import java.util.List;

/**
 * Something about the file that its reader should know.
 *
 * @param kind what it is about
 * @param row the row of data, counted from 1 below the heading; 0 for the heading or the whole file
 * @param line the line of the file, counted from 1; 0 for the whole file
 * @param column the name of the column, or empty
 * @param found what stands there, shortened
 * @param sentence one sentence for a student
 * @param repairs what to write instead, nearest first
 */
public record Remark(
    Kind kind,
    int row,
    long line,
    String column,
    String found,
    String sentence,
    List<String> repairs) {

  /** What a remark is about. */
  public enum Kind {
    /** The file is not UTF-8. */
    ENCODING,
    /** The row of headings: a name was changed, doubled or invented. */
    NAME,
    /** A unit that cannot be read. */
    UNIT,
    /** A cell is empty or says that there is no value. */
    MISSING,
    /** A cell should hold a number and does not. */
    UNREADABLE,
    /** A cell looks like a formula of a spreadsheet and was not computed. */
    FORMULA,
    /** A row has more or fewer cells than the heading. */
    ROW,
    /** An uncertainty belongs to no column, or is written twice. */
    UNCERTAINTY
  }

  /** Keeps its own copy of the repairs. */
  public Remark {
    repairs = List.copyOf(repairs);
  }

  /** A remark about the heading of a column. */
  static Remark ofHeading(Kind kind, Heading heading, String sentence, String... repairs) {
    return new Remark(
        kind, 0, heading.line(), heading.name(), heading.text(), sentence, List.of(repairs));
  }
}
