package plainscale.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataTableTest {
  private static final String[] SIMPLE = {"group,d (cm),T/s", "A,14.0,1.90", "B,15.5,1.95"};

  private static void assertSimple(DataTable table) {
    assertEquals(List.of("group", "d", "T"), table.columns().stream().map(Column::name).toList());
    assertEquals(2, table.rows());
    assertEquals(new BigDecimal("15.5"), table.numbers("d").value(2).orElseThrow());
    assertEquals("cm", table.numbers("d").unit().text());
    assertEquals("s", table.numbers("T").unit().text());
    assertEquals("B", ((TextColumn) table.column("group")).text(2));
    assertEquals(List.of(), table.remarks().first());
  }

  @Test
  void commasSemicolonsAndTabs() {
    assertSimple(Tables.read(SIMPLE));
    assertSimple(Tables.read(String.join("\n", SIMPLE).replace(',', ';').split("\n")));
    assertSimple(Tables.read(String.join("\n", SIMPLE).replace(',', '\t').split("\n")));
  }

  @Test
  void decimalCommas() {
    assertSimple(Tables.read("group;d (cm);T/s", "A;14,0;1,90", "B;15,5;1,95"));
    assertSimple(Tables.read("group\td (cm)\tT/s", "A\t14,0\t1,90", "B\t15,5\t1,95"));
    assertSimple(Tables.read("group,d (cm),T/s", "A,\"14,0\",\"1,90\"", "B,\"15,5\",\"1,95\""));
    assertEquals(
        new BigDecimal("14.5"),
        Tables.read("d (cm)", "14,0", "14,5").numbers("d").value(2).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lineEnds(String end) {
    assertSimple(Tables.bytes(String.join(end, SIMPLE) + end + end));
    assertSimple(Tables.bytes(String.join(end, SIMPLE)));
  }

  @Test
  void marksBlankLinesCommentsAndTrailingSeparators() {
    assertSimple(Tables.bytes("\uFEFF" + String.join("\n", SIMPLE)));
    assertSimple(
        Tables.read(
            "# measured on Monday, \"by hand",
            "",
            SIMPLE[0],
            "#",
            SIMPLE[1],
            "  ",
            ",,",
            SIMPLE[2]));
    assertSimple(Tables.read(SIMPLE[0] + ",", SIMPLE[1] + ",", SIMPLE[2] + ",,"));
    assertSimple(
        Tables.read("\"group\", \"d (cm)\" , T/s", "A , 14.0,1.90", "\"B\",\"15.5\",1.95"));
  }

  @Test
  void quotesHoldSeparatorsQuotesAndLineEnds() {
    DataTable table = Tables.read("name,T (s)", "\"Ana, Ben \"\"and\"\" Cy", "row 2\",1.9");
    assertEquals("Ana, Ben \"and\" Cy\nrow 2", ((TextColumn) table.column("name")).text(1));
    assertEquals(1, table.rows());
  }

  @Test
  void encodings() {
    String text = "group,ϑ/°C,T/s\nA,14.0,1.90";
    assertEquals("°C", Tables.bytes(text).numbers("ϑ").unit().text());
    for (Charset utf16 : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
      DataTable table = DataTable.read("t.csv", ("\uFEFF" + text).getBytes(utf16));
      assertEquals("°C", table.numbers("ϑ").unit().text());
      assertEquals(List.of(), table.remarks().first());
    }
    DataTable old =
        DataTable.read("t.csv", "T/°C,l/µm\n1,2\n".getBytes(Charset.forName("windows-1252")));
    assertEquals("°C", old.numbers("T").unit().text());
    assertEquals("µm", old.numbers("l").unit().text());
    assertEquals(1, old.remarks().count(Remark.Kind.ENCODING));
  }

  @Test
  void figuresAndUncertaintiesAreKeptAsWritten() {
    DataTable table = Tables.read("d (cm)", "14.0 ± 0.5", "14.00(3)", "15");
    NumberColumn d = table.numbers("d");
    assertEquals("14.0 ± 0.5", shown(d, 1));
    assertEquals("14.00 ± 0.03", shown(d, 2));
    assertEquals("15", shown(d, 3));
    assertEquals(2, d.quantity(3).orElseThrow().figures().count());
    assertEquals(0.005, d.quantity(1).orElseThrow().uncertainty().standard(), 1e-15);
  }

  private static String shown(NumberColumn column, int row) {
    return column.value(row).orElseThrow() + column.uncertainty(row).map(u -> " ± " + u).orElse("");
  }

  @Test
  void aColumnHoldsTheUncertaintiesOfAnother() {
    for (String heading : List.of("u(d)/cm", "u(d)", "±d", "±", "± (cm)")) {
      DataTable table = Tables.read("d/cm," + heading + ",T/s", "14.0,0.5,1.9", "15.0,,1.8");
      assertEquals(List.of("d", "T"), table.columns().stream().map(Column::name).toList());
      assertEquals("14.0 ± 0.5", shown(table.numbers("d"), 1));
      assertEquals("15.0", shown(table.numbers("d"), 2));
    }
    assertEquals("14.0 ± 0.5", shown(Tables.read("d/cm,u(d)/mm", "14.0,5").numbers("d"), 1));
    assertEquals("20.0 ± 0.4", shown(Tables.read("d/cm,u(d)/%", "20.0,2").numbers("d"), 1));
  }

  @Test
  void uncertaintiesWithoutAColumnAreTold() {
    DataTable table = Tables.read("d/cm,u(x)/cm,u(d)/s", "14.0,0.5,1");
    assertEquals(2, table.remarks().count(Remark.Kind.UNCERTAINTY));
    assertEquals(List.of("d", "u_x", "u_d"), table.columns().stream().map(Column::name).toList());
    DataTable negative = Tables.read("d/cm,u(d)/cm", "14.0,-0.5", "14.0 ± 0.1,0.2");
    assertEquals(2, negative.remarks().count(Remark.Kind.UNCERTAINTY));
    assertEquals(Optional.empty(), negative.numbers("d").uncertainty(1));
    assertEquals("14.0 ± 0.1", shown(negative.numbers("d"), 2));
  }

  @Test
  void unitsOnTheSecondLine() {
    assertSimple(Tables.read("group,d,T", ",cm,s", "A,14.0,1.90", "B,15.5,1.95"));
    assertSimple(Tables.read("group,d,T", "-,[cm],(s)", "A,14.0,1.90", "B,15.5,1.95"));
    DataTable words = Tables.read("a,b", "m,s", "x,y");
    assertEquals(2, words.rows());
  }

  @Test
  void missingAndBadCellsAreToldByRowAndColumn() {
    DataTable table =
        Tables.read("d (cm),T (s)", "14.0,", "?,1.9", "15.0,abc", "=A1+B2,2.0", "16", "17,2.1");
    Remarks remarks = table.remarks();
    assertEquals(3, remarks.count(Remark.Kind.MISSING));
    Remark bad = remarks.of(Remark.Kind.UNREADABLE).get(0);
    assertEquals(3, bad.row());
    assertEquals(4, bad.line());
    assertEquals("T", bad.column());
    assertEquals("abc", bad.found());
    assertFalse(bad.repairs().isEmpty());
    assertEquals("=A1+B2", remarks.of(Remark.Kind.FORMULA).get(0).found());
    Points points = Points.of(table.numbers("d"), table.numbers("T"));
    assertEquals(1, points.count());
    assertEquals(5, points.leftOut());
    assertEquals(6, points.row(0));
  }

  @Test
  void aFormulaAmongWordsIsLeftOut() {
    DataTable table = Tables.read("group,d (cm)", "=cmd|x,1", "B,2", "@me,3");
    assertEquals(2, table.remarks().count(Remark.Kind.FORMULA));
    assertFalse(table.column("group").has(1));
    assertTrue(table.column("group").has(2));
  }

  @Test
  void namesAreMadeValidAndDifferent() {
    DataTable table = Tables.read("fall time (s),d (m),d (m),,1", "1,2,3,4,5");
    assertEquals(
        List.of("fall_time", "d", "d_2", "column_4", "c_1"),
        table.columns().stream().map(Column::name).toList());
    assertEquals(4, table.remarks().count(Remark.Kind.NAME));
    assertTrue(table.remarks().first().get(1).sentence().contains("stands twice"));
  }

  @Test
  void numbersInAWrongUnitStayWords() {
    DataTable table = Tables.read("m (gr),group (A or B)", "2.7,A", "2.8,B");
    assertTrue(table.column("m") instanceof TextColumn);
    Remark remark = table.remarks().of(Remark.Kind.UNIT).get(0);
    assertTrue(remark.repairs().contains("m (g)"), remark.repairs().toString());
    assertEquals(1, table.remarks().count(Remark.Kind.UNIT));
    DataException words = assertThrows(DataException.class, () -> table.numbers("m"));
    assertEquals("The column “m” holds words, not numbers.", words.sentence());
  }

  @Test
  void aRowWithMoreCellsIsTold() {
    Remark remark = Tables.read("d,T", "14,0,1,9", "1,2").remarks().of(Remark.Kind.ROW).get(0);
    assertEquals(1, remark.row());
    assertEquals("1 | 9", remark.found());
  }

  @Test
  void anUnknownColumnHasNearNames() {
    DataTable table = Tables.read(SIMPLE);
    DataException unknown = assertThrows(DataException.class, () -> table.column("gruop"));
    assertEquals(List.of("group"), unknown.repairs());
  }

  @Test
  void doubtfulNumbersAreToldAndNoWords() {
    DataTable table = Tables.read("t;s", "0,5;1.200", "1,0;2.400", "1,5;3");
    assertEquals(2, table.remarks().count(Remark.Kind.UNREADABLE));
    assertEquals(1, table.numbers("s").values().count());
    assertEquals(3, table.numbers("t").values().count());
  }

  @Test
  void aCommaInAHeadingIsNoSeparator() {
    DataTable table = Tables.read("time, t (s);way, s (m)", "0,5;1,2", "1,0;2,4");
    assertEquals(new BigDecimal("2.4"), table.numbers("way_s").value(2).orElseThrow());
  }
}
