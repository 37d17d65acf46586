package plainscale.document.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import plainscale.document.ProseText;
import plainscale.notation.Part;
import plainscale.notation.Statement.Say;

/**
 * Numbers that are typed into a text and that the sheet shows too: nobody changes them when the
 * givens change.
 */
record TypedNumbers() implements Rule {
  @Override
  public String name() {
    return "typed-number";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    List<Computed> numbers = ComputedNumbers.of(lesson);
    if (numbers.isEmpty()) {
      return Stream.empty();
    }
    NumberFinder finder = new NumberFinder(lesson.sheet().writing());
    List<Finding> findings = new ArrayList<>();
    lesson
        .said()
        .forEach(
            said ->
                find(
                    finder.in(said.passage().text()),
                    numbers,
                    at -> CheckedLesson.at(said.cell(), said.passage().lineAt(at)),
                    findings));
    lesson
        .lines(Say.class)
        .forEach(
            line ->
                find(
                    finder.in(words((Say) line.statement())),
                    numbers,
                    at -> CheckedLesson.at(line),
                    findings));
    return findings.stream();
  }

  /** The words between the live values of a sentence. */
  private static String words(Say say) {
    StringBuilder words = new StringBuilder();
    for (Part part : say.parts()) {
      words.append(part instanceof Part.Text text ? text.text() : ProseText.ELSEWHERE);
    }
    return words.toString();
  }

  private void find(
      List<TypedNumber> typed,
      List<Computed> numbers,
      IntFunction<Place> place,
      List<Finding> findings) {
    for (TypedNumber number : typed) {
      Stream.concat(
              numbers.stream().filter(Computed::given),
              numbers.stream().filter(computed -> !computed.given()))
          .flatMap(computed -> finding(number, computed, place).stream())
          .findFirst()
          .ifPresent(findings::add);
    }
  }

  private Optional<Finding> finding(
      TypedNumber typed, Computed computed, IntFunction<Place> place) {
    return typed.as(computed).map(text -> finding(text, computed, place.apply(typed.at())));
  }

  private Finding finding(String text, Computed computed, Place place) {
    return computed.given() ? given(text, computed, place) : computed(text, computed, place);
  }

  private Finding given(String text, Computed given, Place place) {
    return place.remark(
        this,
        "%s stands in the text and is also the given %s.".formatted(text, given.name()),
        "put {%s} into a say line of a cell, so that it follows the measurement"
            .formatted(given.name()));
  }

  private Finding computed(String text, Computed computed, Place place) {
    if (computed.name().isEmpty()) {
      return place.warning(
          this,
          "%s stands in the text and is also computed.".formatted(text),
          "leave it to the cell that shows it");
    }
    return place.warning(
        this,
        "%s stands in the text and is also computed as %s.".formatted(text, computed.name()),
        "put {%s} into a say line of a cell, so that it follows the givens"
            .formatted(computed.name()));
  }
}
