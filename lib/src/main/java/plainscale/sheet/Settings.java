package plainscale.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plainscale.laws.Constants;
import plainscale.magnitude.DigitStyle;
import plainscale.magnitude.Language;
import plainscale.magnitude.Orders;
import plainscale.magnitude.Scale;
import plainscale.magnitude.Words;
import plainscale.magnitude.Writing;
import plainscale.notation.Keywords;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Statement;
import plainscale.text.Near;

/**
 * What the cells of a sheet have chosen: the constants, and how numbers are written. For each
 * setting the last choice that means something counts, wherever it stands.
 */
record Settings(Constants constants, Writing writing) {
  /** Nothing chosen. */
  static final Settings USUAL = new Settings(Constants.CODATA, Writing.USUAL);

  /** The digits of the SI Brochure with English words: what a sheet has without a choice. */
  private static final String SI = "SI";

  /** The settings that these choices make, the later ones over the earlier. */
  static Settings of(List<Statement.Choice> choices) {
    Map<Statement.Setting, Statement.Option> last = new EnumMap<>(Statement.Setting.class);
    for (Statement.Choice choice : choices) {
      if (isKnown(choice.setting(), choice.option().text())) {
        last.put(choice.setting(), choice.option());
      }
    }
    Settings settings = USUAL;
    for (Map.Entry<Statement.Setting, Statement.Option> choice : last.entrySet()) {
      settings = settings.with(choice.getKey(), choice.getValue().text());
    }
    return settings;
  }

  private static boolean isKnown(Statement.Setting setting, String option) {
    return setting == Statement.Setting.LOCALE
        ? option.equals(SI) || Words.of(Locale.forLanguageTag(option)).isPresent()
        : Keywords.choices(setting).contains(option);
  }

  private Settings with(Statement.Setting setting, String option) {
    return switch (setting) {
      case CONSTANTS -> new Settings(Constants.named(option), writing);
      case LOCALE -> new Settings(constants, inLocale(option));
      case SCALE -> new Settings(constants, inScale(writing, option));
      case DIGITS -> new Settings(constants, inDigits(option));
      case ORDERS ->
          new Settings(
              constants,
              new Writing(
                  writing.digits(),
                  writing.words(),
                  Orders.valueOf(option.toUpperCase(Locale.ROOT))));
    };
  }

  private Writing inLocale(String tag) {
    return tag.equals(SI) ? Writing.USUAL : Writing.of(Locale.forLanguageTag(tag)).orElse(writing);
  }

  private static Writing inScale(Writing writing, String name) {
    return Scale.named(name)
        .map(s -> new Writing(writing.digits(), writing.words().in(s), writing.orders()))
        .orElse(writing);
  }

  private Writing inDigits(String option) {
    DigitStyle spaced = writing.digits().spaced();
    return option.equals("spaced")
        ? new Writing(spaced, writing.words().with(spaced), writing.orders())
        : writing;
  }

  /** What is wrong with a choice: nothing, or what it is and what could be chosen. */
  static void check(Statement.Choice choice, String source) {
    String option = choice.option().text();
    if (isKnown(choice.setting(), option)) {
      return;
    }
    throw choice.setting() == Statement.Setting.LOCALE
        ? unknownLocale(choice.option(), source, "locale ")
        : unknown(choice, source);
  }

  private static ProblemException unknown(Statement.Choice choice, String source) {
    String word = choice.setting().name().toLowerCase(Locale.ROOT);
    List<String> repairs =
        Keywords.choices(choice.setting()).stream().map(c -> word + " " + c).toList();
    String sentence = "“" + choice.option().text() + "” is no choice for “" + word + "”.";
    return new ProblemException(
        new Problem(Problem.Kind.NAME, sentence, source, choice.option().span(), repairs));
  }

  private static ProblemException unknownLocale(
      Statement.Option option, String source, String before) {
    List<String> known = Arrays.stream(Language.values()).map(Language::tag).toList();
    List<String> near = near(option.text(), known, before.startsWith("in"));
    String sentence =
        "I have no number words for “%s”; I know %s."
            .formatted(option.text(), String.join(", ", known));
    List<String> repairs =
        (near.isEmpty() ? known.subList(0, 1) : near).stream().map(t -> before + t).toList();
    return new ProblemException(
        new Problem(Problem.Kind.NAME, sentence, source, option.span(), repairs));
  }

  /** The tags of a language that is called by its name, else tags and scales that look alike. */
  private static List<String> near(String text, List<String> tags, boolean scalesToo) {
    List<String> named =
        Arrays.stream(Language.values())
            .filter(language -> isCalled(language.locale(), text))
            .map(Language::tag)
            .toList();
    List<String> known = new ArrayList<>(tags);
    if (scalesToo) {
      known.addAll(Keywords.choices(Statement.Setting.SCALE));
    }
    return named.isEmpty() ? Near.to(text, known, 2) : named;
  }

  private static boolean isCalled(Locale locale, String text) {
    return locale.getDisplayLanguage(Locale.ENGLISH).equalsIgnoreCase(text)
        || locale.getDisplayLanguage(locale).equalsIgnoreCase(text);
  }

  /** What a choice means, in a sentence. */
  static String words(Statement.Choice choice) {
    String option = choice.option().text();
    return switch (choice.setting()) {
      case CONSTANTS ->
          option.equals("textbook")
              ? "Constants: the rounded values of school books, with their figures."
              : "Constants: CODATA 2022, with uncertainties.";
      case LOCALE -> "Numbers are written for " + option + ".";
      case SCALE -> "Number words: the " + option + " scale.";
      case DIGITS -> "Digits: " + option + ".";
      case ORDERS ->
          "Orders of magnitude: "
              + Orders.valueOf(option.toUpperCase(Locale.ROOT)).definition(Language.ENGLISH)
              + ".";
    };
  }

  /** The writing that words after {@code in words} choose: a scale, a language, or both. */
  static Writing chosen(Writing writing, List<Statement.Option> wording, String source) {
    Writing chosen = writing;
    for (Statement.Option option : wording) {
      if (Scale.named(option.text()).isPresent()) {
        chosen = inScale(chosen, option.text());
      } else {
        chosen =
            Writing.of(Locale.forLanguageTag(option.text()))
                .orElseThrow(() -> unknownLocale(option, source, "in words "));
      }
    }
    return chosen;
  }
}
