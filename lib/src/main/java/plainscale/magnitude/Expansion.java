package plainscale.magnitude;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The way from a power of ten to digits and words, one step at a time: 4.7E+13 is 4.7 × 10¹³, the
 * marker moves 13 places, twelve empty places are filled with zeros, the digits are grouped, the
 * groups are named, and read as 47 trillion.
 */
public record Expansion(BigDecimal value, List<Step> steps) {

  /** A number of more places than this is not expanded: nobody fills in so many zeros. */
  public static final int MOST_PLACES = 100;

  /** A place for a digit that is to be found. */
  public static final String BOX = "\u2610";

  /** A place that is empty before it is filled with a zero. */
  public static final String EMPTY = "_";

  private static final int FEWEST_TO_GROUP = 4;

  /** What is done in a step. */
  public enum Rule {
    WRITE,
    MOVE_RIGHT,
    MOVE_LEFT,
    FILL,
    GROUP,
    NAME,
    READ,
    SPELL
  }

  /**
   * One step: its rule, how many places or zeros it is about, and what stands there after it.
   * {@code blank} is the same with boxes in place of what a student has to find.
   */
  public record Step(Rule rule, int count, String after, String blank) {}

  /** Keeps its own copy of the steps. */
  public Expansion {
    steps = List.copyOf(steps);
  }

  /** The steps for a rounded number, in a reader's digits and words. */
  public static Expansion of(BigDecimal value, Writing writing) {
    Digits digits = Digits.of(value, writing.digits());
    if (digits.integerPlaces() + digits.decimalPlaces() > MOST_PLACES || !digits.full()) {
      throw new IllegalArgumentException(
          "This number has more than " + MOST_PLACES + " digits; nobody fills in so many.");
    }
    return new Expansion(value, new Walk(value, digits, writing).steps());
  }

  /** The making of the steps of one number. */
  private record Walk(BigDecimal value, Digits digits, Writing writing) {

    List<Step> steps() {
      PowerOfTen form = PowerOfTen.of(value);
      List<Step> steps = new ArrayList<>();
      String power = form.text(writing.digits());
      steps.add(new Step(Rule.WRITE, Math.toIntExact(form.exponent()), power, power));
      if (form.exponent() != 0) {
        steps.addAll(moved(Math.toIntExact(form.exponent())));
      }
      if (Math.max(digits.integerPlaces(), digits.decimalPlaces()) >= FEWEST_TO_GROUP) {
        steps.addAll(grouped());
      }
      steps.addAll(read());
      return steps;
    }

    /** The marker moves over the figures and then over empty places, which are filled. */
    private List<Step> moved(int exponent) {
      Rule rule = exponent > 0 ? Rule.MOVE_RIGHT : Rule.MOVE_LEFT;
      String full = ungrouped(digits.runs(), false);
      String empty = ungrouped(digits.runs(), true);
      int zeros = digits.zeros() + (exponent < 0 ? 1 : 0);
      Step move = new Step(rule, Math.abs(exponent), empty, boxed(empty));
      Step fill = new Step(Rule.FILL, zeros, full, boxed(full));
      return zeros == 0 ? List.of(move) : List.of(move, fill);
    }

    private static String ungrouped(List<Run> runs, boolean empty) {
      StringBuilder text = new StringBuilder();
      for (Run run : runs) {
        boolean zeros = run.role() == Role.PLACEHOLDER || run.role() == Role.LEADING_ZERO;
        if (run.role() != Role.SEPARATOR) {
          text.append(empty && zeros ? EMPTY.repeat(run.text().length()) : run.text());
        }
      }
      return text.toString();
    }

    private List<Step> grouped() {
      Digits uniform = Digits.of(value, writing.digits().uniform());
      String text = uniform.text();
      Step group = new Step(Rule.GROUP, writing.digits().grouping().first(), text, boxed(text));
      List<Groups.Group> named = Groups.of(uniform, writing.words());
      return named.isEmpty() ? List.of(group) : List.of(group, named(named));
    }

    private static Step named(List<Groups.Group> groups) {
      String after = String.join(" | ", groups.stream().map(Groups.Group::text).toList());
      return new Step(Rule.NAME, groups.size(), after, boxed(after.replaceAll("\\p{L}+", "…")));
    }

    private List<Step> read() {
      Spelling mixed = writing.words().mixed(value);
      Spelling spelled = writing.words().spelled(value);
      List<Step> steps = new ArrayList<>();
      if (mixed.inWords() && !mixed.text().equals(digits.text())) {
        steps.add(new Step(Rule.READ, 0, mixed.text(), "…"));
      }
      if (spelled.inWords()) {
        steps.add(new Step(Rule.SPELL, 0, spelled.text(), "…"));
      }
      return steps;
    }

    private static String boxed(String text) {
      return text.replaceAll("\\p{Nd}", BOX);
    }
  }
}
