package plainscale.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainscale.notation.Greek;
import plainscale.table.Table;

/**
 * TeX as it stands in a lesson's prose, to MathML: letters, numbers, sub- and superscripts,
 * fractions, roots, brackets, Greek letters, functions, and the signs of {@code tex-signs.tsv}. A
 * formula with a command beyond these is not converted, rather than converted wrongly.
 */
public final class TexReader {
  private static final int LONGEST = 2_000;
  private static final int DEEPEST = 30;
  private static final Map<String, String> SIGNS = new HashMap<>();

  static {
    for (Table.Row row : Table.read(TexReader.class, "tex-signs.tsv")) {
      SIGNS.put(row.get("command"), row.get("mathml"));
    }
    Greek.letters().forEach((word, letter) -> SIGNS.put(word, "<mi>" + letter + "</mi>"));
  }

  /** Says inside this class that the formula is beyond the subset. */
  private static final class Beyond extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Beyond() {
      super(null, null, false, false);
    }
  }

  private final String tex;
  private int at;
  private int depth;

  private TexReader(String tex) {
    this.tex = tex;
  }

  /** The formula as a {@code math} element; empty if it is beyond the subset. */
  public static Optional<String> mathMl(String tex, boolean display) {
    if (tex.length() > LONGEST) {
      return Optional.empty();
    }
    try {
      TexReader reader = new TexReader(tex);
      String row = reader.row("");
      if (reader.at < tex.length()) {
        return Optional.empty();
      }
      String attribute = display ? " display=\"block\"" : "";
      return Optional.of("<math" + attribute + "><mrow>" + row + "</mrow></math>");
    } catch (Beyond unknownCommand) {
      return Optional.empty();
    }
  }

  /** Everything up to one of the closing characters, or to the end. */
  private String row(String closing) {
    if (++depth > DEEPEST) {
      throw new Beyond();
    }
    List<String> parts = new ArrayList<>();
    while (skipSpace() && closing.indexOf(tex.charAt(at)) < 0) {
      parts.add(scripted(atom()));
    }
    depth--;
    return String.join("", parts);
  }

  private boolean skipSpace() {
    while (at < tex.length() && Character.isWhitespace(tex.charAt(at))) {
      at++;
    }
    return at < tex.length();
  }

  private String scripted(String base) {
    Optional<String> below = script('_');
    Optional<String> above = script('^');
    if (below.isEmpty()) {
      below = script('_');
    }
    if (below.isPresent() && above.isPresent()) {
      return "<msubsup>" + group(base) + group(below.get()) + group(above.get()) + "</msubsup>";
    }
    if (below.isPresent()) {
      return "<msub>" + group(base) + group(below.get()) + "</msub>";
    }
    return above.map(a -> "<msup>" + group(base) + group(a) + "</msup>").orElse(base);
  }

  private Optional<String> script(char mark) {
    if (skipSpace() && tex.charAt(at) == mark) {
      at++;
      return Optional.of(argument());
    }
    return Optional.empty();
  }

  private static String group(String inner) {
    return "<mrow>" + inner + "</mrow>";
  }

  private String argument() {
    if (!skipSpace()) {
      throw new Beyond();
    }
    return atom();
  }

  private String atom() {
    char c = tex.charAt(at);
    if (c == '\\') {
      return command();
    }
    if (c == '{') {
      at++;
      String inner = row("}");
      expect('}');
      return group(inner);
    }
    if (c == '}' || c == '^' || c == '_' || c == '&' || c == '#' || c == '%' || c == '~') {
      throw new Beyond();
    }
    return Character.isDigit(c) ? number() : letterOrSign();
  }

  private void expect(char c) {
    if (at >= tex.length() || tex.charAt(at) != c) {
      throw new Beyond();
    }
    at++;
  }

  private String number() {
    int start = at;
    while (at < tex.length() && (Character.isDigit(tex.charAt(at)) || isPoint())) {
      at++;
    }
    return "<mn>" + tex.substring(start, at) + "</mn>";
  }

  private boolean isPoint() {
    return tex.charAt(at) == '.' && at + 1 < tex.length() && Character.isDigit(tex.charAt(at + 1));
  }

  private String letterOrSign() {
    int c = tex.codePointAt(at);
    at += Character.charCount(c);
    String text = Html.escape(Character.toString(c));
    return Character.isLetter(c)
        ? "<mi>" + text + "</mi>"
        : "<mo>" + text.replace('-', '−') + "</mo>";
  }

  private String command() {
    int start = ++at;
    while (at < tex.length() && Character.isLetter(tex.charAt(at))) {
      at++;
    }
    if (at == start && at < tex.length()) {
      at++;
    }
    String name = tex.substring(start, at);
    return switch (name) {
      case "frac", "dfrac", "tfrac" ->
          "<mfrac>" + group(argument()) + group(argument()) + "</mfrac>";
      case "sqrt" -> root();
      case "text", "mathrm", "operatorname", "textrm" -> upright();
      case "left", "right" -> skipSpace() ? delimiter() : "";
      default -> sign(name);
    };
  }

  private String root() {
    if (skipSpace() && tex.charAt(at) == '[') {
      at++;
      String degree = row("]");
      expect(']');
      return "<mroot>" + group(argument()) + group(degree) + "</mroot>";
    }
    return "<msqrt>" + argument() + "</msqrt>";
  }

  private String upright() {
    skipSpace();
    expect('{');
    int end = tex.indexOf('}', at);
    if (end < 0 || tex.substring(at, end).indexOf('\\') >= 0) {
      throw new Beyond();
    }
    String words = tex.substring(at, end);
    at = end + 1;
    return "<mtext>" + Html.escape(words) + "</mtext>";
  }

  private String delimiter() {
    if (tex.charAt(at) == '.') {
      at++;
      return "";
    }
    return tex.charAt(at) == '\\' ? command() : letterOrSign();
  }

  private static String sign(String name) {
    String known = SIGNS.get(name);
    if (known == null) {
      throw new Beyond();
    }
    return known;
  }
}
