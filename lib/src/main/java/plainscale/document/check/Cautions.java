package plainscale.document.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.Role;
import plainscale.text.Near;

/**
 * Hazards need a caution, and a caution the sentence that local rules and licensed people decide.
 * That sentence is known in English only; in a lesson for another language its absence is a remark.
 */
record Cautions(HazardNames names) implements Rule {
  private static final Pattern SENTENCE_END = Pattern.compile("[.!?;](?:\\s|$)");
  private static final Pattern RULES =
      Pattern.compile("\\b(?:rules?|regulations?|laws?|polic(?:y|ies))\\b");
  private static final Pattern WHOSE =
      Pattern.compile(
          "\\b(?:local|schools?|colleges?|university|laborator(?:y|ies)|country|licen[cs]ed|licen[cs]es?)\\b");
  private static final String LAST_WORD =
      "add: The rules of your school and those who are licensed to decide have the last word.";

  @Override
  public String name() {
    return "caution";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    List<String> hazards = lesson.lesson().head().hazards();
    List<LessonCell> cautions =
        lesson.lesson().cells().stream()
            .filter(cell -> cell.head().role().equals(Optional.of(Role.CAUTION)))
            .toList();
    List<Finding> findings = new ArrayList<>();
    if (!hazards.isEmpty() && cautions.isEmpty()) {
      findings.add(none(lesson, hazards));
    }
    hazards.stream().flatMap(hazard -> unknown(lesson, hazard)).forEach(findings::add);
    cautions.stream()
        .filter(cell -> !isLeftToOthers(text(lesson, cell)))
        .map(cell -> withoutLastWord(lesson, cell))
        .forEach(findings::add);
    return findings.stream();
  }

  private Finding none(CheckedLesson lesson, List<String> hazards) {
    String sentence =
        "The lesson names %s (%s), and none of its cells is a caution."
            .formatted(hazards.size() == 1 ? "a hazard" : "hazards", String.join(", ", hazards));
    return lesson
        .whole()
        .error(this, sentence, "write what to do about it in a text with role: \"caution\"");
  }

  private Stream<Finding> unknown(CheckedLesson lesson, String hazard) {
    List<String> known = List.copyOf(names.all());
    if (known.isEmpty() || known.contains(hazard)) {
      return Stream.empty();
    }
    String repair =
        Near.to(hazard, known, 1).stream()
            .findFirst()
            .map(near -> "did you mean " + near + "?")
            .orElse("");
    return Stream.of(
        lesson
            .whole()
            .remark(this, "The table of hazards has none called “%s”.".formatted(hazard), repair));
  }

  private static String text(CheckedLesson lesson, LessonCell cell) {
    List<String> passages =
        lesson.text(cell).passages().stream().map(passage -> passage.text()).toList();
    return passages.isEmpty() ? cell.source() : String.join(". ", passages);
  }

  private static boolean isLeftToOthers(String text) {
    return SENTENCE_END
        .splitAsStream(text.toLowerCase(Locale.ROOT))
        .anyMatch(s -> RULES.matcher(s).find() && WHOSE.matcher(s).find());
  }

  private Finding withoutLastWord(CheckedLesson lesson, LessonCell cell) {
    Place place = CheckedLesson.at(cell);
    if (isEnglish(lesson)) {
      return place.warning(
          this, "The caution does not say that local rules and licensed people decide.", LAST_WORD);
    }
    return place.remark(
        this,
        "I find no sentence in the caution that local rules and licensed people decide; I know it in English only.",
        "see that it stands there");
  }

  private static boolean isEnglish(CheckedLesson lesson) {
    String locale = lesson.lesson().head().locale().orElse("SI");
    return locale.equals("SI") || locale.equals("en") || locale.startsWith("en-");
  }
}
