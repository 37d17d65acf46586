package plainscale.sheet;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.laws.Hazard;
import plainscale.laws.HazardLimit;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;

/** What the sheet says of a value that should not be so, and of what can hurt. */
public sealed interface GuardResult extends Result {

  /** Calls the visitor's method for this kind of result. */
  <R> R acceptGuard(Visitor<R> visitor);

  @Override
  default <R> R accept(Result.Visitor<R> visitor) {
    return visitor.guard(this);
  }

  /** A value and where it was expected; {@code why} is what the author said of that. */
  record Expected(
      Label label,
      Shown value,
      Limits limits,
      Verdict verdict,
      @Nullable Excess beyond,
      String why,
      Doubt doubt,
      Writing writing)
      implements GuardResult {
    /** By how much it is outside. */
    public Optional<Excess> excess() {
      return Optional.ofNullable(beyond);
    }

    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.expected(this);
    }
  }

  /**
   * A value beyond what its kind of quantity can have.
   *
   * @param strict whether it cannot be; else it is hard to believe
   * @param limit the limit that it is beyond
   * @param what the limit is, in words
   * @param why a sentence for students
   */
  record Impossible(
      Label label,
      Shown value,
      boolean strict,
      Excess excess,
      Shown limit,
      String what,
      String why,
      Doubt doubt,
      Writing writing)
      implements GuardResult {
    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.impossible(this);
    }
  }

  /**
   * A value that sets off a hazard's cautions.
   *
   * @param side on which side of the limit it lies
   * @param whose what the limit is and who set it
   * @param advice what to do
   */
  record SetOff(
      Label label,
      Shown value,
      Hazard hazard,
      HazardLimit.Side side,
      Shown limit,
      String whose,
      String advice,
      Writing writing)
      implements GuardResult {
    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.setOff(this);
    }
  }

  /** The cautions that a cell asks for. */
  record Cautioned(List<Hazard> hazards) implements GuardResult {
    /** Keeps its own copy of the list. */
    public Cautioned {
      hazards = List.copyOf(hazards);
    }

    @Override
    public <R> R acceptGuard(Visitor<R> visitor) {
      return visitor.cautioned(this);
    }
  }

  /** Where a value lies. */
  enum Verdict {
    /** Where it was expected. */
    INSIDE,
    /** Outside by no more than twice its standard uncertainty. */
    WITHIN_UNCERTAINTY,
    /** Outside by no more than half of the last written digit. */
    WITHIN_LAST_DIGIT,
    /** Outside. */
    OUTSIDE
  }

  /** Between which values, or how near to one, it was expected. */
  sealed interface Limits {}

  /** From one value to another; one of them may be missing. */
  record Between(@Nullable Shown low, @Nullable Shown high) implements Limits {
    /** The lower limit. */
    public Optional<Shown> lower() {
      return Optional.ofNullable(low);
    }

    /** The upper limit. */
    public Optional<Shown> upper() {
      return Optional.ofNullable(high);
    }
  }

  /** Near to a value, within a share or an amount of it. */
  record Around(Shown middle, Shown within) implements Limits {}

  /** By how much a value is beyond a limit. */
  record Excess(Way way, Shown amount) {
    /** How that is said. */
    public enum Way {
      /** The value is so many times the limit. */
      TIMES,
      /** The limit is so many times the value. */
      PART,
      /** So many per cent above. */
      PER_CENT_ABOVE,
      /** So many per cent below. */
      PER_CENT_BELOW,
      /** So much above. */
      ABOVE,
      /** So much below. */
      BELOW,
      /** Negative, where zero is the limit. */
      NEGATIVE,
      /** So many times what only whole multiples of occur. */
      MULTIPLE
    }

    /** Whether it is above an upper limit; else below a lower one. */
    public boolean isAbove() {
      return way == Way.TIMES || way == Way.PER_CENT_ABOVE || way == Way.ABOVE;
    }
  }

  /** From which given it probably comes: usual slips, else the given that has most to say. */
  record Doubt(List<Suspect> suspects, @Nullable Lever lever) {
    /** Nothing is suspected. */
    public static final Doubt NONE = new Doubt(List.of(), null);

    /** Keeps its own copy of the list. */
    public Doubt {
      suspects = List.copyOf(suspects);
    }

    /** The given that the value follows most, where no slip explains it. */
    public Optional<Lever> strongest() {
      return Optional.ofNullable(lever);
    }
  }

  /**
   * A given with which all would be well if it were written otherwise.
   *
   * @param written as it is
   * @param meant as it may be meant
   * @param then what the value would be
   * @param question what to ask
   */
  record Suspect(String name, Shown written, Shown meant, Shown then, String question) {}

  /**
   * The given that a value follows most, and what it would have to be.
   *
   * @param needed with which the value would reach the limit, and how many times as much that is;
   *     none if no value was found
   */
  record Lever(String name, Shown now, @Nullable Shown needed, @Nullable BigDecimal factor) {
    /** With which the value would reach the limit. */
    public Optional<Shown> wanted() {
      return Optional.ofNullable(needed);
    }

    /** How many times as much that is. */
    public Optional<BigDecimal> times() {
      return Optional.ofNullable(factor);
    }
  }

  /** The hazards whose cautions the values among some results set off, each once. */
  static List<Hazard> setOff(Collection<Result> results) {
    return results.stream()
        .filter(SetOff.class::isInstance)
        .map(result -> ((SetOff) result).hazard())
        .distinct()
        .toList();
  }

  /** One method for each kind of result. */
  interface Visitor<R> {
    R expected(Expected expected);

    R impossible(Impossible impossible);

    R setOff(SetOff setOff);

    R cautioned(Cautioned cautioned);
  }
}
