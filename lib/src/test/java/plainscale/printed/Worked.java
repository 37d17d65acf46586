package plainscale.printed;

import java.util.List;

/** An example and what became of its answers. */
record Worked(PrintedExample example, List<Verdict> verdicts) {
  Worked {
    verdicts = List.copyOf(verdicts);
  }

  /** Works an example. */
  static Worked of(PrintedExample example) {
    return new Worked(example, Judge.verdicts(example));
  }

  String chapter() {
    return example.chapter();
  }

  @Override
  public String toString() {
    return example.toString();
  }
}
