package plainscale.language.java;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis.Documentation;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import plainscale.language.Completeness;
import plainscale.language.Completion;
import plainscale.language.MimeBundle;

/** What JShell knows of a cell that is being written. */
final class Assistance {
  private Assistance() {}

  /** What could stand at the cursor: what fits the expected type first. */
  static Completion complete(JShell jshell, String code, int cursor) {
    int[] anchor = {cursor};
    List<Suggestion> suggestions =
        jshell.sourceCodeAnalysis().completionSuggestions(code, cursor, anchor);
    Map<String, Boolean> found = new LinkedHashMap<>();
    suggestions.stream()
        .sorted(Comparator.comparing((Suggestion suggestion) -> !suggestion.matchesType()))
        .forEach(
            suggestion -> found.putIfAbsent(suggestion.continuation(), suggestion.matchesType()));
    List<Completion.Item> items =
        found.keySet().stream().map(text -> new Completion.Item(text, kind(text))).toList();
    return new Completion(anchor[0], cursor, items);
  }

  /** By how it is written, which is all that JShell tells. */
  private static String kind(String text) {
    if (text.contains("(")) {
      return "function";
    }
    return Character.isUpperCase(text.codePointAt(0)) ? "class" : "instance";
  }

  /** What the name at the cursor is, or, between brackets, what is being called. */
  static Optional<MimeBundle> inspect(JShell jshell, String code, int cursor) {
    int end = endOfWord(code, cursor);
    String before = code.substring(0, end);
    boolean named = end > 0 && Character.isJavaIdentifierPart(code.charAt(end - 1));
    String text = named ? described(jshell, before + "(") : "";
    if (text.isEmpty()) {
      text = described(jshell, before);
    }
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(MimeBundle.of(Map.of("text/plain", text)));
  }

  private static String described(JShell jshell, String code) {
    return jshell.sourceCodeAnalysis().documentation(code, code.length(), true).stream()
        .map(Assistance::described)
        .distinct()
        .collect(Collectors.joining("\n\n"));
  }

  private static String described(Documentation documentation) {
    String comment =
        LibraryDocs.of(documentation.signature())
            .orElseGet(() -> Objects.requireNonNullElse(documentation.javadoc(), ""))
            .strip();
    return comment.isEmpty()
        ? documentation.signature()
        : documentation.signature() + "\n" + comment;
  }

  private static int endOfWord(String code, int cursor) {
    int end = cursor;
    while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
      end++;
    }
    return end;
  }

  /** Whether the text is a whole cell. */
  static Completeness completeness(JShell jshell, String code) {
    List<Piece> pieces = Piece.of(code, jshell.sourceCodeAnalysis());
    return pieces.stream()
        .filter(piece -> !piece.whole())
        .findFirst()
        .map(piece -> broken(jshell, piece))
        .orElse(Completeness.of(Completeness.Status.COMPLETE));
  }

  private static Completeness broken(JShell jshell, Piece piece) {
    return switch (jshell.sourceCodeAnalysis().analyzeCompletion(piece.text()).completeness()) {
      case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE ->
          new Completeness(Completeness.Status.INCOMPLETE, "    ");
      default -> Completeness.of(Completeness.Status.INVALID);
    };
  }
}
