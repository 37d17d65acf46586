package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plainscale.magnitude.Agreement;
import plainscale.magnitude.Known;
import plainscale.magnitude.Phrases;
import plainscale.magnitude.Writing;
import plainscale.sheet.Result;

/** A number between its landmarks, the largest on top. */
final class PlacedText {
  private static final BigDecimal SAME = new BigDecimal("1.0");

  private final Result.Placed placed;
  private final Writing writing;
  private final Phrases phrases;

  PlacedText(Result.Placed placed) {
    this.placed = placed;
    this.writing = placed.writing();
    this.phrases = writing.phrases();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    List<Result.Neighbour> above = new ArrayList<>(placed.above());
    Collections.reverse(above);
    above.forEach(n -> lines.add(line(n, "near.above")));
    if (above.isEmpty()) {
      lines.add(phrases.say("near.none.above"));
    }
    lines.add("→ " + ValueText.number(placed.side().shown(), writing));
    placed.below().forEach(n -> lines.add(line(n, "near.below")));
    if (placed.below().isEmpty()) {
      lines.add(phrases.say("near.none.below"));
    }
    return lines;
  }

  /** "mass of a car, 1 × 10³ kg (good to a factor of a few): 330 times as much [source]". */
  private String line(Result.Neighbour neighbour, String key) {
    String factor = writing.words().mixed(neighbour.ratio().value()).text();
    boolean same = neighbour.ratio().value().compareTo(SAME) == 0;
    boolean order = neighbour.landmark().known() == Known.Roughly.ORDER;
    Agreement agreement = Agreement.of(factor, neighbour.ratio().value(), writing.words());
    return phrases.say(
        "near.line",
        ContrastText.name(neighbour.side()),
        ValueText.number(neighbour.side().shown(), writing)
            + (order ? " (" + phrases.say("near.order") + ")" : ""),
        same ? phrases.say("near.same") : phrases.say(key, factor, agreement),
        neighbour.landmark().source());
  }
}
