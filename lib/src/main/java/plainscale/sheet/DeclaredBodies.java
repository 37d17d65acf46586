package plainscale.sheet;

import java.util.ArrayList;
import java.util.List;
import plainscale.notation.Open;
import plainscale.notation.Problem;
import plainscale.notation.ProblemException;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.text.Near;

/** The force diagrams of the bodies of a sheet, as one cell sees them. */
final class DeclaredBodies {
  private final Showing showing;

  DeclaredBodies(Showing showing) {
    this.showing = showing;
  }

  /** Whether there are any. */
  boolean isEmpty() {
    return entries().isEmpty();
  }

  /** The diagrams of all bodies with the values of a wave; what has none is told at a place. */
  List<BodyForces> all(Wave wave, Span span) {
    return entries().stream().map(entry -> diagram(entry, wave, span)).toList();
  }

  private List<Entry> entries() {
    return Bodies.in(showing.names().entries());
  }

  /**
   * The diagrams of the bodies that were asked for; without any, of all that have one, with a note
   * on each of the others.
   */
  List<BodyForces> asked(Statement.Pairs pairs, List<String> notes) {
    if (isEmpty()) {
      throw showing.problem(
          Problem.Kind.NAME,
          "This sheet declares no forces on a body yet.",
          pairs.span(),
          List.of("forces on \"ball\": weight m g_n down by \"Earth\", …"));
    }
    return pairs.bodies().isEmpty()
        ? sound(pairs.span(), notes)
        : pairs.bodies().stream()
            .map(body -> diagram(entry(body), showing.wave(), body.span()))
            .toList();
  }

  private List<BodyForces> sound(Span span, List<String> notes) {
    List<BodyForces> sound = new ArrayList<>();
    for (Entry entry : entries()) {
      try {
        sound.add(forces(entry, showing.wave()));
      } catch (ProblemException e) {
        String sentence = e.problems().get(0).sentence();
        notes.add("The forces on “%s” are left out: %s".formatted(body(entry), sentence));
      }
    }
    boolean none = sound.isEmpty() || showing.wave().isOver();
    return none ? all(showing.wave(), span) : sound;
  }

  private static BodyForces forces(Entry entry, Wave wave) {
    Blanks.refuse(entry);
    return new Forces(wave, entry.source()).on((Statement.Forces) entry.statement());
  }

  private Entry entry(Statement.Option asked) {
    return entries().stream()
        .filter(entry -> Bodies.isSame(body(entry), asked.text()))
        .findFirst()
        .orElseThrow(() -> unknown(asked));
  }

  private ProblemException unknown(Statement.Option asked) {
    List<String> bodies = entries().stream().map(DeclaredBodies::body).toList();
    List<String> near = new ArrayList<>(Near.to(asked.text(), bodies, 2));
    List<String> repairs = (near.isEmpty() ? bodies : near).stream().limit(4).toList();
    return showing.problem(
        Problem.Kind.NAME,
        "This sheet declares no forces on “%s”.".formatted(asked.text()),
        asked.span(),
        repairs.stream().map(body -> "\"" + body + "\"").toList());
  }

  private static String body(Entry entry) {
    return ((Statement.Forces) Open.within(entry.statement())).body().text();
  }

  /** A mistake in another cell is told here, without that cell's line numbers. */
  private BodyForces diagram(Entry entry, Wave wave, Span span) {
    try {
      return forces(entry, wave);
    } catch (ProblemException e) {
      Problem root = e.problems().get(0);
      if (e.isBlank() || entry.source().equals(showing.source())) {
        throw e;
      }
      String sentence =
          "The forces on “%s” have a mistake in another cell: %s"
              .formatted(body(entry), root.sentence());
      throw showing.problem(root.kind(), sentence, span, List.of());
    }
  }
}
