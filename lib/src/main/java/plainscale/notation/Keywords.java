package plainscale.notation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The words that the notation keeps for itself. */
public final class Keywords {
  /** The values of the sheet's settings; a locale is any language tag. */
  private static final Map<Statement.Setting, List<String>> CHOICES =
      Map.of(
          Statement.Setting.CONSTANTS, List.of("codata", "textbook"),
          Statement.Setting.LOCALE, List.of("en-IN"),
          Statement.Setting.SCALE, List.of("short", "long", "milliard", "indian", "repeated"),
          Statement.Setting.DIGITS, List.of("everyday", "spaced"),
          Statement.Setting.ORDERS, List.of("ratio", "nearest", "floor"));

  /** Words that begin a statement. */
  public static final List<String> STATEMENTS =
      words(
          "given show say relation use solve what compare forces pairs field potential"
              + " map relief section release depends vary limit budget together contrast near"
              + " expand ruler squares dots figure"
              + " data statistics histogram fit plot"
              + " expect caution"
              + " constants locale scale digits orders");

  /** Words that follow a formula in a statement. */
  public static final Set<String> ENDS_FORMULA =
      Set.copyOf(
          words("in to with by roughly for and show from on between below above about within"));

  /** Words inside a statement. */
  public static final List<String> INNER =
      words(
          "in to with by roughly for if on from figures words full digits parts orders boxes counting length"
              + " sharing pages textbook codata short long milliard indian repeated ratio nearest"
              + " floor everyday spaced steps answer questions small trials seed rectangular triangular"
              + " up down left right along missing uphill downhill away into slope mirrors directions dot infinity"
              + " equation of at charge mass line ring disc sphere shell plates radius gap across flat moving"
              + " vectors as against weights log points proportional power exponential"
              + " between below above about within");

  private Keywords() {}

  private static List<String> words(String text) {
    return List.of(text.split(" ", -1));
  }

  /** Whether a name must not be used for a quantity. */
  public static boolean isReserved(String name) {
    return STATEMENTS.contains(name)
        || ENDS_FORMULA.contains(name)
        || Functions.find(name).isPresent();
  }

  /** The values that a setting can have; for a locale an example. */
  public static List<String> choices(Statement.Setting setting) {
    return CHOICES.getOrDefault(setting, List.of());
  }

  /** A statement that makes this setting. */
  static String example(Statement.Setting setting) {
    return setting.name().toLowerCase(Locale.ROOT) + " " + choices(setting).get(0);
  }
}
