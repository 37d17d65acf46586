package plainscale.document.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.notation.DataStatement;
import plainscale.notation.Expr;
import plainscale.notation.Printer;
import plainscale.notation.Statement;
import plainscale.quantity.Quantity;
import plainscale.quantity.Shown;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;

/** All numbers that the cells of a lesson show, those with a name first. */
final class ComputedNumbers {
  private final CheckedLesson lesson;
  private final List<Computed> numbers = new ArrayList<>();

  private ComputedNumbers(CheckedLesson lesson) {
    this.lesson = lesson;
  }

  static List<Computed> of(CheckedLesson lesson) {
    ComputedNumbers found = new ComputedNumbers(lesson);
    lesson.lines().forEach(line -> found.names(line.statement()));
    lesson.worked().cells().stream().flatMap(cell -> cell.results().stream()).forEach(found::shown);
    return List.copyOf(found.numbers);
  }

  private void names(Statement statement) {
    if (statement instanceof Statement.Given given) {
      name(given.name(), true);
    } else if (statement instanceof Statement.Definition definition) {
      name(definition.name(), definition.formula() instanceof Expr.Literal);
    } else if (statement instanceof Statement.Solve solve) {
      name(solve.unknown(), false);
    } else if (statement instanceof DataStatement data) {
      data.named().forEach(named -> name(named.name(), false));
    }
  }

  private void name(String name, boolean given) {
    lesson.sheet().value(name).ifPresent(value -> add(name, given, value));
  }

  private void add(String name, boolean given, Quantity value) {
    numbers.add(new Computed(name, given, value.value(), value.kind(), List.of(value.shown())));
  }

  private void shown(Result result) {
    if (result instanceof Result.Valued valued && valued.role() != Result.Role.GIVEN) {
      valued(valued);
    } else if (result instanceof Result.Written written) {
      numeral(asked(written.label()), written.numeral());
    } else if (result instanceof Result.Contrasted contrast) {
      add(ratio(contrast), contrast.times());
    } else if (result instanceof Result.Narrated narrated) {
      narrated.pieces().stream()
          .filter(Piece.Live.class::isInstance)
          .forEach(piece -> numeral("", ((Piece.Live) piece).numeral()));
    } else if (result instanceof Result.Compared compared) {
      compared.rows().stream()
          .filter(row -> row.why() == Result.Row.Why.FOLLOWS)
          .forEach(row -> add("", row.after()));
    } else if (result instanceof Result.Varied varied) {
      varied.rows().stream()
          .flatMap(row -> row.stream().skip(1).flatMap(Optional::stream))
          .forEach(shown -> add("", shown));
    } else if (result instanceof Result.Budgeted budgeted) {
      add(asked(budgeted.label()), budgeted.shown());
    }
  }

  /** A definition is among the names already, and now with its prefix too. */
  private void valued(Result.Valued valued) {
    List<Shown> forms =
        Stream.concat(Stream.of(valued.shown()), valued.prefixed().stream()).toList();
    Quantity value = valued.quantity();
    numbers.add(
        new Computed(asked(valued.label()), isGiven(valued), value.value(), value.kind(), forms));
  }

  private boolean isGiven(Result.Valued valued) {
    String name = valued.label().name().orElse("");
    return numbers.stream().anyMatch(number -> number.given() && number.name().equals(name));
  }

  private void numeral(String name, Result.Numeral numeral) {
    Shown shown = numeral.shown();
    numbers.add(
        new Computed(
            name,
            false,
            shown.unit().toCoherent(numeral.unrounded()),
            shown.unit().kind(),
            List.of(shown)));
  }

  private void add(String name, Shown shown) {
    numbers.add(Computed.rounded(name, shown));
  }

  private static String asked(Result.Label label) {
    return label.name().or(() -> label.formula().map(Printer::print)).orElse("");
  }

  private static String ratio(Result.Contrasted contrast) {
    Result.Side largest = contrast.sides().get(0);
    Result.Side smallest = largest;
    for (Result.Side side : contrast.sides()) {
      largest = size(side, largest) > 0 ? side : largest;
      smallest = size(side, smallest) < 0 ? side : smallest;
    }
    return "%s/%s".formatted(factor(largest), factor(smallest));
  }

  private static int size(Result.Side one, Result.Side other) {
    return one.shown().value().abs().compareTo(other.shown().value().abs());
  }

  private static String factor(Result.Side side) {
    return side.label()
        .name()
        .orElseGet(() -> side.label().formula().map(f -> "(" + Printer.print(f) + ")").orElse("1"));
  }
}
