package plainscale.language;

import java.util.regex.Pattern;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.ProblemException;

/** Whether a cell could be run: a bracket left open or an operator at the end asks for more. */
final class CompletenessCheck {
  private static final String ASKS_FOR_MORE = "+-*/^=·×±(,:";
  private static final String INDENT = "  ";

  /** Texts and comments, in which brackets mean nothing. */
  private static final Pattern BESIDE = Pattern.compile("\"[^\"]*\"|#.*");

  private CompletenessCheck() {}

  static Completeness of(String code, Names names) {
    if (asksForMore(code)) {
      return new Completeness(Completeness.Status.INCOMPLETE, INDENT);
    }
    try {
      Notation.parse(code, names);
      return Completeness.of(Completeness.Status.COMPLETE);
    } catch (ProblemException e) {
      return Completeness.of(Completeness.Status.INVALID);
    }
  }

  private static boolean asksForMore(String code) {
    String text = code.stripTrailing();
    if (text.isEmpty() || text.length() > Notation.LONGEST) {
      return false;
    }
    String line = BESIDE.matcher(text.substring(text.lastIndexOf('\n') + 1)).replaceAll("").strip();
    if (line.isEmpty() || line.indexOf('"') >= 0) { // an open text cannot go on in the next line
      return false;
    }
    boolean hangs = ASKS_FOR_MORE.indexOf(line.charAt(line.length() - 1)) >= 0;
    return hangs || open(line) > 0 || lastWord(line).equals("with");
  }

  private static long open(String line) {
    return line.chars().filter(c -> c == '(').count() - line.chars().filter(c -> c == ')').count();
  }

  private static String lastWord(String line) {
    return line.substring(line.lastIndexOf(' ') + 1);
  }
}
