package plainscale.document;

/**
 * A line of a text file, for sentences about it.
 *
 * @param file the name of the file
 * @param line from 1
 */
record TextPlace(String file, int line) {

  TextPlace at(int otherLine) {
    return new TextPlace(file, otherLine);
  }

  /** Why the file is no lesson; the sentence begins in lower case and has no full stop. */
  LessonException refused(String sentence) {
    return new LessonException(file + ", line " + line + ": " + sentence + ".");
  }

  /** What was mended there, likewise. */
  String remark(String sentence) {
    return "Line " + line + ": " + sentence + (sentence.endsWith("?") ? "" : ".");
  }
}
