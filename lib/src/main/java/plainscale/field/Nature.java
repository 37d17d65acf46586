package plainscale.field;

/**
 * What a field acts on, and the symbols that follow from it: charges with potentials in volts, or
 * masses with potentials in joules per kilogram.
 */
public enum Nature {
  /** The field of charges. */
  ELECTRIC("charge", "C", "V", "E", "V/m"),
  /** The field of masses. */
  GRAVITATIONAL("mass", "kg", "J/kg", "g", "N/kg");

  private final String source;
  private final String amountUnit;
  private final String potentialUnit;
  private final String fieldSymbol;
  private final String fieldUnit;

  Nature(
      String source,
      String amountUnit,
      String potentialUnit,
      String fieldSymbol,
      String fieldUnit) {
    this.source = source;
    this.amountUnit = amountUnit;
    this.potentialUnit = potentialUnit;
    this.fieldSymbol = fieldSymbol;
    this.fieldUnit = fieldUnit;
  }

  /** Words about sources, which speak of charges, in the words of this nature. */
  public String said(String words) {
    return this == ELECTRIC ? words : words.replace("charged ", "").replace("charge", "mass");
  }

  /** What makes the field, in a word. */
  public String source() {
    return source;
  }

  /** The unit of what makes the field. */
  public String amountUnit() {
    return amountUnit;
  }

  /** The unit of the potential. */
  public String potentialUnit() {
    return potentialUnit;
  }

  /** The symbol of the field's strength. */
  public String fieldSymbol() {
    return fieldSymbol;
  }

  /** The unit of the field's strength. */
  public String fieldUnit() {
    return fieldUnit;
  }
}
