package plainscale.magnitude;

/**
 * How numbers are written for a reader: the style of digits, the words, and what is meant by an
 * order of magnitude. {@code Writing.USUAL} is SI digits and English words of the short scale.
 */
public record Writing(DigitStyle digits, Words words, Orders orders) {

  /** What a sheet uses unless it says otherwise. */
  public static final Writing USUAL = new Writing(DigitStyle.SI, Words.ENGLISH, Orders.RATIO);
}
