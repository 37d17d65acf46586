package plainscale.document.check;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the reader of the file mended or left out. */
record ReaderRemarks() implements Rule {
  /** So begins a remark about a line of a text. */
  private static final Pattern LINE = Pattern.compile("Line (\\d{1,9}): ");

  @Override
  public String name() {
    return "reader";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.lesson().remarks().stream()
        .map(remark -> place(lesson, remark).remark(this, remark, ""));
  }

  private static Place place(CheckedLesson lesson, String remark) {
    Matcher line = LINE.matcher(remark);
    return line.lookingAt() ? new Place("", Integer.parseInt(line.group(1))) : lesson.whole();
  }
}
