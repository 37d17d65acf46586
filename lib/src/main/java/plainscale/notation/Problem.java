package plainscale.notation;

import java.util.List;

/**
 * What is wrong with a cell: one sentence, the place in the source, and the nearest repairs. It
 * carries the source so that it can be printed anywhere.
 */
public record Problem(Kind kind, String sentence, String source, Span span, List<String> repairs) {

  /** What a problem is about; the name is what the front end shows as the error's name. */
  public enum Kind {
    SYNTAX("SyntaxProblem"),
    NAME("NameProblem"),
    UNIT("UnitProblem"),
    VALUE("ValueProblem"),
    LIMIT("LimitProblem"),
    /** Nothing is wrong: a blank is still to be filled in. */
    BLANK("Blank");

    private final String title;

    Kind(String title) {
      this.title = title;
    }

    /** One word for the wire. */
    public String title() {
      return title;
    }
  }

  /** Line number of the place, from one. */
  public int line() {
    int before = Math.min(span.start(), source.length());
    return 1 + (int) source.substring(0, before).chars().filter(c -> c == '\n').count();
  }
}
