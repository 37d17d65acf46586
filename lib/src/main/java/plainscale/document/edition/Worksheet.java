package plainscale.document.edition;

import java.util.List;
import plainscale.picture.Scene;
import plainscale.units.UnitOfMeasure;

/**
 * What stands on a page that is to be filled in by hand. No item holds a value that is to be found:
 * what is blank was never there.
 */
sealed interface Worksheet {

  /** Calls the visitor's method for this kind of item. */
  <R> R accept(Visitor<R> visitor);

  /** Whether something is to be written or drawn here. */
  boolean isOpen();

  private static boolean anyOpen(List<Piece> pieces) {
    return pieces.stream().anyMatch(Piece::isOpen);
  }

  /** A title of what stands below. */
  record Heading(String words) implements Worksheet {
    @Override
    public boolean isOpen() {
      return false;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.heading(this);
    }
  }

  /** What the picture above is called. */
  record Caption(String words) implements Worksheet {
    @Override
    public boolean isOpen() {
      return false;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.caption(this);
    }
  }

  /** A paragraph. */
  record Text(List<Piece> pieces) implements Worksheet {
    /** Keeps its own copy of the pieces. */
    public Text {
      pieces = List.copyOf(pieces);
    }

    @Override
    public boolean isOpen() {
      return anyOpen(pieces);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.text(this);
    }
  }

  /** A quantity and beside it what it is; neighbouring ones stand in one table. */
  record Entry(List<Piece> pieces, List<Piece> beside, String description) implements Worksheet {
    /** Keeps its own copies of the pieces. */
    public Entry {
      pieces = List.copyOf(pieces);
      beside = List.copyOf(beside);
    }

    @Override
    public boolean isOpen() {
      return anyOpen(pieces) || anyOpen(beside);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.entry(this);
    }
  }

  /** Lines to write on. */
  record Ruled(int lines) implements Worksheet {
    @Override
    public boolean isOpen() {
      return lines > 0;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ruled(this);
    }
  }

  /**
   * A box for each digit, so many before the decimal marker and so many behind it, and the unit
   * behind them.
   */
  record Boxes(BoxCount count, UnitOfMeasure unit) implements Worksheet {
    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.boxes(this);
    }
  }

  /** A table: a head, and rows of cells; an empty cell is to be filled in. */
  record Grid(List<List<Piece>> head, List<List<List<Piece>>> rows) implements Worksheet {
    /** Keeps its own copies of the lists. */
    public Grid {
      head = head.stream().map(List::copyOf).toList();
      rows = rows.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
    }

    @Override
    public boolean isOpen() {
      return rows.stream().flatMap(List::stream).anyMatch(cell -> cell.isEmpty() || anyOpen(cell));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.grid(this);
    }
  }

  /** A picture in which something is to be drawn. */
  record Picture(Scene scene) implements Worksheet {
    @Override
    public boolean isOpen() {
      return true;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.picture(this);
    }
  }

  /** Items that a page does not part; {@code style} is what they are. */
  record Together(Style style, List<Worksheet> items) implements Worksheet {
    /** What belongs together. */
    public enum Style {
      /** The steps of a derivation. */
      DERIVATION,
      /** One of them. */
      STEP,
      /** A number and room for its digits and its words. */
      NUMBER,
      /** All else. */
      RESULT
    }

    /** Keeps its own copy of the items. */
    public Together {
      items = List.copyOf(items);
    }

    @Override
    public boolean isOpen() {
      return items.stream().anyMatch(Worksheet::isOpen);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.together(this);
    }
  }

  /** One method for each kind of item. */
  interface Visitor<R> {
    R heading(Heading heading);

    R caption(Caption caption);

    R text(Text text);

    R entry(Entry entry);

    R ruled(Ruled ruled);

    R boxes(Boxes boxes);

    R grid(Grid grid);

    R picture(Picture picture);

    R together(Together together);
  }
}
