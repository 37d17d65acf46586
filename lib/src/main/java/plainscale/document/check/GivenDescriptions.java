package plainscale.document.check;

import java.util.stream.Stream;
import plainscale.notation.Statement.Given;

/** Givens of which nothing says what they are. */
record GivenDescriptions() implements Rule {
  @Override
  public String name() {
    return "given-description";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    return lesson
        .lines(Given.class)
        .filter(line -> ((Given) line.statement()).description().isBlank())
        .map(
            line ->
                CheckedLesson.at(line)
                    .remark(
                        this,
                        "Nothing says what the given %s is."
                            .formatted(((Given) line.statement()).name()),
                        "write it in quotation marks at the end of the line"));
  }
}
