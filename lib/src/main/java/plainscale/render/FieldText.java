package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plainscale.magnitude.PowerOfTen;
import plainscale.magnitude.Writing;
import plainscale.notation.FieldItem;
import plainscale.picture.field.FieldMap;
import plainscale.picture.field.ReliefMap;
import plainscale.picture.field.SectionPlot;
import plainscale.sheet.FieldResult;

/** Results about fields as tables, sentences and pictures, the same in every medium. */
final class FieldText implements FieldResult.Visitor<FieldView> {
  private static final Pattern POWER = Pattern.compile("-?\\d+\\.\\d+(?:E-?\\d+)?");

  @Override
  public FieldView declared(FieldResult.Declared declared) {
    List<List<String>> table = new ArrayList<>(List.of(List.of("", "source", "amount", "where")));
    int number = 1;
    for (FieldResult.Row row : declared.rows()) {
      Writing writing = declared.writing();
      table.add(
          List.of(
              String.valueOf(number++),
              name(row),
              ValueText.number(row.amount(), writing),
              where(row, writing)));
    }
    String words = declared.description().isEmpty() ? "" : " (" + declared.description() + ")";
    String head = "Field " + declared.name() + words;
    return new FieldView(new Sections(head, List.of(table), remarks(declared)), Optional.empty());
  }

  /** The amounts in remarks are bare numbers in SI units. */
  private static List<String> remarks(FieldResult.Declared declared) {
    return declared.remarks().stream()
        .map(declared.nature()::said)
        .map(
            remark ->
                POWER
                    .matcher(remark)
                    .replaceAll(
                        match ->
                            PowerOfTen.of(new BigDecimal(match.group()).stripTrailingZeros())
                                    .text(declared.writing().digits())
                                + " "
                                + declared.nature().amountUnit()))
        .toList();
  }

  static String name(FieldResult.Row row) {
    return switch (row.shape()) {
      case CHARGE -> "point charge";
      case MASS -> "point mass";
      case LINE, RING, DISC, SPHERE, SHELL -> row.shape().word();
      case PLATES -> "two plates";
    };
  }

  private static String where(FieldResult.Row row, Writing writing) {
    String extent =
        row.extent()
            .map(size -> extent(row.shape()) + " " + ValueText.number(size, writing) + ", ")
            .orElse("");
    String place = place(row.at(), writing);
    String to = row.end().map(end -> " to " + place(end, writing)).orElse("");
    boolean turns = row.shape() == FieldItem.Shape.RING || row.shape() == FieldItem.Shape.DISC;
    String turned = !turns ? "" : row.flat() ? ", flat" : ", across";
    return extent + place + to + turned;
  }

  static String extent(FieldItem.Shape shape) {
    return shape == FieldItem.Shape.PLATES ? "gap" : "radius";
  }

  private static String place(FieldResult.Spot spot, Writing writing) {
    return "(%s, %s)"
        .formatted(ValueText.number(spot.x(), writing), ValueText.number(spot.y(), writing));
  }

  @Override
  public FieldView probed(FieldResult.Probed probed) {
    List<List<String>> rows = new ArrayList<>(List.of(List.of("quantity", "value", "what it is")));
    for (FieldResult.Value value : probed.values()) {
      String also =
          value.prefixed().map(p -> " = " + ValueText.number(p, probed.writing())).orElse("");
      rows.add(
          List.of(
              value.symbol(),
              ValueText.number(value.shown(), probed.writing()) + also,
              value.words()));
    }
    String words = probed.description().isEmpty() ? "" : " (" + probed.description() + ")";
    String head =
        "Field of " + probed.name() + " at " + place(probed.at(), probed.writing()) + words;
    List<List<List<String>>> tables = probed.values().isEmpty() ? List.of() : List.of(rows);
    return new FieldView(
        new Sections(head, tables, probed.remark().stream().toList()), Optional.empty());
  }

  @Override
  public FieldView mapped(FieldResult.Mapped mapped) {
    return FieldView.of(FieldMap.of(mapped.title(), mapped.chart(), mapped.writing()));
  }

  @Override
  public FieldView reliefed(FieldResult.Reliefed reliefed) {
    return FieldView.of(
        ReliefMap.of(
            reliefed.title(),
            reliefed.nature(),
            reliefed.relief(),
            reliefed.levels(),
            reliefed.writing()));
  }

  @Override
  public FieldView sectioned(FieldResult.Sectioned sectioned) {
    return FieldView.of(
        SectionPlot.of(
            sectioned.title(), sectioned.nature(), sectioned.section(), sectioned.writing()));
  }

  @Override
  public FieldView released(FieldResult.Released released) {
    return new MotionText(released).view();
  }
}
