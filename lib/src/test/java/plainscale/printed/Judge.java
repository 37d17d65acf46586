package plainscale.printed;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.notation.Greek;
import plainscale.printed.Answer.Amount;
import plainscale.printed.Answer.Note;
import plainscale.printed.Verdict.Outcome;
import plainscale.quantity.Quantity;
import plainscale.sheet.Run;
import plainscale.sheet.Sheet;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitParser;

/** Works examples and compares with what is printed. */
final class Judge {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** Functions go through double: what misses a tie by as little is a tie. */
  private static final BigDecimal DUST = new BigDecimal("1e-12");

  private Judge() {}

  /** The verdicts on the answers of an example. */
  static List<Verdict> verdicts(PrintedExample example) {
    Sheet sheet = new Sheet();
    Run run = sheet.run("example", example.cell());
    return example.answers().stream().map(answer -> verdict(example, answer, sheet, run)).toList();
  }

  private static Verdict verdict(PrintedExample example, Answer answer, Sheet sheet, Run run) {
    if (!run.ok()) {
      return new Verdict(example, answer, Outcome.FAIL, sentences(run));
    }
    Optional<Quantity> value = value(answer.name(), sheet);
    if (value.isEmpty()) {
      return new Verdict(example, answer, Outcome.FAIL, "has no value");
    }
    return judged(example, answer, value.get());
  }

  /** The value of a name, or of {@code u(NAME)} its standard uncertainty. */
  private static Optional<Quantity> value(String name, Sheet sheet) {
    return name.startsWith("u(")
        ? sheet
            .value(Greek.normal(name.substring(2, name.length() - 1)))
            .map(x -> Quantity.solved(x.uncertainty().standard(), x.kind()))
        : sheet.value(Greek.normal(name));
  }

  private static String sentences(Run run) {
    return run.mistakes().stream()
        .map(mistake -> mistake.problem().line() + ": " + mistake.problem().sentence())
        .collect(Collectors.joining("; "));
  }

  private static Verdict judged(PrintedExample example, Answer answer, Quantity value) {
    if (!isOfKind(value, answer)) {
      return new Verdict(example, answer, Outcome.FAIL, "is " + value);
    }
    boolean agrees = agrees(value, answer.printed());
    if (answer.note().isEmpty()) {
      String remark = "computed " + in(value, answer.printed()).round(MathContext.DECIMAL32);
      return new Verdict(example, answer, agrees ? Outcome.PASS : Outcome.FAIL, remark);
    }
    Note note = answer.note().get();
    String problem = problem(agrees, note, answer, value);
    return problem.isEmpty()
        ? new Verdict(
            example, answer, Outcome.NOTE, "computed " + note.recomputed() + ": " + note.reason())
        : new Verdict(example, answer, Outcome.FAIL, problem);
  }

  /** What is wrong with a note, or nothing. */
  private static String problem(boolean agrees, Note note, Answer answer, Quantity value) {
    if (agrees) {
      return "the note is out of date: the value agrees";
    }
    if (note.recomputed().number().precision() <= answer.printed().number().precision()) {
      return "the note's number needs more figures than the printed one";
    }
    return agrees(value, note.recomputed())
        ? ""
        : "computed " + in(value, note.recomputed()) + " where the note has " + note.recomputed();
  }

  /** Whether the value rounds to the figures of the amount; a tie may go either way. */
  static boolean agrees(Quantity value, Amount amount) {
    BigDecimal number = in(value, amount);
    BigDecimal most = amount.number().ulp().multiply(HALF).add(number.abs().multiply(DUST));
    return number.subtract(amount.number()).abs().compareTo(most) <= 0;
  }

  private static boolean isOfKind(Quantity value, Answer answer) {
    return Stream.concat(Stream.of(answer.printed()), answer.note().map(Note::recomputed).stream())
        .allMatch(amount -> unit(amount).kind().equals(value.kind()));
  }

  private static BigDecimal in(Quantity value, Amount amount) {
    return unit(amount).fromCoherent(value.value());
  }

  private static UnitOfMeasure unit(Amount amount) {
    return amount.unit().isEmpty() ? UnitOfMeasure.ONE : UnitParser.parse(amount.unit());
  }
}
