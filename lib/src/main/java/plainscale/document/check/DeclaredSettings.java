package plainscale.document.check;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plainscale.document.LessonHead;
import plainscale.magnitude.Language;
import plainscale.magnitude.Scale;
import plainscale.notation.Keywords;
import plainscale.notation.Statement.Choice;
import plainscale.notation.Statement.Setting;

/**
 * Settings that the lesson declares and that no cell sets: a front end does not show a notebook's
 * metadata to the kernel, so only a cell can set them.
 */
record DeclaredSettings() implements Rule {
  private static final String LOCALE = "SI";
  private static final String CONSTANTS = "codata";

  @Override
  public String name() {
    return "settings";
  }

  @Override
  public Stream<Finding> check(CheckedLesson lesson) {
    LessonHead head = lesson.lesson().head();
    Map<Setting, Optional<String>> declared =
        Map.of(
            Setting.LOCALE, head.locale(),
            Setting.SCALE, head.scale(),
            Setting.CONSTANTS, head.constants());
    return Stream.of(Setting.LOCALE, Setting.SCALE, Setting.CONSTANTS)
        .flatMap(
            setting ->
                declared.getOrDefault(setting, Optional.empty()).stream()
                    .filter(value -> isKnown(setting, value))
                    .flatMap(value -> check(lesson, setting, value).stream()));
  }

  /** What is not known is told by the schema. */
  private static boolean isKnown(Setting setting, String value) {
    return setting == Setting.LOCALE
        ? value.equals(LOCALE) || Language.of(Locale.forLanguageTag(value)).isPresent()
        : Keywords.choices(setting).contains(value);
  }

  private Optional<Finding> check(CheckedLesson lesson, Setting setting, String value) {
    Optional<CheckedLesson.Line> set =
        lesson
            .lines(Choice.class)
            .filter(line -> ((Choice) line.statement()).setting() == setting)
            .reduce((first, later) -> later);
    if (set.isEmpty()) {
      return usual(lesson, setting).equals(value)
          ? Optional.empty()
          : Optional.of(unset(lesson, setting, value));
    }
    String other = ((Choice) set.get().statement()).option().text();
    return other.equals(value)
        ? Optional.empty()
        : Optional.of(otherwise(set.get(), setting, value, other));
  }

  /** What holds where no cell sets anything. */
  private static String usual(CheckedLesson lesson, Setting setting) {
    return switch (setting) {
      case LOCALE -> LOCALE;
      case CONSTANTS -> CONSTANTS;
      default ->
          lesson
              .lesson()
              .head()
              .locale()
              .flatMap(tag -> Language.of(Locale.forLanguageTag(tag)))
              .map(Language::defaultScale)
              .orElse(Scale.SHORT)
              .word();
    };
  }

  private Finding unset(CheckedLesson lesson, Setting setting, String value) {
    String line = word(setting) + " " + value;
    String sentence = "The lesson says %s, and no cell sets it.".formatted(line);
    String where =
        lesson
            .code()
            .findFirst()
            .map(cell -> "as the first line of cell " + cell.id())
            .orElse("in a cell");
    return lesson.whole().warning(this, sentence, "write %s %s".formatted(line, where));
  }

  private Finding otherwise(CheckedLesson.Line set, Setting setting, String value, String other) {
    String word = word(setting);
    String sentence = "The lesson says %s %s, and this line sets %s.".formatted(word, value, other);
    String repair =
        "write %s %s here, or %s: \"%s\" in the metadata of the lesson"
            .formatted(word, value, word, other);
    return CheckedLesson.at(set).warning(this, sentence, repair);
  }

  private static String word(Setting setting) {
    return setting.name().toLowerCase(Locale.ROOT);
  }
}
