package plainscale.lessons;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plainscale.document.Lesson;
import plainscale.document.LessonCell;
import plainscale.document.WorkedLesson;
import plainscale.magnitude.Writing;
import plainscale.notation.Line;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Open;
import plainscale.quantity.Shown;
import plainscale.render.Renderers;
import plainscale.sheet.Piece;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/**
 * What a lesson shows and its students' copy must not tell: what was written where the copy has
 * blanks, and the numbers of all results that the copy does not show.
 *
 * @param written numbers as they were typed
 * @param numbers values, in their unit and in the SI unit, to two figures and more
 * @param words those numbers in words
 * @param formulas formulas and relations, {@link #tight}
 */
record HiddenFromStudents(
    Set<String> written, Set<BigDecimal> numbers, Set<String> words, Set<String> formulas) {
  private static final int TELLING = 2;

  /** Two figures of a longer number stand in many a text by chance. */
  private static final int TELLING_ROUNDED = 3;

  private static final int SHORTEST_WORDS = 8;

  static HiddenFromStudents of(Lesson lesson, Lesson student) {
    HiddenFromStudents hidden =
        new HiddenFromStudents(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
    hidden.addSources(lesson, student);
    hidden.addResults(lesson, student);
    return hidden;
  }

  private void addSources(Lesson lesson, Lesson student) {
    for (LessonCell cell : student.cells()) {
      if (cell instanceof LessonCell.Code) {
        String source =
            lesson.cells().stream()
                .filter(c -> c.id().equals(cell.id()))
                .findFirst()
                .orElseThrow()
                .source();
        List<Line> copied = lines(cell.source());
        List<Line> lines = lines(source);
        for (int i = 0; i < copied.size(); i++) {
          if (copied.get(i).read() instanceof Open) {
            addParts(source, lines.get(i));
          }
        }
      }
    }
  }

  /** The lines that say something. */
  static List<Line> lines(String source) {
    return Notation.lines(source, Names.NONE).stream().filter(line -> line.read() != null).toList();
  }

  private void addParts(String source, Line line) {
    for (Line.Part part : line.parts()) {
      String text = source.substring(part.span().start(), part.span().end());
      switch (part.what()) {
        case VALUE, UNCERTAINTY, CONCISE -> {
          if (text.replaceAll("\\D", "").length() >= TELLING) {
            written.add(text);
          }
        }
        case FORMULA, RELATION, FORCES, SOURCES -> addFormula(text);
        case NUMBER,
            RELATIONS -> {} // a number stands in a formula; names of relations tell nothing
      }
    }
  }

  /** A name alone tells nothing. */
  private void addFormula(String text) {
    if (!text.matches("[\\p{L}\\p{N}_]*")) {
      formulas.add(tight(text));
    }
  }

  /** A formula without what may stand between its factors. */
  static String tight(String formula) {
    return formula.replaceAll("[\\s*·]+", "");
  }

  private void addResults(Lesson lesson, Lesson student) {
    Set<String> shown =
        results(student).stream()
            .map(result -> Renderers.text(List.of(result)))
            .collect(Collectors.toCollection(HashSet::new));
    results(lesson).stream()
        .filter(result -> !shown.contains(Renderers.text(List.of(result))))
        .forEach(this::add);
    HiddenFromStudents told =
        new HiddenFromStudents(Set.of(), new TreeSet<>(), new TreeSet<>(), Set.of());
    results(student).forEach(told::add);
    numbers.removeAll(told.numbers());
    words.removeAll(told.words());
  }

  private static List<Result> results(Lesson lesson) {
    return WorkedLesson.run(lesson, done -> {}).cells().stream()
        .flatMap(cell -> cell.results().stream())
        .toList();
  }

  private void add(Result result) {
    if (result instanceof Result.Valued valued) {
      add(valued.shown(), valued.writing());
      valued.prefixed().ifPresent(shown -> add(shown, valued.writing()));
    } else if (result instanceof Result.Written text) {
      add(text.numeral().shown(), text.numeral().writing());
    } else if (result instanceof Result.Derived derived) {
      derived.value().ifPresent(value -> add(value.shown(), derived.writing()));
    } else if (result instanceof Result.Contrasted contrast) {
      contrast.sides().forEach(side -> add(side.shown(), contrast.writing()));
      add(contrast.times(), contrast.writing());
    } else if (result instanceof Result.Narrated narrated) {
      narrated.pieces().stream()
          .filter(Piece.Live.class::isInstance)
          .map(piece -> ((Piece.Live) piece).numeral())
          .forEach(numeral -> add(numeral.shown(), numeral.writing()));
    }
  }

  private void add(Shown shown, Writing writing) {
    UnitOfMeasure unit = shown.unit();
    for (BigDecimal value : List.of(shown.value(), unit.toCoherent(shown.value()))) {
      add(value.abs(), writing);
      for (int figures = TELLING_ROUNDED; figures < value.precision(); figures++) {
        add(value.abs().round(new MathContext(figures)), writing);
      }
    }
  }

  private void add(BigDecimal value, Writing writing) {
    if (value.signum() != 0 && value.stripTrailingZeros().precision() >= TELLING) {
      numbers.add(value.stripTrailingZeros());
      List<String> spelled = new ArrayList<>();
      spelled.add(writing.words().mixed(value).text());
      spelled.add(writing.words().spelled(value).text());
      spelled.stream()
          .map(text -> text.toLowerCase(Locale.ROOT))
          .filter(text -> text.length() >= SHORTEST_WORDS && text.matches(".*\\p{L}.*"))
          .forEach(words::add);
    }
  }
}
