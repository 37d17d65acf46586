package plainscale.picture;

import java.util.ArrayList;
import java.util.List;

/** Lines of text over one another, wrapped to a width and centred. */
record TextBlock(List<Line> lines) {
  private static final double LEADING = 1.35;
  private static final int LONGEST_WORD = 60;

  /** One line in its style. */
  record Line(String content, TextStyle style) {
    double width() {
      return TextWidth.of(content, style);
    }

    double height() {
      return LEADING * style.size();
    }
  }

  /** The lines that are left after wrapping each at its spaces. */
  static TextBlock wrapped(List<Line> paragraphs, double width) {
    List<Line> lines = new ArrayList<>();
    for (Line paragraph : paragraphs) {
      if (!paragraph.content().isBlank()) {
        wrap(paragraph, width).forEach(c -> lines.add(new Line(c, paragraph.style())));
      }
    }
    return new TextBlock(List.copyOf(lines));
  }

  /** A heading in the title's style, wrapped to the width of the picture; none if it is empty. */
  static TextBlock title(String title, double width) {
    return wrapped(List.of(new Line(title, Theme.TITLE)), width - 2 * Theme.MARGIN);
  }

  double width() {
    return lines.stream().mapToDouble(Line::width).max().orElse(0);
  }

  double height() {
    return lines.stream().mapToDouble(Line::height).sum();
  }

  /** The texts, with the last line ending at {@code bottom}. */
  List<Shape> standingOn(double x, double bottom) {
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
    for (String word : words(paragraph.content())) {
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

  /** The pieces between spaces; a monstrous one is cut. No-break spaces hold a piece together. */
  private static List<String> words(String content) {
    List<String> words = new ArrayList<>();
    for (String word : content.strip().split("\\s+", -1)) {
      int start = 0;
      while (word.length() - start > LONGEST_WORD) {
        int end = word.offsetByCodePoints(start, LONGEST_WORD / 2);
        words.add(word.substring(start, end));
        start = end;
      }
      words.add(word.substring(start));
    }
    return words;
  }
}
