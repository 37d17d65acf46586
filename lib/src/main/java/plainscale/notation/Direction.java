package plainscale.notation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The directions that have a word of their own, with their angle from “right” (anticlockwise). */
public enum Direction {
  /** 0°. */
  RIGHT(0),
  /** 90°. */
  UP(90),
  /** 180°. */
  LEFT(180),
  /** 270°. */
  DOWN(270);

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
          Map.entry("east", RIGHT));

  private final int degrees;

  Direction(int degrees) {
    this.degrees = degrees;
  }

  /** The angle from “right”, anticlockwise, in degrees. */
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
    };
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
    return List.of("up", "down", "left", "right", ALONG);
  }
}
