package plainscale.picture;

import java.util.List;
import java.util.stream.Stream;

/** Where so many square panels stand, and what room there is above each for its caption. */
record PanelGrid(int panels) {
  static final double GAP = 32;

  private static final double LARGEST = 224;

  /** Up to nine panels are three in a row; more are four, so that they go on one page of paper. */
  private static final int FEW = 9;

  private static final int IN_ROW_OF_FEW = 3;
  private static final int IN_ROW_OF_MANY = 4;

  int inRow() {
    if (panels == 4) {
      return 2;
    }
    return panels > FEW ? IN_ROW_OF_MANY : Math.min(IN_ROW_OF_FEW, panels);
  }

  double side() {
    return Math.min(LARGEST, (Canvas.RIGHT - Canvas.LEFT - (inRow() - 1) * GAP) / inRow());
  }

  TextBlock caption(String caption) {
    return TextBlock.wrapped(List.of(new TextBlock.Line(caption, Theme.NAME)), room());
  }

  /** Whether a caption fits without breaking a word: in one line, or in two above a small panel. */
  boolean hasRoomFor(String caption) {
    int most = inRow() == IN_ROW_OF_MANY ? 2 : 1;
    return caption(caption).lines().size() <= most
        && Stream.of(caption.split(" ", -1))
            .allMatch(word -> TextWidth.of(word, Theme.NAME) <= room());
  }

  private double room() {
    return side() + GAP / 2;
  }
}
