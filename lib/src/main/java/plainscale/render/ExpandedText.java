package plainscale.render;

import plainscale.magnitude.Expansion;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.Result;

/** The sentence of a step, and what stands there after it. */
final class ExpandedText {
  private ExpandedText() {}

  static String reason(Expansion.Step step, Writing writing) {
    return writing.phrases().say("expand." + step.rule(), step.count());
  }

  static String after(Expansion.Step step, Result.Expanded expanded) {
    if (expanded.boxes() && step.rule() != Expansion.Rule.WRITE) {
      return step.blank();
    }
    Shown shown = expanded.side().shown();
    return switch (step.rule()) {
      case READ -> ValueWords.of(shown, false, expanded.writing()).text();
      case SPELL -> ValueWords.spelled(shown, expanded.writing()).text();
      default -> step.after();
    };
  }
}
