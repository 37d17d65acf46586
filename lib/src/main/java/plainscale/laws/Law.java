package plainscale.laws;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.algebra.Equation;
import plainscale.notation.Expr;
import plainscale.notation.Greek;
import plainscale.notation.Names;
import plainscale.notation.Notation;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.units.UnitOfMeasure;

/**
 * A law of physics: a relation in the notation with what its symbols mean. A symbol that is not
 * among {@code symbols} is a constant of nature.
 *
 * @param name its name in the notation
 * @param title the trade's name
 * @param field the field of physics
 * @param relation as in a cell, {@code F = k_e q_1 q_2/r^2}
 * @param symbols in the order of the relation
 * @param holds when it holds, in words
 * @param sources where it is published
 * @param words what else it may be searched by
 */
public record Law(
    String name,
    String title,
    String field,
    String relation,
    List<Symbol> symbols,
    String holds,
    List<String> sources,
    List<String> words) {
  /** Keeps its own copies of the lists. */
  public Law {
    symbols = List.copyOf(symbols);
    sources = List.copyOf(sources);
    words = List.copyOf(words);
  }

  /** A letter of the relation: its unit (the unit one for a plain number), and what it means. */
  public record Symbol(String name, UnitOfMeasure unit, String meaning) {}

  /** The relation as an equation; the places in it are of no text. */
  public Equation equation() {
    Set<String> own = symbols.stream().map(Symbol::name).collect(Collectors.toSet());
    String prefix = "relation law: ";
    Statement.Relation read =
        (Statement.Relation) Notation.parse(prefix + relation, new OwnNames(own)).get(0);
    return new Equation(read.left(), read.right());
  }

  /**
   * The relation with other expressions in the place of some symbols and constants.
   *
   * @param by what stands for a symbol
   * @param place where in a source all that comes from the law is said to stand
   */
  public Equation with(Map<String, Expr> by, Span place) {
    Replacing replacing = new Replacing(by, place);
    Equation own = equation();
    return new Equation(own.left().accept(replacing), own.right().accept(replacing));
  }

  /**
   * The symbol that a writer means: {@code q1} and {@code q₁} are q_1 here, unless the law has a
   * q1.
   */
  public Optional<Symbol> symbol(String written) {
    String name = Greek.normal(written);
    String indexed = name.replaceFirst("^(\\p{L}+)(\\d+)$", "$1_$2");
    return Stream.of(name, indexed)
        .flatMap(text -> symbols.stream().filter(symbol -> symbol.name().equals(text)))
        .findFirst();
  }

  /** How a cell uses it, every symbol to be named: {@code use coulomb with F = …, q_1 = …}. */
  public String example() {
    return "use "
        + name
        + " with "
        + symbols.stream().map(s -> s.name() + " = …").collect(Collectors.joining(", "));
  }

  /** The symbols of the law and the constants: what follows a number is never a unit. */
  private record OwnNames(Set<String> symbols) implements Names {
    @Override
    public boolean isQuantity(String name) {
      return symbols.contains(name) || Constants.CODATA.has(name);
    }

    @Override
    public boolean isDefined(String name) {
      return symbols.contains(name);
    }

    @Override
    public boolean isSameAsUnit(String name) {
      return false;
    }

    @Override
    public String meaning(String name) {
      return "a symbol of the law";
    }

    @Override
    public Set<String> all() {
      Set<String> all = new TreeSet<>(symbols);
      all.addAll(Constants.CODATA.symbols());
      return all;
    }
  }
}
