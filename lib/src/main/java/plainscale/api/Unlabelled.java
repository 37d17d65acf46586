package plainscale.api;

import java.util.List;
import java.util.Optional;
import plainscale.sheet.Result;

/** Results on a quantity that has no name in the program. */
final class Unlabelled {
  private static final Result.Label NONE = new Result.Label(Optional.empty(), Optional.empty(), "");

  private Unlabelled() {}

  static List<Result> of(List<Result> results) {
    return results.stream().map(Unlabelled::of).toList();
  }

  private static Result of(Result result) {
    if (result instanceof Result.Valued v) {
      return new Result.Valued(
          v.role(), NONE, v.quantity(), v.shown(), v.prefixed().orElse(null), v.writing());
    }
    if (result instanceof Result.Contrasted c) {
      return new Result.Contrasted(
          c.title(),
          sides(c.sides()),
          c.times(),
          c.ratio(),
          c.perspective().orElse(null),
          c.remarks(),
          c.writing());
    }
    if (result instanceof Result.Placed p) {
      return new Result.Placed(side(p.side()), p.below(), p.above(), p.writing());
    }
    if (result instanceof Result.Expanded e) {
      return new Result.Expanded(side(e.side()), e.expansion(), e.boxes(), e.writing());
    }
    if (result instanceof Result.Pictured p) {
      return new Result.Pictured(
          p.drawing(),
          p.title(),
          sides(p.sides()),
          p.landmarks(),
          p.ratio().orElse(null),
          p.writing());
    }
    return result instanceof Result.Written written
        ? new Result.Written(NONE, written.numeral())
        : result;
  }

  private static List<Result.Side> sides(List<Result.Side> sides) {
    return sides.stream().map(Unlabelled::side).toList();
  }

  /** Words that were said stay. */
  private static Result.Side side(Result.Side side) {
    Result.Label label =
        new Result.Label(Optional.empty(), Optional.empty(), side.label().description());
    return new Result.Side(label, side.shown(), side.exact());
  }
}
