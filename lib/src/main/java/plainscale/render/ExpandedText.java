package plainscale.render;

import plainscale.magnitude.Expansion;
import plainscale.magnitude.Writing;
import plainscale.sheet.Result;

/** The sentence of a step, and what stands there after it. */
final class ExpandedText {
  private ExpandedText() {}

  static String reason(Expansion.Step step, Writing writing) {
    return writing.phrases().say("expand." + step.rule(), step.count());
  }

  static String after(Expansion.Step step, Result.Expanded expanded) {
    return expanded.boxes() && step.rule() != Expansion.Rule.WRITE ? step.blank() : step.after();
  }
}
