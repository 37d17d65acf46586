package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plainscale.algebra.Equation;
import plainscale.algebra.Outcome;
import plainscale.algebra.Relation;
import plainscale.algebra.Step;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.quantity.Contribution;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;

/** A derivation told line by line; the sentences are the same in every medium. */
final class DerivedText {
  private static final String BLANK = "…";
  private static final String QUESTION = "Which principle leads to the next line?";

  private final Result.Derived derived;

  DerivedText(Result.Derived derived) {
    this.derived = derived;
  }

  /** "q from level, upright: charge on one ball". */
  String head() {
    String names =
        derived.derivation().relations().stream()
            .map(Relation::name)
            .collect(Collectors.joining(", "));
    String description = derived.description().isEmpty() ? "" : ": " + derived.description();
    return derived.derivation().unknown() + " from " + names + description;
  }

  /** What a step does, or the question for it. */
  String reason(Step step) {
    String reason = step.reason() + step.condition().map(c -> " [" + c + "]").orElse("");
    return derived.telling() == Statement.Telling.QUESTIONS ? QUESTION : raised(reason);
  }

  /** In a sentence a power reads better raised. */
  static String raised(String sentence) {
    return sentence.replaceAll("\\^2\\b", "²").replaceAll("\\^3\\b", "³");
  }

  boolean showsSteps() {
    return derived.telling() != Statement.Telling.ANSWER;
  }

  boolean hidesResults() {
    return derived.telling() == Statement.Telling.BOXES;
  }

  /** The roots that were not taken, and why. */
  List<String> rejected() {
    return !hidesResults() && derived.derivation().outcome() instanceof Outcome.Solved solved
        ? solved.rejected().stream()
            .map(other -> "Not taken: " + Printer.print(other.root()) + ", because " + other.why())
            .toList()
        : List.of();
  }

  /** What is left where the search was stopped. */
  Optional<String> stopped() {
    if (!showsSteps() || !(derived.derivation().outcome() instanceof Outcome.Bounded bounded)) {
      return Optional.empty();
    }
    String left = listed(bounded.left().stream().map(number -> "(" + number + ")").toList());
    return Optional.of(left)
        .filter(text -> !text.isEmpty())
        .map(
            text ->
                "Here the search was stopped. "
                    + left
                    + (bounded.left().size() == 1 ? " is" : " are")
                    + " left"
                    + with(bounded.open()));
  }

  private static String with(List<String> open) {
    return open.isEmpty() ? "." : ", with " + listed(open) + " still unknown.";
  }

  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (showsSteps()) {
      int number = 1;
      for (Relation relation : derived.derivation().relations()) {
        String words = relation.words().isEmpty() ? "" : "    (" + relation.words() + ")";
        lines.add(numbered(number++, relation.equation().text()) + words);
      }
      for (Step step : derived.derivation().steps()) {
        lines.add("  " + reason(step));
        lines.add(numbered(step.number(), hidesResults() ? BLANK : step.after().text()));
      }
    }
    stopped().ifPresent(lines::add);
    lines.addAll(rejected());
    if (!hidesResults()) {
      lines.addAll(result());
    }
    return lines;
  }

  /** What stands before an equation that a sentence refers to. */
  static String number(Piece.Quoted quoted) {
    return quoted.number() == 0 ? "" : "(" + quoted.number() + ") ";
  }

  private static String numbered(int number, String text) {
    return "(" + number + ") " + text;
  }

  private List<String> result() {
    List<String> lines = new ArrayList<>();
    derived
        .value()
        .ifPresent(
            value -> {
              value.notes().forEach(lines::add);
              answer().ifPresent(equation -> lines.add(equation.text()));
              value.inserted().ifPresent(e -> lines.add("  = " + Printer.print(e)));
              String also =
                  value
                      .prefixed()
                      .map(p -> " = " + ValueText.number(p, derived.writing()))
                      .orElse("");
              String name =
                  value.inserted().isPresent() ? "  " : derived.derivation().unknown() + " ";
              lines.add(name + "= " + ValueText.number(value.shown(), derived.writing()) + also);
              lines.addAll(budget());
            });
    return lines;
  }

  /** The answer as an equation, if there is a closed form. */
  Optional<Equation> answer() {
    Expr.Name unknown = new Expr.Name(new Span(0, 0), derived.derivation().unknown());
    return derived.derivation().outcome() instanceof Outcome.Solved solved
        ? Optional.of(new Equation(unknown, solved.answer()))
        : Optional.empty();
  }

  /** What makes the value uncertain, as bars, and what to measure better. */
  List<String> budget() {
    List<Contribution> shares =
        derived.value().map(Result.Evaluated::budget).orElse(List.of()).stream()
            .filter(c -> c.share() >= Bars.NEGLIGIBLE)
            .toList();
    if (shares.size() < 2) {
      return List.of();
    }
    int width = shares.stream().mapToInt(c -> c.source().length()).max().orElse(0);
    List<String> lines = new ArrayList<>();
    lines.add("What makes it uncertain (shares of the variance):");
    shares.forEach(c -> lines.add("  " + Bars.named(c, width)));
    lines.add("To know it better, measure " + shares.get(0).source() + " better.");
    return lines;
  }
}
