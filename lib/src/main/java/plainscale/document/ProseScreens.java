package plainscale.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.BulletList;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.jspecify.annotations.Nullable;

/**
 * Prose in pieces that each fit on a screen in large type: a new one at each heading, and where the
 * lines would be too many.
 */
public final class ProseScreens {
  /** Lines of about so many letters, and so many of them, fit at 28 px on 1280 × 720. */
  private static final int LETTERS = 78;

  private static final int MOST_LINES = 12;

  private final List<Screen> screens = new ArrayList<>();
  private @Nullable Heading heading;
  private @Nullable Document open;
  private int lines;

  /** A screen: the heading that begins it, if one does, and its HTML. */
  public record Screen(Optional<String> heading, String html) {}

  private ProseScreens() {}

  /** The screens of a cell. */
  public static List<Screen> of(LessonCell.Prose cell) {
    ProseScreens screens = new ProseScreens();
    for (Node block : children(Prose.parsed(cell))) {
      screens.block(block);
    }
    screens.close();
    return screens.screens;
  }

  private void block(Node block) {
    if (block instanceof Heading title) {
      close();
      heading = title;
      append(block, 2);
    } else if (block instanceof ListBlock list && lines + height(list) > MOST_LINES) {
      items(list);
    } else {
      append(block, height(block));
    }
  }

  /** Of a long list as many items as fit; the numbers go on. */
  private void items(ListBlock list) {
    int number = list instanceof OrderedList ordered ? first(ordered) : 1;
    ListBlock part = part(list, number);
    for (Node item : children(list)) {
      int needed = height(item);
      if (part.getParent() == null || lines + needed > MOST_LINES) {
        part = part(list, number);
        append(part, needed);
      } else {
        lines += needed;
      }
      part.appendChild(item);
      number++;
    }
  }

  private static int first(OrderedList list) {
    Integer number = list.getMarkerStartNumber();
    return number == null ? 1 : number;
  }

  private static ListBlock part(ListBlock list, int number) {
    ListBlock part;
    if (list instanceof OrderedList) {
      OrderedList ordered = new OrderedList();
      ordered.setMarkerStartNumber(number);
      part = ordered;
    } else {
      part = new BulletList();
    }
    part.setTight(list.isTight());
    return part;
  }

  private void append(Node block, int height) {
    if (open != null && lines > 2 && lines + height > MOST_LINES) {
      close();
    }
    if (open == null) {
      open = new Document();
      lines = 0;
    }
    open.appendChild(block);
    lines += height;
  }

  private void close() {
    if (open != null) {
      Optional<String> title = Optional.ofNullable(heading).map(Prose::words);
      screens.add(new Screen(title, Prose.rendered(open)));
    }
    open = null;
    heading = null;
    lines = 0;
  }

  private static List<Node> children(Node node) {
    List<Node> children = new ArrayList<>();
    for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
      children.add(child);
    }
    return children;
  }

  /** About how many lines a block takes, the room below it included. */
  private static int height(Node block) {
    if (block instanceof TableBlock) {
      return rows(block).stream().mapToInt(ProseScreens::row).sum();
    }
    if (block instanceof ListBlock || block.getFirstChild() instanceof ListBlock) {
      return children(block).stream().mapToInt(ProseScreens::height).sum();
    }
    return 1 + Prose.words(block).length() / LETTERS;
  }

  private static List<Node> rows(Node table) {
    List<Node> rows = new ArrayList<>();
    for (Node part : children(table)) {
      rows.addAll(children(part));
    }
    return rows.stream().filter(TableRow.class::isInstance).toList();
  }

  private static int row(Node row) {
    List<Node> cells = children(row);
    int letters = LETTERS / Math.max(1, cells.size());
    return cells.stream()
        .mapToInt(cell -> 1 + Prose.words(cell).length() / letters)
        .max()
        .orElse(1);
  }
}
