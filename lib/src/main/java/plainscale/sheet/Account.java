package plainscale.sheet;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plainscale.quantity.Distribution;
import plainscale.quantity.Shown;

/**
 * The uncertainty budget of a quantity: the sources, the largest contribution first; which of them
 * to know better; the standard uncertainty to second order, where it is another one; and what came
 * of trials, where they were asked for.
 */
public record Account(
    List<Share> shares, @Nullable Improvement best, @Nullable Shown bent, @Nullable Drawn trials) {

  /** Keeps its own copy of the shares. */
  public Account {
    shares = List.copyOf(shares);
  }

  /** What to measure better; empty if nothing contributes to first order. */
  public Optional<Improvement> improvement() {
    return Optional.ofNullable(best);
  }

  /** The standard uncertainty to second order, where it differs in what is shown. */
  public Optional<Shown> secondOrder() {
    return Optional.ofNullable(bent);
  }

  /** What came of the trials. */
  public Optional<Drawn> drawn() {
    return Optional.ofNullable(trials);
  }

  /**
   * What one source contributes, in the unit of the result, and its share of the variance; its own
   * value and the sensitivity to it, where it has them for itself.
   */
  public record Share(String source, Shown contribution, double share, @Nullable Input input) {
    /** The source as a quantity of the sheet. */
    public Optional<Input> own() {
      return Optional.ofNullable(input);
    }
  }

  /** A source as a quantity: its value, how it is distributed, how much the result follows it. */
  public record Input(Shown value, Distribution distribution, Shown sensitivity) {}

  /**
   * The standard uncertainty of the result now, and with half the uncertainty of the source that
   * contributes most; {@code constant} if that is a constant of nature, which no lesson improves.
   */
  public record Improvement(String source, boolean constant, Shown now, Shown halved) {}

  /** From where to where, rounded to one place. */
  public record Ends(Shown low, Shown high) {}

  /**
   * What came of the trials: how many, the seed, how many had no value, the mean with its standard
   * uncertainty, the limits of 95 % with as many trials below as above; the shortest interval where
   * it is clearly shorter; the limits that the linear result has, and whether both agree.
   */
  public record Drawn(
      int count,
      long seed,
      int without,
      Shown mean,
      Ends symmetric,
      @Nullable Ends shorter,
      Ends linear,
      Verdict verdict) {
    /** The shortest interval, where it is clearly shorter. */
    public Optional<Ends> shortest() {
      return Optional.ofNullable(shorter);
    }
  }

  /** Whether the linear result stands beside the trials (JCGM 101:2008, 8). */
  public enum Verdict {
    /** The limits are the same to the figures that are shown. */
    AGREE,
    /** They are not. */
    DISAGREE,
    /** So few trials cannot tell. */
    UNDECIDED
  }
}
