package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import plainscale.sheet.Result;

/**
 * Results in pieces that each fit on a screen in large type (28 px on 1280 × 720): one step of a
 * derivation at a time, long tables in parts, small results several together.
 */
public final class Screens {
  /** The room of a screen, in lines of text. */
  static final int ROOM = 10;

  /** A piece that is never parted, and how many lines it takes; a value has a row of a table. */
  record Part(String html, int lines, boolean value) {
    /** A piece that takes a screen for itself. */
    static Part whole(String html) {
      return new Part(html, ROOM, false);
    }

    /** A piece of so many lines. */
    static Part lines(String html, int lines) {
      return new Part(html, lines, false);
    }
  }

  private final List<String> screens = new ArrayList<>();
  private final List<Part> open = new ArrayList<>();

  private Screens() {}

  /** The results of a cell, the HTML of one screen after another. */
  public static List<String> of(List<Result> results) {
    Screens screens = new Screens();
    ScreenParts parts = new ScreenParts(new HtmlRenderer(Medium.PAGE), Medium.PAGE);
    for (Result result : results) {
      result.accept(parts).forEach(screens::add);
    }
    screens.close();
    return screens.screens;
  }

  private void add(Part part) {
    int lines = open.stream().mapToInt(Part::lines).sum();
    boolean below = part.lines() == 0; // a caption stays with its picture
    if (!below && !open.isEmpty() && lines + part.lines() > ROOM) {
      close();
    }
    open.add(part);
  }

  /** Neighbouring values share a table. */
  private void close() {
    StringBuilder html = new StringBuilder();
    StringBuilder rows = new StringBuilder();
    for (Part part : open) {
      if (part.value()) {
        rows.append(part.html());
      } else {
        flush(rows, html);
        html.append(part.html());
      }
    }
    flush(rows, html);
    if (!html.isEmpty()) {
      screens.add(html.toString());
    }
    open.clear();
  }

  private static void flush(StringBuilder rows, StringBuilder html) {
    if (!rows.isEmpty()) {
      html.append(HtmlRenderer.table(rows.toString()));
      rows.setLength(0);
    }
  }
}
