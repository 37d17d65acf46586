package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plainscale.data.Remark;
import plainscale.data.Remarks;
import plainscale.magnitude.Digits;
import plainscale.magnitude.Writing;
import plainscale.quantity.Shown;
import plainscale.sheet.DataResult;

/** Results about data as headings, tables and sentences, the same in every medium. */
final class DataSections implements DataResult.Visitor<Sections> {
  private static final int REMARKS_OF_A_KIND = 5;
  private static final Map<DataResult.Measure, String> MEASURES =
      Map.of(
          DataResult.Measure.MEAN, "mean",
          DataResult.Measure.DEVIATION, "standard deviation",
          DataResult.Measure.STANDARD, "standard uncertainty of the mean",
          DataResult.Measure.MEDIAN, "median",
          DataResult.Measure.LOWER_QUARTILE, "lower quartile",
          DataResult.Measure.UPPER_QUARTILE, "upper quartile",
          DataResult.Measure.SMALLEST, "smallest",
          DataResult.Measure.LARGEST, "largest");

  private final boolean formulas;

  /** With the formulas in their headings, or without where these are typeset apart. */
  DataSections(boolean formulas) {
    this.formulas = formulas;
  }

  @Override
  public Sections listed(DataResult.Listed listed) {
    Writing writing = listed.writing();
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("name", "column", "values", "smallest", "largest", "mean"));
    listed.columns().forEach(line -> table.add(row(line, writing)));
    List<String> sentences = new ArrayList<>(listed.notes());
    sentences.addAll(remarks(listed.remarks(), writing));
    String head = "%s: %s".formatted(listed.file(), count(listed.rows(), "row", writing));
    return new Sections(head, List.of(table), sentences);
  }

  private static List<String> row(DataResult.Line line, Writing writing) {
    String values =
        whole(line.values(), writing)
            + (line.missing() == 0 ? "" : ", " + whole(line.missing(), writing) + " missing");
    return line.numbers()
        .map(
            n ->
                List.of(
                    line.name().isEmpty() ? "–" : line.name(),
                    line.heading(),
                    values,
                    ValueText.number(n.smallest(), writing),
                    ValueText.number(n.largest(), writing),
                    ValueText.number(n.mean(), writing)))
        .orElseGet(() -> List.of("–", line.heading(), values + ", words", "", "", ""));
  }

  private static List<String> remarks(Remarks remarks, Writing writing) {
    List<String> lines = new ArrayList<>();
    for (Remark.Kind kind : remarks.counts().keySet()) {
      List<Remark> kept = remarks.of(kind);
      kept.stream().limit(REMARKS_OF_A_KIND).forEach(remark -> lines.add(line(remark)));
      int more = remarks.count(kind) - Math.min(kept.size(), REMARKS_OF_A_KIND);
      if (more > 0) {
        lines.add("And " + whole(more, writing) + " more like the last.");
      }
    }
    return lines;
  }

  private static String line(Remark remark) {
    String place =
        remark.row() > 0
            ? "Row %d (line %d)".formatted(remark.row(), remark.line())
            : remark.line() > 0 ? "Heading" : "File";
    String column = remark.column().isEmpty() ? "" : ", column " + remark.column();
    String repairs =
        remark.repairs().isEmpty() ? "" : " Try: " + String.join(" · ", remark.repairs());
    return place + column + ": " + remark.sentence() + repairs;
  }

  @Override
  public Sections described(DataResult.Described described) {
    Writing writing = described.writing();
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("", described.name()));
    described
        .entries()
        .forEach(
            entry ->
                table.add(
                    List.of(
                        measure(entry.measure()),
                        entry.value().map(v -> ValueText.number(v, writing)).orElse("–"))));
    String head =
        "Statistics of %s: %s"
            .formatted(described.name(), count(described.count(), "value", writing));
    return new Sections(head, List.of(table), new DescribedText(described).sentences());
  }

  @Override
  public Sections counted(DataResult.Counted counted) {
    Writing writing = counted.writing();
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("from", "to below", "number"));
    counted
        .histogram()
        .bins()
        .forEach(
            bin ->
                table.add(
                    List.of(
                        number(bin.from(), counted),
                        number(bin.to(), counted),
                        whole(bin.count(), writing))));
    String head =
        "%s of %s in bins of %s"
            .formatted(
                count(counted.count(), "value", writing),
                counted.side().name(),
                number(counted.histogram().width(), counted));
    return new Sections(head, List.of(table), List.of(rule(counted)));
  }

  private static String number(BigDecimal value, DataResult.Counted counted) {
    BigDecimal plain = value.scale() < 0 ? value.setScale(0) : value;
    return ValueText.number(new Shown(plain, null, counted.side().unit()), counted.writing());
  }

  private static String rule(DataResult.Counted counted) {
    return switch (counted.histogram().rule()) {
      case FREEDMAN_DIACONIS ->
          "The width is twice the distance of the quartiles over the cube root of the number (Freedman and Diaconis), rounded up to 1, 2 or 5.";
      case STURGES ->
          "The width is the range over 1 + log₂ of the number (Sturges), rounded up to 1, 2 or 5.";
      case ONE_VALUE -> "All values are equal.";
    };
  }

  @Override
  public Sections fitted(DataResult.Fitted fitted) {
    Writing writing = fitted.writing();
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("", "value", ""));
    fitted
        .parameters()
        .forEach(p -> table.add(List.of(p.name(), ValueText.number(p.value(), writing), p.role())));
    FittedText text = new FittedText(fitted);
    String head = formulas ? text.kind() + ": " + fitted.formula().text() : text.kind();
    return new Sections(head, List.of(table), text.sentences());
  }

  @Override
  public Sections plotted(DataResult.Plotted plotted) {
    return new Sections("", List.of(), List.of());
  }

  static String measure(DataResult.Measure measure) {
    return MEASURES.getOrDefault(measure, "");
  }

  static String whole(int count, Writing writing) {
    return Digits.of(BigDecimal.valueOf(count), writing.digits()).text();
  }

  static String count(int count, String noun, Writing writing) {
    return whole(count, writing) + " " + noun + (count == 1 ? "" : "s");
  }
}
