package plainscale.printed;

/** What became of one printed answer. */
record Verdict(PrintedExample example, Answer answer, Outcome outcome, String remark) {

  /** Whether the project gets the printed answer. */
  enum Outcome {
    /** The value, rounded to the printed figures, is the printed number. */
    PASS,
    /** It is not, for a reason that is given, and the value is the one computed elsewhere. */
    NOTE,
    /** Neither. */
    FAIL
  }

  /** One line for a reader. */
  String line() {
    return outcome + "  " + example.chapter() + "/" + example.id() + "  " + answer + "  " + remark;
  }
}
