package plainscale.document.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plainscale.document.LessonCell;
import plainscale.document.Role;
import plainscale.document.WorkedLesson.WorkedCell;
import plainscale.laws.Hazards;
import plainscale.notation.GuardStatement.Caution;
import plainscale.notation.Statement;
import plainscale.sheet.GuardResult;

/**
 * Hazards need a caution, and a caution the sentence that local rules and licensed people decide,
 * which the statement {@code caution} says by itself. In texts it is known in English only; in a
 * lesson for another language its absence is a remark.
 */
record Cautions() implements Rule {
  private static final Pattern SENTENCE_END = Pattern.compile("[.!?;](?:\\s|$)");
  private static final Pattern RULES =
      Pattern.compile("\\b(?:rules?|regulations?|laws?|polic(?:y|ies))\\b");
  private static final Pattern WHOSE =
      Pattern.compile(
          "\\b(?:local|schools?|colleges?|university|laborator(?:y|ies)|country|licen[cs]ed|licen[cs]es?)\\b");

  @Override
  public String name() {
    return "caution";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    List<String> hazards = lesson.lesson().head().hazards();
    List<CheckedLesson.Line> statements = lesson.lines(Caution.class).toList();
    List<LessonCell> cautions =
        lesson.lesson().cells().stream()
            .filter(cell -> cell.head().role().equals(Optional.of(Role.CAUTION)))
            .toList();
    List<Finding> findings = new ArrayList<>();
    if (!hazards.isEmpty() && cautions.isEmpty() && statements.isEmpty()) {
      findings.add(none(lesson, hazards));
    }
    hazards.stream().flatMap(hazard -> unknown(lesson, hazard)).forEach(findings::add);
    statements.stream().flatMap(line -> undeclared(line, hazards)).forEach(findings::add);
    setOff(lesson, hazards, statements).forEach(findings::add);
    cautions.stream()
        .filter(cell -> statements.stream().noneMatch(line -> line.cell().equals(cell)))
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
        .error(
            this,
            sentence,
            "write caution %s in a cell, or what to do about it in a text with role: \"caution\""
                .formatted(String.join(", ", hazards)));
  }

  private Stream<Finding> unknown(CheckedLesson lesson, String hazard) {
    if (Hazards.find(hazard).isPresent()) {
      return Stream.empty();
    }
    List<String> near = Hazards.nearest(hazard);
    return Stream.of(
        lesson
            .whole()
            .remark(
                this,
                "The table of hazards has none called “%s”.".formatted(hazard),
                near.isEmpty() ? "" : "write " + String.join(" or ", near)));
  }

  private static Stream<String> named(CheckedLesson.Line line) {
    return ((Caution) line.statement())
        .hazards().stream()
            .map(Statement.Option::text)
            .filter(name -> Hazards.find(name).isPresent());
  }

  /** A caution of a hazard that the lesson does not name, so that a list of lessons lacks it. */
  private Stream<Finding> undeclared(CheckedLesson.Line line, List<String> hazards) {
    return named(line)
        .filter(hazard -> !hazards.contains(hazard))
        .map(
            hazard ->
                CheckedLesson.at(line)
                    .remark(
                        this,
                        "The lesson does not name the hazard %s, of which this line is a caution."
                            .formatted(hazard),
                        "write it into hazards in the metadata of the lesson"));
  }

  /** Values that set off the caution of a hazard of which nothing is said. */
  private Stream<Finding> setOff(
      CheckedLesson lesson, List<String> hazards, List<CheckedLesson.Line> statements) {
    Set<String> said = new HashSet<>(hazards);
    statements.stream().flatMap(Cautions::named).forEach(said::add);
    List<Finding> findings = new ArrayList<>();
    for (WorkedCell worked : lesson.worked().cells()) {
      worked.results().stream()
          .filter(GuardResult.SetOff.class::isInstance)
          .map(GuardResult.SetOff.class::cast)
          .filter(setOff -> said.add(setOff.hazard().name()))
          .map(setOff -> unsaid(lesson, worked.cell(), setOff))
          .forEach(findings::add);
    }
    return findings.stream();
  }

  private Finding unsaid(CheckedLesson lesson, LessonCell cell, GuardResult.SetOff setOff) {
    String hazard = setOff.hazard().name();
    return lesson
        .at(cell, setOff.label().name().orElse(""))
        .warning(
            this,
            "A value sets off the caution of %s, which the lesson does not name as a hazard."
                .formatted(hazard),
            "write %s into hazards in the metadata of the lesson, and caution %s in a cell"
                .formatted(hazard, hazard));
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
          this,
          "The caution does not say that local rules and licensed people decide.",
          "add: " + Hazards.LAST_WORD);
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
