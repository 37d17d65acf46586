package plainscale.api;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.FieldItem.Shape;
import plainscale.quantity.Quantity;
import plainscale.sheet.FieldResult;
import plainscale.sheet.Result;

/**
 * The field of charges or of masses: its sources, potential and field at a place, maps, reliefs,
 * sections, and the way of a body in it. Amounts and places are formulas of the situation or
 * quantities of the program.
 *
 * <pre>{@code
 * FieldOf earth = field("earth").sphere("5.97e24 kg", "6371 km", at("0 km", "0 km"));
 * check(earth.potential(at("0 km", "6371 km")).text().contains("−6.25 × 10⁷ J/kg"));
 * check(earth.map().pictures().size() == 1);
 * }</pre>
 */
public final class FieldOf implements Displayed {
  private final Situation situation;
  private final String name;
  private final List<String> sources;
  private final String what;

  private FieldOf(Situation situation, String name, List<String> sources, String what) {
    this.situation = situation;
    this.name = name;
    this.sources = List.copyOf(sources);
    this.what = what;
  }

  static FieldOf of(Situation situation, String name) {
    return new FieldOf(situation, name, List.of(), "");
  }

  /** The same with what it is in words. */
  public FieldOf described(String words) {
    return new FieldOf(situation, name, sources, words);
  }

  /** And a point charge. */
  public FieldOf charge(Quantity amount, At at) {
    return point(Shape.CHARGE, Operand.of(amount), at);
  }

  /** And a point charge. */
  public FieldOf charge(String amount, At at) {
    return point(Shape.CHARGE, Operand.of(amount), at);
  }

  /** And a point mass. */
  public FieldOf mass(Quantity amount, At at) {
    return point(Shape.MASS, Operand.of(amount), at);
  }

  /** And a point mass. */
  public FieldOf mass(String amount, At at) {
    return point(Shape.MASS, Operand.of(amount), at);
  }

  /** And a straight line, evenly charged, from one place to another. */
  public FieldOf line(Quantity amount, At from, At to) {
    return line(Operand.of(amount), from, to);
  }

  /** And a straight line, evenly charged, from one place to another. */
  public FieldOf line(String amount, At from, At to) {
    return line(Operand.of(amount), from, to);
  }

  /** And a sphere, evenly charged or massive throughout. */
  public FieldOf sphere(Quantity amount, Quantity radius, At at) {
    return round(Shape.SPHERE, Operand.of(amount), Operand.of(radius), at);
  }

  /** And a sphere, evenly charged or massive throughout. */
  public FieldOf sphere(String amount, String radius, At at) {
    return round(Shape.SPHERE, Operand.of(amount), Operand.of(radius), at);
  }

  /** And a source that has a radius or a gap: ring, disc (seen from the side), shell, plates. */
  public FieldOf source(Shape shape, Quantity amount, Quantity extent, At at) {
    return round(shape, Operand.of(amount), Operand.of(extent), at);
  }

  /** And a source that has a radius or a gap: ring, disc (seen from the side), shell, plates. */
  public FieldOf source(Shape shape, String amount, String extent, At at) {
    return round(shape, Operand.of(amount), Operand.of(extent), at);
  }

  /** And a ring or a disc in the plane of the page. */
  public FieldOf flat(Shape shape, Quantity amount, Quantity radius, At at) {
    return source(shape, amount, radius, at).flatLast();
  }

  /** And a ring or a disc in the plane of the page. */
  public FieldOf flat(Shape shape, String amount, String radius, At at) {
    return source(shape, amount, radius, at).flatLast();
  }

  private FieldOf flatLast() {
    List<String> all = new ArrayList<>(sources);
    all.set(all.size() - 1, all.get(all.size() - 1) + " flat");
    return new FieldOf(situation, name, all, what);
  }

  private FieldOf point(Shape shape, Operand amount, At at) {
    Phrase phrase = new Phrase(situation);
    return and(phrase, shape.word() + " " + amount.in(phrase) + " at " + at.in(phrase));
  }

  private FieldOf line(Operand amount, At from, At to) {
    Phrase phrase = new Phrase(situation);
    String ends = " from " + from.in(phrase) + " to " + to.in(phrase);
    return and(phrase, Shape.LINE.word() + " " + amount.in(phrase) + ends);
  }

  private FieldOf round(Shape shape, Operand amount, Operand extent, At at) {
    Phrase phrase = new Phrase(situation);
    String size = " " + shape.extent() + " " + extent.in(phrase);
    return and(phrase, shape.word() + " " + amount.in(phrase) + size + " at " + at.in(phrase));
  }

  private FieldOf and(Phrase phrase, String source) {
    List<String> all = new ArrayList<>(sources);
    all.add(source);
    return new FieldOf(phrase.situation(), name, all, what);
  }

  /** The situation in which the field is declared, to go on with. */
  public Situation situation() {
    return situation.with(
        name, "field " + name + ": " + String.join(", ", sources) + Written.after(what));
  }

  /** Potential and field at a place. */
  public Answer<FieldResult.Probed> potential(At at) {
    Phrase phrase = new Phrase(situation());
    String statement = "potential of " + name + " at " + at.in(phrase);
    return phrase.ask(statement, FieldResult.Probed.class);
  }

  /** Field lines and equipotentials. */
  public Answer<FieldResult.Mapped> map() {
    return situation().ask("map " + name, FieldResult.Mapped.class);
  }

  /** Field lines and equipotentials between two corners. */
  public Answer<FieldResult.Mapped> map(At from, At to) {
    Phrase phrase = new Phrase(situation());
    return phrase.ask("map " + name + frame(phrase, from, to), FieldResult.Mapped.class);
  }

  /** Arrows that show how strong the field is, between two corners. */
  public Answer<FieldResult.Mapped> arrows(At from, At to) {
    Phrase phrase = new Phrase(situation());
    String statement = "map " + name + frame(phrase, from, to) + " with vectors";
    return phrase.ask(statement, FieldResult.Mapped.class);
  }

  /** The potential as height. */
  public Answer<FieldResult.Reliefed> relief() {
    return situation().ask("relief " + name, FieldResult.Reliefed.class);
  }

  /** The potential as height, between two corners. */
  public Answer<FieldResult.Reliefed> relief(At from, At to) {
    Phrase phrase = new Phrase(situation());
    return phrase.ask("relief " + name + frame(phrase, from, to), FieldResult.Reliefed.class);
  }

  /** Potential and field along a straight line. */
  public Answer<FieldResult.Sectioned> section(At from, At to) {
    Phrase phrase = new Phrase(situation());
    return phrase.ask("section " + name + frame(phrase, from, to), FieldResult.Sectioned.class);
  }

  private static String frame(Phrase phrase, At from, At to) {
    return " from " + from.in(phrase) + " to " + to.in(phrase);
  }

  /** A body of that mass, released at a place; its charge and its velocity are said next. */
  public Release release(Quantity mass, At at) {
    return Release.of(situation(), name, Operand.of(mass), at);
  }

  /** A body of that mass, released at a place; its charge and its velocity are said next. */
  public Release release(String mass, At at) {
    return Release.of(situation(), name, Operand.of(mass), at);
  }

  @Override
  public List<Result> results() {
    return situation().results(name);
  }

  @Override
  public String toString() {
    return Displays.text(this);
  }
}
