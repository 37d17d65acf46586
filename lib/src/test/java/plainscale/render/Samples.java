package plainscale.render;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plainscale.data.DataFolder;
import plainscale.picture.Scene;
import plainscale.sheet.Result;
import plainscale.sheet.Sheet;
import plainscale.text.Printable;

/** Cells that together show every kind of result in every form, and hostile ones. */
final class Samples {
  private static final String GIVENS =
      """
      given m = 2.70 ± 0.05 g "mass of one ball"
      given d = 14.0 cm "centre to centre"
      given n = 12
      θ = 30°
      ε_0 = 2
      n_moved = 4.19e11 "electrons that moved"
      n_there = 8.13e23 "electrons that were there anyway"
      """;

  private static final String UNPRINTABLE = "\u0000\u001b[31m\u009b\ufffe\uffff";

  private static final Map<String, String> CELLS = new LinkedHashMap<>();

  static {
    CELLS.put("givens", GIVENS);
    CELLS.put("definition", "w = m g_n \"weight\"");
    CELLS.put("quotient", "v = sqrt(2*d [m])/(1/2 [s])^2*1");
    CELLS.put("functions", "sin(θ) + cbrt(8) - ln(2)*exp(-(n))^-1");
    CELLS.put("power", "6.71e-8 [C]\n-2.5e12\n1.60(2)");
    CELLS.put("small", "q = 6.71e-8 [C]");
    CELLS.put(
        "units",
        "9.81 [m/s²]\n5 [N·m²/C²]\n2 [%]\n5 [[lb_av]]\n3 [1/mol]\n20 °C\n1 [Ω]\n2 [µm]\n30°");
    CELLS.put(
        "words",
        "show n_moved in words\nshow 6.71e-8 [C] in words\nshow 1 [m] in words\nshow -2 in words");
    CELLS.put("digits", "show n_there in digits\nshow 0 in digits\nshow 1e300 in digits \"much\"");
    CELLS.put("contrast", "contrast n_moved with n_there \"Moved, and there anyway\"");
    CELLS.put("six", "contrast 1 with 20 with 300 with 4e3 with 5e-4 with 6e50 by length");
    CELLS.put(
        "forms",
        """
        show n_moved roughly
        show n_moved/n_there in parts
        show n_moved in orders
        show n_moved in full words
        show -2.5 [kg] roughly
        say "{n_moved roughly}, {1/n_there in parts}, {d in orders}, {d in full words}"
        """);
    CELLS.put("beyond words", "show 1e90 in words\nsay \"{1e90 in words}\"\ncontrast 1 with 1e90");
    CELLS.put("expand", "expand n_moved \"a < b\"\nexpand 5.3e-16 with boxes\nexpand 0");
    CELLS.put("near", "near n_moved\nnear m\nnear 1e-99 [kg]\nnear 1e99 [kg] \"much\"");
    CELLS.put(
        "budget",
        """
        given r = 1.0 ± 0.1 cm triangular "radius < 2"
        given a = 1.0, 1.1, 1.3
        given b = 2.0, 2.3, 2.2
        together a, b
        budget m with 1000 trials
        budget r^2 in mm² "area < 5"
        budget a b with 1e3 trials seed 7
        budget (m - m)/m
        budget (r - 1 [cm])^2 with 1000 trials
        """);
    CELLS.put(
        "pictures",
        """
        ruler n_moved with n_there "a < b"
        squares n_moved with n_there
        dots n_moved with 3
        ruler d
        """);
    CELLS.put(
        "derivation",
        """
        relation level: k_e q^2/d^2 = T sin(θ) "push < pull"
        relation upright: m g_n = T cos(θ)
        solve level, upright for q in nC "charge & <b>"
        """);
    CELLS.put(
        "derivations told otherwise",
        """
        relation level: F d = 3 [J]
        solve level for F with boxes
        relation other: cos(z) = z/1 [rad]
        solve other for z with questions
        relation third: x^2 = 5*x + 6
        solve third for x with answer
        """);
    CELLS.put(
        "what ifs",
        """
        w = m g_n
        v = w/m
        what if m = 2*m
        what if d = 3*d show w
        depends w on m
        depends v on m
        depends w + 1 [N] on m
        vary m from -1 g to 3 g by 1 g show w in mN, sqrt(m/1 [g])
        """);
    CELLS.put(
        "limits",
        """
        T = m g_n/cos(θ)
        limit θ to 90° show T in mN, d, m g_n, 1/(90° - θ)^(1/2)
        limit θ to 0° show (1 - cos(θ))/θ^2, ln(θ/1 [rad])
        """);
    CELLS.put(
        "equations in sentences",
        """
        relation push: F = k_e n^2 (1 [C])^2/d^2 "push < pull"
        solve push for F with answer
        say "With {push} in {steps of F} steps: {equation 1 of F} & <more>."
        """);
    CELLS.put(
        "forces",
        """
        w = m g_n
        forces on "left < ball": weight w down by "Earth", pull w along 90° - θ by "hook & eye"
        forces on ball: push 2*w left by "left < ball", "odd $x$" -w up with missing
        forces on book: weight 5.0 [N] down by Earth, support 5.0 [N] up by table
        pairs
        figure bodies "Bodies < forces & $x$"
        say "See {figure bodies}."
        """);
    CELLS.put(
        "cases",
        """
        relation pull: F = m g_n sin(θ)
        solve pull for F with answer
        forces on "left < ball": weight m g_n down by "Earth", pull F up by hand
        forces on hand: pull F down by "left < ball", weight n/12 [N] down by Earth
        what if pull: F = 2*m g_n
        compare "a < b" with "$x$": m = 3*m, n = 6 with "none": pull: F^3 = -m d show F in mN, n/d
        """);
    CELLS.put(
        "fields",
        """
        field pair: charge 3 nC at (-7 cm, 0 cm), charge -3 nC at (7 cm, 0 cm) "two charges"
        field bodies: ring 3 nC radius 2 cm at (0 cm, 0 cm), plates 3 [nC/m^2] gap 4 cm at (4 cm, 0 cm), line -1 nC from (-1 cm, 3 cm) to (1 cm, 3 cm)
        potential of pair at (0 cm, 3 cm)
        potential of pair at (7 cm, 0 cm)
        map pair
        map bodies with vectors
        relief pair
        section pair from (-7 cm, 0 cm) to (9 cm, 0 cm)
        release charge 1 nC mass 1 mg at (0 cm, 3 cm) moving (0 [m/s], 1 [m/s]) in pair
        """);
    CELLS.put(
        "class data",
        """
        data "class.csv"
        statistics x against 14.2 [cm]
        statistics U
        histogram x against n [cm] "a < b"
        fit line U against I as R_x, U_0 with weights y "$x$ & <b>"
        fit power U against I
        fit exponential U against I
        fit proportional U against I as g_1 with weights y
        fit line U against I with weights both
        plot U against I with log both "a < b"
        given z = 1 mA
        plot R_x z in V against z from 1 mA to 200 mA with points U against I
        plot d^2 against d from -1 cm to 2 cm
        """);
    CELLS.put(
        "laws",
        """
        use coulomb with F = F_e, q_1 = q, q_2 = 2*q "push & <b>"
        use shm_position as swing with x_m = sqrt(d 1 [m]), t = 1 [s]
        use rotation_rate
        use "charged balls & <b> $x$"
        """);
    CELLS.put("blanks", "given z = ? cm \"length < 5 $x$\"\ny = ?\n2*y z");
    CELLS.put(
        "expectations",
        """
        expect m below 3 g "a < b"
        expect m below 2.6 g
        expect m below 1 g "$x$ & <b>"
        expect d about 3 km within 5 %
        expect m between 1 [t] and 2 [t]
        """);
    CELLS.put(
        "cautions",
        """
        caution electrostatic_generator, latex
        given v = 4e8 m/s "a < b"
        given Q = 8.00 C "charge of the sphere"
        given W = 3 J "energy stored on the dome & <b>"
        given T = 77 K "liquid nitrogen"
        """);
    CELLS.put("hostile data", "data \"hostile.csv\"\ndata \"none & <b>.csv\"");
    CELLS.put("choices", "locale SI\nscale long\norders floor\ndigits spaced");
    CELLS.put(
        "locale", "locale de\nshow 1234.5 [kg] in words\nv = 0.5 [m/s] 3\ncontrast d with 3 [m]");
    CELLS.put("close contrast", "contrast 2 [m] with -3 [m]");
    CELLS.put("vast contrast", "contrast 1e-150 [N] with 1e150 [N]");
    CELLS.put("sentence", "say \"{m} and {n_moved in words} and {n_there in digits} {{braces}}\"");
    CELLS.put("empty sentence", "say \"\"");
    CELLS.put("note", "constants textbook");
    CELLS.put("hidden constant", "h = 2");
    CELLS.put("mistakes", "m + d\nx\n1/0");
    CELLS.put("unreadable", "a/b c\n2,5");
    CELLS.put("annotated unit", "1 [{$<&>}]\n1 [m{a_b#c^d~e%}]\n1 [{\\\\href}]");
    for (String hostile : Stream.concat(hostile().stream(), Stream.of(UNPRINTABLE)).toList()) {
      String text = hostile.replace("\\", "\\\\").replace("\"", "\\\"");
      String braces = text.replace("{", "{{").replace("}", "}}");
      CELLS.put(
          "description " + hostile, "x = 1e12 \"" + text + "\"\nshow x in words \"" + text + "\"");
      CELLS.put("title " + hostile, "y = 3 \"" + text + "\"\ncontrast y with 5e9 \"" + text + "\"");
      CELLS.put(
          "forces " + hostile,
          "forces on \"" + text + "\": \"" + text + "\" 3 [N] up by \"" + text + "\"\npairs");
      CELLS.put(
          "field " + hostile,
          "field f: charge 1 nC at (0 cm, 0 cm) \"%1$s\"\nmap f \"%1$s\"\nrelief f \"%1$s\"\npotential of f at (1 cm, 0 cm) \"%1$s\""
              .formatted(text));
      CELLS.put(
          "case " + hostile, "compare \"" + text + "\" with \"other" + text + "\": m = 2*m show m");
      CELLS.put(
          "expected " + hostile,
          "x = 5e8 [m/s] \"%1$s\"\nexpect x below 1 [m/s] \"%1$s\"\nW = 3 [J] \"energy of the dome %1$s\""
              .formatted(text));
      CELLS.put("sentence " + hostile, "say \"" + braces + "\"");
      CELLS.put("source " + hostile, "1 + (" + hostile);
    }
  }

  private Samples() {}

  /** Texts that mean something in some medium. */
  static List<String> hostile() {
    return List.of(
        "<script>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "$x$ and $$y$$",
        "\\(x\\) \\[y\\] \\begin{a}",
        "\\)</td></table>",
        "\"quoted\" 'too'",
        "<!-- a --> ]]>",
        "{x} {{y}} %s %d {0}",
        "&amp; &lt; & <");
  }

  /** A name and what its cell shows after the givens. */
  record Sample(String name, List<Result> results) {
    @Override
    public String toString() {
      return Printable.of(name); // reports are XML
    }
  }

  static Stream<Sample> all() {
    Stream<Sample> ofCells =
        CELLS.entrySet().stream().map(e -> new Sample(e.getKey(), results(e.getValue())));
    return Stream.concat(ofCells, Stream.of(ofProgram()));
  }

  /** A picture that no cell makes: a program has it from somewhere. */
  private static Sample ofProgram() {
    Scene scene = Pictures.of(results("squares 1 with 4.7e13")).get(0);
    return new Sample("a picture by itself", List.of(new Result.Drawn(scene)));
  }

  static List<Result> results(String cell) {
    Sheet sheet = new Sheet(new DataFolder(Path.of("src/test/resources/plainscale/sheet/data")));
    List<Result> results = new ArrayList<>(sheet.run("givens", GIVENS).results());
    if (!cell.equals(GIVENS)) {
      results = sheet.run("cell", cell).results();
    }
    return results;
  }
}
