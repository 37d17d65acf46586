package plainscale.picture;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plainscale.magnitude.Writing;

/** The lines that tell of a mark: its label, its figures, and its words where they add to them. */
final class Captions {
  private Captions() {}

  static List<TextBlock.Line> of(Mark mark, Writing writing) {
    return of(mark.name(), mark, writing);
  }

  /** The lines with another first line. */
  static List<TextBlock.Line> of(String label, Mark mark, Writing writing) {
    List<TextBlock.Line> lines = new ArrayList<>();
    lines.add(new TextBlock.Line(label, Theme.LABEL));
    lines.add(new TextBlock.Line(mark.inFigures(writing), Theme.VALUE));
    if (!mark.isEveryday() && mark.hasWords(writing)) {
      lines.add(new TextBlock.Line(mark.inWords(writing), Theme.WORDS));
    }
    return lines;
  }

  /** A number without a unit in words: "2.4 billion". */
  static String named(BigDecimal number, Writing writing) {
    return writing.words().with(writing.digits()).mixed(number).text();
  }
}
