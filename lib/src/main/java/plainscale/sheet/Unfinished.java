package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Expressions;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.units.UnitOfMeasure;

/** What is said of lines with blanks, and of lines that wait for them. */
final class Unfinished {
  private final Showing showing;

  Unfinished(Showing showing) {
    this.showing = showing;
  }

  /** A line with blanks: what is asked for. */
  Result open(Open open) {
    Subject subject = Subject.of(open, showing.source());
    String state =
        isWhole(open)
            ? (subject.plural() ? " are" : " is") + " still blank: "
            : (subject.plural() ? " have" : " has") + blanks(open.blanks().size());
    return new Result.Unfinished(subject.begun() + state + asked(open) + ".", open.blanks().size());
  }

  private static String blanks(int number) {
    return number == 1 ? " a blank: " : " " + number + " blanks: ";
  }

  /** Whether nothing of it is there yet. */
  private static boolean isWhole(Open open) {
    return switch (open.blanks().get(0).asked()) {
      case VALUE, RELATION -> true;
      case FORCES -> ((Statement.Forces) open.around()).acting().isEmpty();
      case EXPRESSION ->
          (open.around() instanceof Statement.Definition definition
                  && Open.isBlank(definition.formula()))
              || (open.around() instanceof Statement.Show show && Open.isBlank(show.value()));
      case UNCERTAINTY, READING, RELATIONS, NAME, SOURCES -> false;
    };
  }

  private static String asked(Open open) {
    if (open.around() instanceof Statement.Given given) {
      return measured(given, open.blanks());
    }
    if (open.blanks().size() > 1) {
      return "fill in each ?";
    }
    return switch (open.blanks().get(0).asked()) {
      case RELATION -> "write an equation in place of the ?";
      case RELATIONS -> "name the relations in place of the ?";
      case NAME -> "name a quantity in place of the ?";
      case FORCES -> "write the forces in place of the ?";
      case SOURCES -> "write the charges or masses in place of the ?";
      case VALUE, UNCERTAINTY, READING, EXPRESSION -> expression(open.around());
    };
  }

  private static String measured(Statement.Given given, List<Open.Blank> blanks) {
    UnitOfMeasure unit = given.measurement().unit();
    String in = unit.equals(UnitOfMeasure.ONE) ? "" : " (in " + unit.text() + ")";
    if (blanks.size() > 1) {
      return "put your values in place of each ?" + in;
    }
    return switch (blanks.get(0).asked()) {
      case UNCERTAINTY -> "put its uncertainty in place of the ?" + in;
      case READING -> "put your reading in place of the ?" + in;
      default -> "put your value in place of the ?" + in;
    };
  }

  private static String expression(Statement around) {
    if (around instanceof Statement.Definition definition && Open.isBlank(definition.formula())) {
      return "write what it equals in place of the ?";
    }
    if (around instanceof Statement.Relation relation
        && (Open.isBlank(relation.left()) || Open.isBlank(relation.right()))) {
      return "write the other side in place of the ?";
    }
    return Expressions.of(around).anyMatch(Open::isBlank)
        ? "put a quantity in place of the ?"
        : "write what is missing in place of the ?";
  }

  /** What is wrong in the rest of the line. */
  List<Result> mistakes(Statement statement) {
    return Blanks.mistakes(statement, showing).stream().<Result>map(Result.Mistaken::new).toList();
  }

  /** A line whose value hangs on blanks, and what is wrong with it all the same. */
  List<Result> waiting(Statement statement, ProblemException reason) {
    List<Result> results = new ArrayList<>();
    results.add(new Result.Unfinished(waits(statement, reason.problems().get(0)), 0));
    results.addAll(mistakes(statement));
    return results;
  }

  private String waits(Statement statement, Problem reason) {
    Subject subject = Subject.of(statement, showing.source());
    String waits = subject.begun() + (subject.plural() ? " wait" : " waits");
    List<Subject> blanks = blanks(statement).toList();
    if (blanks.isEmpty()) {
      return waits + ": " + reason.sentence();
    }
    boolean several = blanks.size() > 1 || blanks.get(0).plural();
    return waits
        + " for "
        + listed(blanks.stream().map(Subject::words).toList())
        + ", which "
        + (several ? "are" : "is")
        + " still blank.";
  }

  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : words.stream().limit(last).collect(Collectors.joining(", ")) + " and " + words.get(last);
  }

  /** In the order of the sheet. */
  private Stream<Subject> blanks(Statement statement) {
    Map<String, Entry> entries = showing.names().entries();
    Set<String> needed = References.needed(statement, entries);
    return entries.values().stream()
        .filter(entry -> entry.statement() instanceof Open && needed.contains(entry.name()))
        .map(Subject::of)
        .distinct();
  }
}
