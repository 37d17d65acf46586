package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The directions that have a word of their own, with their angle from “right” (anticlockwise). */
public enum Direction {
  /** 0°. */
  RIGHT(0),
  /** 90°. */
  UP(90),
  /** 180°. */
  LEFT(180),
  /** 270°. */
  DOWN(270),
  /** Along a slope upwards. */
  UPHILL(0, true),
  /** Square to a slope, out of it. */
  AWAY(90, true),
  /** Along a slope downwards. */
  DOWNHILL(180, true),
  /** Square to a slope, into it. */
  INTO(270, true);

  /** The word before an angle. */
  static final String ALONG = "along";

  /** Other words for the same, to offer the word that is known. */
  private static final Map<String, Direction> SAME_AS =
      Map.ofEntries(
          Map.entry("upward", UP),
          Map.entry("upwards", UP),
          Map.entry("north", UP),
          Map.entry("downward", DOWN),
          Map.entry("downwards", DOWN),
          Map.entry("south", DOWN),
          Map.entry("leftward", LEFT),
          Map.entry("leftwards", LEFT),
          Map.entry("west", LEFT),
          Map.entry("rightward", RIGHT),
          Map.entry("rightwards", RIGHT),
          Map.entry("east", RIGHT),
          Map.entry("upslope", UPHILL),
          Map.entry("downslope", DOWNHILL),
          Map.entry("outward", AWAY),
          Map.entry("inward", INTO));

  private final int degrees;
  private final boolean onSlope;

  Direction(int degrees) {
    this(degrees, false);
  }

  Direction(int degrees, boolean onSlope) {
    this.degrees = degrees;
    this.onSlope = onSlope;
  }

  /** Whether it is counted from the way up a slope instead of from “right”. */
  public boolean isOnSlope() {
    return onSlope;
  }

  /** The angle from “right”, or from the way up a slope that rises to the right, in degrees. */
  public int degrees() {
    return degrees;
  }

  /** The word of the notation. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What points the other way. */
  public Direction opposite() {
    return switch (this) {
      case RIGHT -> LEFT;
      case UP -> DOWN;
      case LEFT -> RIGHT;
      case DOWN -> UP;
      case UPHILL -> DOWNHILL;
      case AWAY -> INTO;
      case DOWNHILL -> UPHILL;
      case INTO -> AWAY;
    };
  }

  /** The angle half-way between two neighbours of up, down, left and right, in degrees. */
  static Optional<Integer> between(Direction one, Direction other) {
    int apart = Math.abs(one.degrees - other.degrees);
    if (one.onSlope || other.onSlope || apart % 180 == 0) {
      return Optional.empty();
    }
    int middle = (one.degrees + other.degrees) / 2;
    return Optional.of(apart == 90 ? middle : middle + 180);
  }

  /** The direction of that word. */
  static Optional<Direction> of(String word) {
    return Arrays.stream(values()).filter(direction -> direction.word().equals(word)).findFirst();
  }

  /** The direction that another word means. */
  static Optional<Direction> meant(String word) {
    return Optional.ofNullable(SAME_AS.get(word.toLowerCase(Locale.ROOT)));
  }

  /** All words that end the size of a force. */
  static List<String> words() {
    return Stream.concat(Arrays.stream(values()).map(Direction::word), Stream.of(ALONG)).toList();
  }
}
