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
    return result instanceof Result.Written written
        ? new Result.Written(NONE, written.numeral())
        : result;
  }
}
