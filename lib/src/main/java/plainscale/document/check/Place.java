package plainscale.document.check;

/** Where something was found: a cell, empty for the lesson as a whole, and a line, 0 for none. */
record Place(String cell, int line) {
  Finding error(Rule rule, String sentence, String repair) {
    return finding(rule, Severity.ERROR, sentence, repair);
  }

  Finding warning(Rule rule, String sentence, String repair) {
    return finding(rule, Severity.WARNING, sentence, repair);
  }

  Finding remark(Rule rule, String sentence, String repair) {
    return finding(rule, Severity.REMARK, sentence, repair);
  }

  private Finding finding(Rule rule, Severity severity, String sentence, String repair) {
    return new Finding(rule.name(), severity, cell, line, sentence, repair);
  }
}
