package plainscale.notation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a cell. One line is one statement; a line that begins with white space goes on with the
 * line before. {@code #} begins a comment. Reading is bounded: a cell that is too long, too deep or
 * has too many statements is refused with a sentence.
 *
 * <pre>{@code
 * List<Statement> cell = Notation.parse("given m = 2.70 g\nw = m g_n", names);
 * }</pre>
 */
public final class Notation {
  /** The most characters of one cell. */
  public static final int LONGEST = 20_000;

  /** The most statements of one cell. */
  public static final int MOST_STATEMENTS = 500;

  private static final Pattern NAMED =
      Pattern.compile("(?m)^\\h*(?:given\\h+)?([\\p{L}_][\\p{L}\\p{N}_]*)\\h*=");

  private Notation() {}

  /**
   * The statements of a cell.
   *
   * @throws ProblemException with every line that cannot be read
   */
  public static List<Statement> parse(String source, Names names) {
    List<Statement> statements = read(source, names);
    List<Problem> problems =
        statements.stream()
            .filter(Statement.Unreadable.class::isInstance)
            .map(statement -> ((Statement.Unreadable) statement).problem())
            .toList();
    if (!problems.isEmpty()) {
      throw new ProblemException(problems);
    }
    return statements;
  }

  /**
   * The statements of a cell, in which a line that cannot be read is a statement too: the good
   * lines around it count.
   *
   * @throws ProblemException if the cell as a whole is beyond the limits
   */
  public static List<Statement> read(String source, Names names) {
    return read(source, names, Set.of());
  }

  /** The same where the cell also defines names that do not stand in it, such as a file's. */
  public static List<Statement> read(String source, Names names, Set<String> more) {
    refuseTooLong(source);
    return readLines(source, withOwn(source, names, more)).stream()
        .flatMap(line -> Stream.ofNullable(line.read()))
        .toList();
  }

  /**
   * The lines of a cell, empty ones too, with the places of their parts.
   *
   * @throws ProblemException if the cell as a whole is beyond the limits
   */
  public static List<Line> lines(String source, Names names) {
    refuseTooLong(source);
    return readLines(source, withOwn(source, names, Set.of()));
  }

  private static List<Line> readLines(String source, Names known) {
    List<Line> lines = new ArrayList<>();
    for (Span range : ranges(source)) {
      try {
        lines.add(new StatementParser(source, range, known).line(range));
      } catch (ProblemException e) {
        e.problems().forEach(problem -> lines.add(unreadable(source, range, problem)));
      }
    }
    return lines;
  }

  private static Line unreadable(String source, Span line, Problem problem) {
    return new Line(line, unread(source, line, problem), List.of(), List.of(), line.end());
  }

  private static Statement unread(String source, Span line, Problem problem) {
    Matcher matcher = NAMED.matcher(source.substring(line.start(), line.end()));
    String defines = matcher.lookingAt() ? Greek.normal(matcher.group(1)) : "";
    return new Statement.Unreadable(line, defines, problem);
  }

  /** A single expression, as in a request of the front end. */
  public static Statement.Show parseExpression(String source, Names names) {
    List<Statement> statements = parse(source, names);
    if (statements.size() == 1 && statements.get(0) instanceof Statement.Show show) {
      return show;
    }
    Span span = new Span(0, source.length());
    throw new ProblemException(
        new Problem(Problem.Kind.SYNTAX, "One expression belongs here.", source, span, List.of()));
  }

  private static void refuseTooLong(String source) {
    if (source.length() > LONGEST) {
      String sentence =
          String.format(
              Locale.ROOT,
              "This cell has %d characters; the most is %d.",
              source.length(),
              LONGEST);
      throw limit(sentence, source);
    }
  }

  private static ProblemException limit(String sentence, String source) {
    String head = source.substring(0, Math.min(80, source.length()));
    return new ProblemException(
        new Problem(
            Problem.Kind.LIMIT,
            sentence,
            head,
            new Span(0, 1),
            List.of("divide it into several cells")));
  }

  /** The ranges of the statements: a line and the indented lines that follow it. */
  private static List<Span> ranges(String source) {
    List<Span> lines = new ArrayList<>();
    int start = 0;
    while (start <= source.length()) {
      int end = lineEnd(source, start);
      while (end < source.length() && isIndented(source, end + 1)) {
        end = lineEnd(source, end + 1);
      }
      lines.add(new Span(start, end));
      start = end + 1;
    }
    if (lines.size() > MOST_STATEMENTS) {
      throw limit(
          "This cell has %d lines; the most is %d.".formatted(lines.size(), MOST_STATEMENTS),
          source);
    }
    return lines;
  }

  private static int lineEnd(String source, int from) {
    int end = source.indexOf('\n', from);
    return end < 0 ? source.length() : end;
  }

  private static boolean isIndented(String source, int at) {
    if (at >= source.length()
        || !Character.isWhitespace(source.charAt(at))
        || source.charAt(at) == '\n') {
      return false;
    }
    return !source.substring(at, lineEnd(source, at)).isBlank();
  }

  /** The sheet's names and those that this cell defines itself. */
  private static Names withOwn(String source, Names names, Set<String> more) {
    Set<String> own = new TreeSet<>(more);
    Matcher matcher = NAMED.matcher(source);
    while (matcher.find()) {
      own.add(Greek.normal(matcher.group(1)));
    }
    return new OwnNames(own, names);
  }

  private record OwnNames(Set<String> own, Names outer) implements Names {
    @Override
    public boolean isQuantity(String name) {
      return own.contains(name) || outer.isQuantity(name);
    }

    @Override
    public boolean isDefined(String name) {
      return own.contains(name) || outer.isDefined(name);
    }

    @Override
    public boolean isSameAsUnit(String name) {
      return !own.contains(name) && outer.isSameAsUnit(name);
    }

    @Override
    public String meaning(String name) {
      return own.contains(name) ? "a quantity of this cell" : outer.meaning(name);
    }

    @Override
    public List<String> all() {
      List<String> all = new ArrayList<>(own);
      all.addAll(outer.all());
      return all;
    }
  }
}
