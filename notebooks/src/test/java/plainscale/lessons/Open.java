package plainscale.lessons;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plainscale.algebra.Derivation;
import plainscale.algebra.Equation;
import plainscale.algebra.Step;
import plainscale.document.Blank;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.document.edition.ConstantsUsed;
import plainscale.document.edition.Fading;
import plainscale.document.edition.UnitsUsed;
import plainscale.magnitude.Writing;
import plainscale.notation.ScalePicture;
import plainscale.render.PageMath;
import plainscale.render.PageWords;
import plainscale.render.Renderers;
import plainscale.render.ValueText;
import plainscale.sheet.GuardResult;
import plainscale.sheet.LawResult;
import plainscale.sheet.Result;

/** What a lesson says to students on purpose, at a level of blanks. */
record Open(String text, Set<String> numbers) {
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern BRACED = Pattern.compile("\\{[^}]*\\}");

  private static final Result.Label NOTHING =
      new Result.Label(Optional.empty(), Optional.empty(), "");

  /** The first words of statements that stand although formulas are blank, or all is. */
  private static final Pattern STANDS =
      Pattern.compile("(?:given|relation|what if|compare|vary|limit) .*", Pattern.DOTALL);

  private static final Pattern ASKS = Pattern.compile("(?:what if|compare) .*", Pattern.DOTALL);

  static Open of(StudentLesson lesson, Blank blank, Fading faded) {
    StringBuilder text = new StringBuilder(lesson.prose());
    Set<String> numbers = new TreeSet<>();
    for (WorkedCell cell : lesson.code()) {
      for (String statement : cell.cell().source().split("\n(?! )", -1)) {
        text.append('\n').append(said(statement, blank));
      }
      text.append(landmarksInWords(cell.results()));
      for (Result result : cell.results()) {
        numbers.addAll(shown(result, blank, faded));
      }
    }
    numbers.addAll(PageNumbers.ofText(text.toString()));
    numbers.addAll(StudentPagesTest.rendered(ConstantsUsed.of(lesson.worked())));
    numbers.addAll(PageNumbers.ofText(Renderers.text(UnitsUsed.of(lesson.worked()))));
    return new Open(text.toString(), numbers);
  }

  /** A statement as far as it stands: whole, or only its words in quotation marks. */
  private static String said(String statement, Blank blank) {
    boolean whole =
        blank == Blank.VALUES
            || (blank == Blank.FORMULAS && STANDS.matcher(statement).matches())
            || ASKS.matcher(statement).matches();
    String quoted =
        QUOTED
            .matcher(statement)
            .results()
            .map(words -> BRACED.matcher(words.group(1)).replaceAll(" "))
            .collect(Collectors.joining(" "));
    return whole ? statement : quoted;
  }

  private static Set<String> shown(Result result, Blank blank, Fading faded) {
    if (result instanceof Result.Valued valued && isWritten(valued, blank)) {
      return StudentPagesTest.rendered(List.of(result));
    }
    if (result instanceof Result.Valued valued && blank == Blank.VALUES) {
      return formula(valued);
    }
    boolean stays =
        result instanceof GuardResult.Cautioned
            || (result instanceof LawResult && blank != Blank.ALL);
    if (stays) {
      return PageNumbers.ofText(Renderers.text(List.of(result)));
    }
    if (result instanceof Result.Derived derived) {
      return steps(derived, blank, faded);
    }
    if (result instanceof Result.Pictured pictured && pictured.drawing() == ScalePicture.RULER) {
      return landmarks(pictured);
    }
    if (result instanceof LawResult && blank != Blank.ALL) {
      return PageNumbers.ofText(Renderers.text(List.of(result)));
    }
    if (result instanceof GuardResult.Cautioned) {
      return PageNumbers.ofText(Renderers.text(List.of(result)));
    }
    if (result instanceof GuardResult.SetOff setOff) {
      return shown(new GuardResult.Cautioned(List.of(setOff.hazard())), blank, faded);
    }
    if (result instanceof Result.Contrasted contrast && blank == Blank.VALUES) {
      return nameless(contrast);
    }
    if (result instanceof Result.Varied varied && blank != Blank.ALL) {
      return firstColumn(varied);
    }
    if (result instanceof Result.Captioned caption) {
      return PageNumbers.ofText(String.valueOf(caption.number()));
    }
    return Set.of();
  }

  private static Set<String> formula(Result.Valued valued) {
    return valued
        .label()
        .formula()
        .map(formula -> PageNumbers.ofPage(PageMath.of(formula, valued.writing())))
        .orElse(Set.of());
  }

  /** A number without a name stands in the cell itself. */
  private static Set<String> nameless(Result.Contrasted contrast) {
    return contrast.sides().stream()
        .filter(side -> side.label().equals(NOTHING))
        .map(side -> ValueText.number(side.shown(), contrast.writing()))
        .flatMap(number -> PageNumbers.ofText(number).stream())
        .collect(Collectors.toSet());
  }

  /** What a name takes one after another. */
  private static Set<String> firstColumn(Result.Varied varied) {
    return varied.rows().stream()
        .flatMap(row -> row.get(0).stream())
        .map(shown -> ValueText.number(shown, varied.writing()))
        .flatMap(number -> PageNumbers.ofText(number).stream())
        .collect(Collectors.toSet());
  }

  private static String landmarksInWords(List<Result> results) {
    return results.stream()
        .filter(Result.Pictured.class::isInstance)
        .map(Result.Pictured.class::cast)
        .map(pictured -> String.join("\n", Spelled.of(pictured.landmarks(), pictured.writing())))
        .collect(Collectors.joining("\n"));
  }

  /** A measurement, or a number that stands in the cell. */
  private static boolean isWritten(Result.Valued valued, Blank blank) {
    boolean number = valued.role() == Result.Role.DEFINED && valued.label().formula().isEmpty();
    return valued.role() == Result.Role.GIVEN
        ? blank != Blank.ALL
        : number && blank == Blank.VALUES;
  }

  /** Steps that are shown; their numbers; relations, unless all is blank. */
  private static Set<String> steps(Result.Derived derived, Blank blank, Fading faded) {
    Derivation derivation = derived.derivation();
    Set<String> numbers = new TreeSet<>();
    derivation.steps().forEach(s -> numbers.addAll(PageNumbers.ofText("" + s.number())));
    if (blank != Blank.ALL) {
      derivation.relations().forEach(r -> numbers.addAll(numbers(r.equation())));
    }
    if (blank == Blank.VALUES) {
      int shown = (int) Math.max(0, derivation.steps().size() - (long) faded.steps());
      for (Step step : derivation.steps().subList(0, shown)) {
        numbers.addAll(numbers(step.after()));
        numbers.addAll(PageNumbers.ofText(PageWords.reason(derived, step)));
      }
    }
    return numbers;
  }

  private static Set<String> numbers(Equation equation) {
    return PageNumbers.ofPage(PageMath.of(equation, Writing.USUAL));
  }

  /** Landmarks, and the powers at the ticks, which go far beyond the numbers. */
  private static Set<String> landmarks(Result.Pictured pictured) {
    Set<String> numbers = new TreeSet<>();
    pictured.landmarks().stream()
        .map(side -> ValueText.number(side.shown(), pictured.writing()))
        .forEach(landmark -> numbers.addAll(PageNumbers.ofText(landmark)));
    for (int power = -60; power <= 60; power++) {
      numbers.addAll(PageNumbers.ofText("10^" + power));
    }
    return numbers;
  }
}
