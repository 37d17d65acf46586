package plainscale.data;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one cell of a column of numbers holds: a number, or what is wrong with it. */
record Cell(@Nullable BigDecimal value, @Nullable BigDecimal uncertainty, @Nullable Fault fault) {

  /** What is wrong: a kind of remark, one sentence, and repairs. */
  record Fault(Remark.Kind kind, String sentence, List<String> repairs) {}

  static Cell of(BigDecimal value, @Nullable BigDecimal uncertainty) {
    return new Cell(value, uncertainty, null);
  }

  static Cell wrong(Remark.Kind kind, String sentence, String... repairs) {
    return new Cell(null, null, new Fault(kind, sentence, List.of(repairs)));
  }

  boolean isMissing() {
    return fault != null && fault.kind() == Remark.Kind.MISSING;
  }
}
