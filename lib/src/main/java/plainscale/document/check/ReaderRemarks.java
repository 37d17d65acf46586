package plainscale.document.check;

import java.util.stream.Stream;

/** What the reader of the file mended or left out. */
record ReaderRemarks() implements Rule {
  @Override
  public String name() {
    return "reader";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson.lesson().remarks().stream()
        .map(remark -> lesson.whole().remark(this, remark, ""));
  }
}
