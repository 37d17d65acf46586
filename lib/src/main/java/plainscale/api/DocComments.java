package plainscale.api;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The documentation comments of one source file, each with the declaration that follows it. Braces
 * are counted and texts are passed over; more of the language need not be known.
 */
final class DocComments {
  /** A comment, a text, a character, a brace, the end of a statement; group 1: a documentation. */
  private static final Pattern TOKEN =
      Pattern.compile(
          "(/\\*\\*.*?\\*/)|/\\*.*?\\*/|//[^\\n]*|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\])*\"|'(?:\\\\.|[^'\\\\])+'|[{};]",
          Pattern.DOTALL);

  private static final Pattern TYPE =
      Pattern.compile("\\b(?:class|interface|record|enum)\\s+(\\w+)");

  private static final Pattern IMPORT = Pattern.compile("(?m)^import ([\\w.]+)\\.(\\w+);");

  private static final Pattern COMPONENT =
      Pattern.compile("@param (\\w+) (.*?)(?=@param|\\*/)", Pattern.DOTALL);

  private final Map<String, String> comments = new HashMap<>();
  private final Map<String, List<String>> supertypes = new HashMap<>();
  private final Map<String, String> imports = new HashMap<>();
  private final String home;

  private DocComments(String home) {
    this.home = home;
  }

  static DocComments of(String source) {
    Matcher declared = Pattern.compile("(?m)^package ([\\w.]+);").matcher(source);
    DocComments read = new DocComments(declared.find() ? declared.group(1) + "." : "");
    IMPORT.matcher(source).results().forEach(m -> read.imports.put(m.group(2), m.group(1) + "."));
    read.readAll(source);
    return read;
  }

  Optional<String> ofType(String type) {
    return Optional.ofNullable(comments.get(type));
  }

  Optional<String> ofMember(String type, String name, List<String> parameters) {
    String key = type + "#" + name;
    Optional<String> field =
        parameters.isEmpty() ? Optional.ofNullable(comments.get(key)) : Optional.empty();
    String call = key + "(" + String.join(",", parameters) + ")";
    return Optional.ofNullable(comments.get(call)).or(() -> field);
  }

  /** What a type extends and implements, by full names. */
  List<String> supertypes(String type) {
    return supertypes.getOrDefault(type, List.of());
  }

  /** Goes from brace to brace; what stands before one declares something if a type is around it. */
  private void readAll(String source) {
    Deque<String> open = new ArrayDeque<>(); // the types around, and "" for other blocks
    Matcher token = TOKEN.matcher(source);
    String comment = "";
    StringBuilder header = new StringBuilder();
    int from = 0;
    while (token.find()) {
      header.append(source, from, token.start());
      from = token.end();
      String found = token.group();
      if (token.group(1) != null) {
        comment = found;
        header.setLength(0);
      } else if (found.equals("}")) {
        open.poll();
      } else if (found.equals("{") || found.equals(";")) {
        String opened = declare(header.toString(), comment, String.join("", around(open)));
        if (found.equals("{")) {
          open.push(opened);
        }
      } else if (!found.startsWith("/")) {
        header.append("\"\""); // a text
      }
      if (found.matches("[{};]")) {
        comment = "";
        header.setLength(0);
      }
    }
  }

  private static List<String> around(Deque<String> open) {
    return open.isEmpty() ? List.of() : List.of(open.peek());
  }

  /** Keeps the comment of a declaration; the name of the type if it is one, else nothing. */
  private String declare(String header, String comment, String around) {
    String plain = withoutAnnotations(header);
    Matcher type = TYPE.matcher(plain);
    boolean isType = type.find() && plain.indexOf('=') < 0;
    if (isType) {
      String name = around.isEmpty() ? type.group(1) : around + "." + type.group(1);
      keep(name, comment);
      keepComponents(name, comment);
      supertypes.put(name, named(plain.substring(type.end())));
      return name;
    }
    if (!around.isEmpty() && !comment.isEmpty()) {
      keep(around + "#" + signature(plain), comment);
    }
    return "";
  }

  /** What the parts of a record are stands in the comment of the record. */
  private void keepComponents(String type, String comment) {
    COMPONENT
        .matcher(comment)
        .results()
        .forEach(m -> keep(type + "#" + m.group(1), "/**" + m.group(2) + "*/"));
  }

  private void keep(String key, String comment) {
    if (!comment.isEmpty()) {
      comments.putIfAbsent(key, DocText.of(comment));
    }
  }

  /** {@code vary(String,Quantity[])} of a method, the name alone of a field or a constant. */
  private static String signature(String header) {
    int bracket = header.indexOf('(');
    int equals = header.indexOf('=');
    if (bracket < 0 || (equals >= 0 && equals < bracket)) {
      String declared = equals >= 0 ? header.substring(0, equals) : header;
      String[] words = declared.split(",", 2)[0].strip().split("\\s+", -1);
      return words[words.length - 1];
    }
    String[] words = header.substring(0, bracket).strip().split("\\s+", -1);
    String inside = header.substring(bracket + 1, Math.max(bracket + 1, header.lastIndexOf(')')));
    return words[words.length - 1] + "(" + simpleTypes(inside) + ")";
  }

  private static String simpleTypes(String parameters) {
    String plain = withoutGenerics(parameters).strip();
    return plain.isEmpty()
        ? ""
        : Stream.of(plain.split(",", -1))
            .map(DocComments::simpleType)
            .collect(Collectors.joining(","));
  }

  /** {@code Quantity[]} of {@code final Quantity... quantities}. */
  private static String simpleType(String parameter) {
    String[] words = parameter.strip().split("\\s+", -1);
    String type = words[Math.max(0, words.length - 2)];
    return type.substring(type.replace("...", "[]").equals(type) ? type.lastIndexOf('.') + 1 : 0)
        .replace("...", "[]");
  }

  private static String withoutAnnotations(String header) {
    return header.replaceAll("@\\w+(?:\\.\\w+)*(?:\\([^)]*\\))?", " ").strip();
  }

  private static String withoutGenerics(String text) {
    String inner = text;
    String before;
    do {
      before = inner;
      inner = inner.replaceAll("<[^<>]*>", "");
    } while (!inner.equals(before));
    return inner;
  }

  private List<String> named(String rest) {
    List<String> types = new ArrayList<>();
    Matcher clause =
        Pattern.compile(
                "\\b(?:extends|implements)\\s+(.*?)(?=\\bimplements\\b|\\bpermits\\b|$)",
                Pattern.DOTALL)
            .matcher(withoutGenerics(rest));
    while (clause.find()) {
      for (String type : clause.group(1).split(",", -1)) {
        String name = type.strip();
        types.add(imports.getOrDefault(name, home) + name);
      }
    }
    return types;
  }
}
