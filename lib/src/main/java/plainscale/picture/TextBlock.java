package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/** Lines of text over one another, wrapped to a width. */
public record TextBlock(List<Line> lines) {
  private static final double LEADING = 1.35;

  /** One line in its style. */
  public record Line(String content, TextStyle style) {
    double width() {
      return TextWidth.of(content, style);
    }

    double height() {
      return LEADING * style.size();
    }
  }

  /** The lines that are left after wrapping each at its spaces. */
  public static TextBlock wrapped(List<Line> paragraphs, double width) {
    List<Line> lines = new ArrayList<>();
    for (Line paragraph : paragraphs) {
      if (!paragraph.content().isBlank()) {
        wrap(paragraph, width).forEach(c -> lines.add(new Line(c, paragraph.style())));
      }
    }
    return new TextBlock(List.copyOf(lines));
  }

  public double width() {
    return lines.stream().mapToDouble(Line::width).max().orElse(0);
  }

  public double height() {
    return lines.stream().mapToDouble(Line::height).sum();
  }

  /** The texts, with the last line ending at {@code bottom}. */
  public List<Shape> standingOn(double x, double bottom) {
    List<Shape> texts = new ArrayList<>();
    double y = bottom - height();
    for (Line line : lines) {
      y += line.height();
      double baseline = y - TextWidth.DESCENT * line.style().size();
      texts.add(new Shape.Text(new Point(x, baseline), line.content(), line.style()));
    }
    return texts;
  }

  private static List<String> wrap(Line paragraph, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words(paragraph, width)) {
      double wider = new Line(line + " " + word, paragraph.style()).width();
      if (!line.isEmpty() && wider > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The pieces between spaces. No-break spaces hold a piece together if there is room for it. */
  private static List<String> words(Line paragraph, double width) {
    List<String> words = new ArrayList<>();
    for (String word : paragraph.content().strip().split("\\s+", -1)) {
      if (fits(word, paragraph.style(), width)) {
        words.add(word);
      } else {
        for (String part : word.split("[\u00a0\u202f]", -1)) {
          words.addAll(cut(part, paragraph.style(), width));
        }
      }
    }
    return words;
  }

  /** A monstrous word in pieces, each as long as there is room for. */
  private static List<String> cut(String word, TextStyle style, double width) {
    List<String> pieces = new ArrayList<>();
    int start = 0;
    for (int end = 0; end < word.length(); ) {
      int next = word.offsetByCodePoints(end, 1);
      if (end > start && !fits(word.substring(start, next), style, width)) {
        pieces.add(word.substring(start, end));
        start = end;
      }
      end = next;
    }
    pieces.add(word.substring(start));
    return pieces;
  }

  private static boolean fits(String word, TextStyle style, double width) {
    return TextWidth.of(word, style) <= width;
  }
}
