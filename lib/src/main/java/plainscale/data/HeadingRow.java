package plainscale.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plainscale.units.UnitOfMeasure;

/**
 * What the first rows say about the columns: their headings, with the units of a second row of
 * units taken in, and which of them hold numbers.
 *
 * @param headings one for each column
 * @param numeric whether the column of that place holds numbers
 * @param unitRow whether the second row holds the units
 */
record HeadingRow(List<Heading> headings, List<Boolean> numeric, boolean unitRow) {

  /** The first row, and as many of the next ones as decide. */
  static HeadingRow of(Rows.Row first, List<Rows.Row> next, CellReader reader) {
    refuseNumbers(first, reader);
    List<Heading> headings = headings(first, next);
    boolean unitRow = !next.isEmpty() && isUnitRow(headings, next, reader);
    if (unitRow) {
      headings = withUnits(headings, next.get(0));
    }
    List<Rows.Row> data = unitRow ? next.subList(1, next.size()) : next;
    List<Heading> known = headings;
    List<Boolean> numeric =
        IntStream.range(0, known.size())
            .mapToObj(i -> isNumeric(known.get(i), i, data, reader))
            .toList();
    return new HeadingRow(known, numeric, unitRow);
  }

  private static void refuseNumbers(Rows.Row first, CellReader reader) {
    boolean numbers =
        first.cells().stream().filter(c -> !c.isEmpty()).allMatch(c -> isNumber(c, reader));
    if (numbers) {
      throw new DataException(
          "The first row should name the columns; here it holds numbers.",
          "a first row such as: d (cm), T (s)");
    }
  }

  private static boolean isNumber(String cell, CellReader reader) {
    return reader.read(cell).value() != null;
  }

  /** Separators at the end of every line make no column. */
  private static List<Heading> headings(Rows.Row first, List<Rows.Row> next) {
    int named = first.width();
    int wide = first.cells().size();
    int used =
        IntStream.range(named, wide)
            .filter(i -> anyCell(next, i))
            .map(i -> i + 1)
            .max()
            .orElse(named);
    List<Heading> headings = new ArrayList<>();
    for (int i = 0; i < used; i++) {
      headings.add(Heading.of(first.cell(i), i + 1, first.line()));
    }
    return headings;
  }

  private static boolean anyCell(List<Rows.Row> rows, int place) {
    return rows.stream().anyMatch(row -> !row.cell(place).isEmpty());
  }

  /** Units under the names: no name has one, and under each number of the third row stands one. */
  private static boolean isUnitRow(List<Heading> headings, List<Rows.Row> next, CellReader reader) {
    if (next.size() < 2 || headings.stream().anyMatch(h -> h.unit().isPresent())) {
      return false;
    }
    List<String> units =
        IntStream.range(0, headings.size())
            .filter(i -> isNumber(next.get(1).cell(i), reader))
            .mapToObj(i -> next.get(0).cell(i))
            .filter(cell -> !CellReader.isMissing(cell))
            .toList();
    return !units.isEmpty() && units.stream().allMatch(HeadingRow::isUnit);
  }

  private static boolean isUnit(String cell) {
    return !CellReader.isMissing(cell) && !cell.equals("1") && Heading.unit(cell).isPresent();
  }

  private static List<Heading> withUnits(List<Heading> headings, Rows.Row units) {
    return IntStream.range(0, headings.size())
        .mapToObj(
            i -> {
              Optional<UnitOfMeasure> unit =
                  isUnit(units.cell(i)) ? Heading.unit(units.cell(i)) : Optional.empty();
              return unit.map(headings.get(i)::in).orElse(headings.get(i));
            })
        .toList();
  }

  /** With a unit always; without one if more than half of the first cells are numbers. */
  private static boolean isNumeric(
      Heading heading, int place, List<Rows.Row> data, CellReader reader) {
    if (heading.unit().isPresent() || heading.uncertainty()) {
      return true;
    }
    List<String> cells =
        data.stream().map(row -> row.cell(place)).filter(c -> !CellReader.isMissing(c)).toList();
    long numbers =
        cells.stream().filter(c -> isNumber(c, reader) || CellReader.isLikeNumber(c)).count();
    return 2 * numbers > cells.size();
  }
}
