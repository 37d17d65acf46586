package plainscale.data;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plainscale.units.UnitOfMeasure;

/** The cells of one column while the file is read. */
sealed interface ColumnCells {

  /** Takes the cell of the next row, or the remark about it. */
  void add(String text, int row, long line);

  /** The column that came of it. */
  Column build();

  /** Cells that hold numbers. */
  final class OfNumbers implements ColumnCells {
    private final Heading heading;
    private final CellReader reader;
    private final Remarks.Builder remarks;
    private final Numbers.Builder values = new Numbers.Builder();
    private final Numbers.Builder uncertainties = new Numbers.Builder();

    OfNumbers(Heading heading, CellReader reader, Remarks.Builder remarks) {
      this.heading = heading;
      this.reader = reader;
      this.remarks = remarks;
    }

    @Override
    public void add(String text, int row, long line) {
      Cell cell = reader.read(text);
      values.add(cell.value());
      uncertainties.add(cell.uncertainty());
      if (cell.fault() != null) {
        remarks.add(remark(cell.fault(), heading, text, row, line));
      }
    }

    @Override
    public NumberColumn build() {
      UnitOfMeasure unit = heading.unit().orElse(UnitOfMeasure.ONE);
      return new NumberColumn(
          heading.name(), heading.text(), unit, values.build(), uncertainties.build());
    }
  }

  /** Cells that hold words; each word is kept once. */
  final class OfTexts implements ColumnCells {
    private final Heading heading;
    private final Remarks.Builder remarks;
    private final List<String> texts = new ArrayList<>();
    private final Map<String, String> once = new HashMap<>();

    OfTexts(Heading heading, Remarks.Builder remarks) {
      this.heading = heading;
      this.remarks = remarks;
    }

    @Override
    public void add(String text, int row, long line) {
      boolean formula = CellReader.isFormula(text);
      String kept = formula || CellReader.isMissing(text) ? "" : text;
      texts.add(once.computeIfAbsent(kept, word -> word));
      if (formula) {
        remarks.add(remark(CellReader.IS_FORMULA, heading, text, row, line));
      }
    }

    @Override
    public TextColumn build() {
      return new TextColumn(heading.name(), heading.text(), texts);
    }
  }

  private static Remark remark(Cell.Fault fault, Heading heading, String text, int row, long line) {
    return new Remark(
        fault.kind(),
        row,
        line,
        heading.name(),
        Shortened.of(text),
        fault.sentence(),
        fault.repairs());
  }
}
