package plainscale.field;

/** Why a motion was not followed further. */
public sealed interface CourseEnd {
  /** The duration is over. */
  record TimeUp() implements CourseEnd {}

  /** It left the frame. */
  record LeftFrame() implements CourseEnd {}

  /** It ran into a charge. */
  record RanInto(Source source) implements CourseEnd {}

  /** The steps became too small or too many, as close to a charge. */
  record NotFollowed() implements CourseEnd {}
}
