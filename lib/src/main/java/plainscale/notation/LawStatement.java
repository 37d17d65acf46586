package plainscale.notation;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A statement about the table of laws. */
public sealed interface LawStatement extends Statement {

  /** Calls the visitor's method for this kind of statement about laws. */
  <R> R acceptLaw(Visitor<R> visitor);

  @Override
  default <R> R accept(Statement.Visitor<R> visitor) {
    return visitor.law(this);
  }

  /**
   * {@code use coulomb as push with F = F_e, q_1 = q "push of the balls"}: a law becomes a relation
   * of the sheet.
   *
   * @param own what the relation is called in the sheet; null: as the law
   * @param relation what the law states with the sheet's names; null until the law was looked up
   */
  record Use(
      Span span,
      Option law,
      @Nullable Option own,
      List<Replaced> replaced,
      String description,
      Statement.@Nullable Relation relation)
      implements LawStatement {
    /** Keeps its own copy of the replacements. */
    public Use {
      replaced = List.copyOf(replaced);
    }

    /** A law that is not looked up yet. */
    public Use(
        Span span, Option law, @Nullable Option own, List<Replaced> replaced, String description) {
      this(span, law, own, replaced, description, null);
    }

    /** The name of the relation in the sheet, where it stands. */
    public Option name() {
      return own == null ? law : own;
    }

    /** The relation, once the law was looked up. */
    public Optional<Statement.Relation> stated() {
      return Optional.ofNullable(relation);
    }

    /** The same with the relation that the law states. */
    public Use stating(Statement.Relation found) {
      return new Use(span, law, own, replaced, description, found);
    }

    @Override
    public <R> R acceptLaw(Visitor<R> visitor) {
      return visitor.use(this);
    }
  }

  /** {@code q_1 = q}: what stands for a symbol of a law. */
  record Replaced(Option symbol, Expr by) {}

  /** {@code use "force between charges"}: asks for the laws that fit some words. */
  record Search(Span span, Option words) implements LawStatement {
    @Override
    public <R> R acceptLaw(Visitor<R> visitor) {
      return visitor.search(this);
    }
  }

  /** One method for each kind of statement about laws. */
  interface Visitor<R> {
    R use(Use use);

    R search(Search search);
  }
}
