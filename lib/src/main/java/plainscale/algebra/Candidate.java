package plainscale.algebra;

/**
 * A candidate for the answer: where it stands, why it is not the first choice, and whether that is
 * its sign only.
 */
record Candidate(Line line, String why, boolean onlyBySign) {
  boolean isOpen() {
    return why.isEmpty();
  }

  Candidate because(String reason) {
    return new Candidate(line, reason, false);
  }
}
