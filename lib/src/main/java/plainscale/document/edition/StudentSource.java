package plainscale.document.edition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import plainscale.document.Blank;
import plainscale.notation.Expr;
import plainscale.notation.Expressions;
import plainscale.notation.Line;
import plainscale.notation.Open;
import plainscale.notation.Span;
import plainscale.notation.Statement;
import plainscale.units.UnitOfMeasure;

/**
 * The source of a cell as students get it: with blanks where its parts are theirs to put in,
 * without comments, since those may tell the key, and without lines that cannot be read, of which
 * nobody knows what they tell.
 */
final class StudentSource {
  private static final String BLANK = Open.SIGN;
  private static final String WITH_DOUBT = "? ± ?";

  private record Edit(Span span, String text) {}

  private final String source;
  private final List<Line> lines;
  private final Hiding hiding;
  private final HiddenNumbers numbers;
  private final List<Edit> edits = new ArrayList<>();

  private StudentSource(String source, List<Line> lines, Hiding hiding, HiddenNumbers numbers) {
    this.source = source;
    this.lines = lines;
    this.hiding = hiding;
    this.numbers = numbers;
  }

  /** The text with its lines; the numbers are not told in any of them. */
  static String of(String source, List<Line> lines, Hiding hiding, HiddenNumbers numbers) {
    return new StudentSource(source, lines, hiding, numbers).written();
  }

  private String written() {
    if (lines.isEmpty()) { // beyond the limits, so nobody knows what it tells
      return "";
    }
    Set<Span> seen = new HashSet<>();
    lines.stream().filter(line -> seen.add(line.span())).forEach(this::edit);
    StringBuilder text = new StringBuilder();
    int at = 0;
    for (Edit edit : outermost()) {
      text.append(source, at, edit.span().start()).append(edit.text());
      at = edit.span().end();
    }
    return text.append(source.substring(at)).toString().stripTrailing();
  }

  /** In the order of the source; what lies within another one goes with it. */
  private List<Edit> outermost() {
    List<Edit> outermost = new ArrayList<>();
    int end = 0;
    Comparator<Edit> inOrder = Comparator.comparing(edit -> edit.span().start());
    edits.sort(inOrder.thenComparing(edit -> -edit.span().end()));
    for (Edit edit : edits) {
      if (edit.span().start() >= end) {
        outermost.add(edit);
        end = edit.span().end();
      }
    }
    return outermost;
  }

  private void edit(Line line) {
    Statement statement = line.read();
    boolean comment = statement == null && !line.comments().isEmpty();
    if (comment || (statement != null && hiding.leavesOut(statement))) {
      edits.add(new Edit(withLineFeed(line.span()), ""));
      return;
    }
    line.comments().forEach(span -> edits.add(new Edit(withSpaceBefore(span), "")));
    if (statement == null) {
      return;
    }
    hiding.relation(statement).ifPresent(name -> asRelation(line, name));
    Set<Line.What> hidden = hiding.of(statement);
    line.parts().stream()
        .filter(part -> hidden.contains(part.what()) || isHiddenNumber(part, statement))
        .forEach(part -> edits.add(new Edit(part.span(), blank(part.what()))));
    asked(line, statement);
  }

  private void asRelation(Line line, String name) {
    String relation = "relation " + name + ": " + BLANK + (isDescribed(line) ? " " : "");
    edits.add(new Edit(new Span(line.span().start(), line.end()), relation));
  }

  private boolean isDescribed(Line line) {
    return line.end() < source.length() && isQuotation(source.charAt(line.end()));
  }

  private Span withLineFeed(Span line) {
    return new Span(line.start(), Math.min(source.length(), line.end() + 1));
  }

  private Span withSpaceBefore(Span comment) {
    int start = comment.start();
    while (start > 0 && (source.charAt(start - 1) == ' ' || source.charAt(start - 1) == '\t')) {
      start--;
    }
    return new Span(start, comment.end());
  }

  private static String blank(Line.What what) {
    return what == Line.What.CONCISE ? WITH_DOUBT : BLANK;
  }

  private boolean isHiddenNumber(Line.Part part, Statement statement) {
    return part.what() == Line.What.NUMBER
        && literals(statement)
            .filter(literal -> literal.span().start() == part.span().start())
            .anyMatch(
                literal ->
                    numbers.contain(literal.value(), literal.unit().orElse(UnitOfMeasure.ONE)));
  }

  private static Stream<Expr.Literal> literals(Statement statement) {
    Stream<Expr> sides =
        Open.within(statement) instanceof Statement.Relation relation
            ? Stream.of(relation.left(), relation.right())
            : Stream.empty();
    Literals literals = new Literals();
    Stream.concat(Expressions.of(statement), sides).forEach(expr -> expr.accept(literals));
    return literals.found().stream();
  }

  /**
   * A derivation is not told unless the author chose how: while its relations are there, the
   * reasons are asked; where the students write them, what each step leads to.
   */
  private void asked(Line line, Statement statement) {
    boolean untold =
        Open.within(statement) instanceof Statement.Solve solve
            && solve.telling() == Statement.Telling.STEPS;
    if (!untold || hiding.blank() == Blank.NOTHING) {
      return;
    }
    String asked = hiding.blank() == Blank.VALUES ? "with questions" : "with boxes";
    edits.add(
        new Edit(new Span(line.end(), line.end()), isDescribed(line) ? asked + " " : " " + asked));
  }

  private static boolean isQuotation(char c) {
    return c == '"' || c == '“' || c == '”';
  }
}
