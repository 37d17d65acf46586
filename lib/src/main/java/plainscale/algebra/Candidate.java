package plainscale.algebra;

/** A candidate for the answer: where it stands, and why it is not the first choice. */
record Candidate(Line line, String why) {
  boolean isOpen() {
    return why.isEmpty();
  }

  Candidate because(String reason) {
    return new Candidate(line, reason);
  }
}
