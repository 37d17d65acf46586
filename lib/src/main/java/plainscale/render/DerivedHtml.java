package plainscale.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plainscale.algebra.Equation;
import plainscale.algebra.Relation;
import plainscale.algebra.Step;
import plainscale.sheet.Result;

/**
 * A derivation as HTML: numbered lines of mathematics, each with its reason; they can be folded.
 */
final class DerivedHtml {
  private static final String LINE =
      "<tr><td style=\"text-align:left;vertical-align:baseline;padding:0.2em 0.8em 0.2em 0\">(%d)</td>"
          + "<td style=\"text-align:left;vertical-align:baseline;padding:0.2em 0.8em 0.2em 0;"
          + "width:100%%\">%s</td></tr>";

  /** So many lines fit above the new one on a screen. */
  private static final int LINES_BEFORE = 5;

  private final Medium medium;
  private final Result.Derived derived;
  private final DerivedText text;
  private final FormulaWriter formula;

  DerivedHtml(Medium medium, Result.Derived derived) {
    this.medium = medium;
    this.derived = derived;
    this.text = new DerivedText(derived);
    this.formula = new FormulaWriter(medium.markup(), derived.writing().digits());
  }

  String html() {
    StringBuilder html = new StringBuilder("<div class=\"ps-derived\">");
    html.append("<p><b>").append(words(text.head())).append("</b></p>");
    html.append(
        text.showsSteps() ? steps() : "<details><summary>Steps</summary>" + steps() + "</details>");
    text.stopped().ifPresent(line -> html.append(paragraph(line)));
    text.rejected().forEach(line -> html.append(paragraph(line)));
    if (!text.hidesResults()) {
      html.append(result());
    }
    return html.append("</div>").toString();
  }

  private String steps() {
    StringBuilder steps = new StringBuilder(relations());
    derived.derivation().steps().forEach(step -> steps.append(step(step)));
    return steps.toString();
  }

  private String relations() {
    StringBuilder rows = new StringBuilder();
    int number = 1;
    for (Relation relation : derived.derivation().relations()) {
      String said = relation.words().isEmpty() ? "" : " <i>" + words(relation.words()) + "</i>";
      rows.append(LINE.formatted(number++, math(relation.equation()) + said));
    }
    return Html.table(rows.toString());
  }

  private String step(Step step) {
    String after = after(step.after());
    return "<details open=\"\"><summary>"
        + words(text.reason(step))
        + "</summary>"
        + Html.table(LINE.formatted(step.number(), after))
        + "</details>";
  }

  private String result() {
    return derived.value().map(this::result).orElse("");
  }

  /** The relations, then for each step what was found so far and what is new, then the value. */
  List<String> parts() {
    List<String> parts = new ArrayList<>();
    List<Step> steps = text.showsSteps() ? derived.derivation().steps() : List.of();
    if (text.showsSteps()) {
      parts.add(framed(relations()));
    }
    for (Step step : steps) {
      parts.add(framed(before(step) + newest(step)));
    }
    StringBuilder rest = new StringBuilder();
    text.stopped().ifPresent(line -> rest.append(paragraph(line)));
    text.rejected().forEach(line -> rest.append(paragraph(line)));
    derived.value().filter(v -> !text.hidesResults()).ifPresent(v -> rest.append(evaluated(v)));
    String budget = text.hidesResults() ? "" : budget();
    List.of(rest.toString(), budget).stream()
        .filter(part -> !part.isEmpty())
        .forEach(part -> parts.add(framed(part)));
    return parts;
  }

  private String framed(String part) {
    return "<div class=\"ps-derived\"><p><b>" + words(text.head()) + "</b></p>" + part + "</div>";
  }

  /** The last lines before a step, and which of the earlier ones it uses. */
  private String before(Step step) {
    int last = step.number() - 1;
    String lines =
        IntStream.rangeClosed(1, last)
            .filter(line -> line > last - LINES_BEFORE || step.from().contains(line))
            .mapToObj(this::known)
            .collect(Collectors.joining());
    return "<div class=\"ps-before\">" + lines + "</div>";
  }

  private String known(int number) {
    Equation equation = derived.derivation().equation(number);
    boolean given = number <= derived.derivation().relations().size();
    return "<p>(" + number + ") " + (given ? math(equation) : after(equation)) + "</p>";
  }

  private String after(Equation equation) {
    return text.hidesResults() ? "…" : math(equation);
  }

  private String newest(Step step) {
    return "<p>"
        + words(text.reason(step))
        + "</p><p class=\"ps-new\">("
        + step.number()
        + ") "
        + after(step.after())
        + "</p>";
  }

  private String result(Result.Evaluated value) {
    return evaluated(value) + budget();
  }

  private String evaluated(Result.Evaluated value) {
    ValueLine line = new ValueLine(medium.markup(), derived.writing());
    StringBuilder html = new StringBuilder();
    value.notes().forEach(note -> html.append(paragraph(note)));
    text.answer().ifPresent(answer -> html.append("<p>").append(math(answer)).append("</p>"));
    value.inserted().ifPresent(inserted -> html.append(equal(formula.write(inserted))));
    html.append(
        value.inserted().isPresent()
            ? equal(line.value(value.shown()))
            : "<p>" + medium.mathematics().apply(named(line.value(value.shown()))) + "</p>");
    value.prefixed().ifPresent(p -> html.append(equal(line.value(p))));
    return html.toString();
  }

  private String budget() {
    StringBuilder html = new StringBuilder();
    List<String> budget = text.budget();
    if (!budget.isEmpty()) {
      html.append(paragraph(budget.get(0))).append("<pre>");
      budget.subList(1, budget.size() - 1).forEach(bar -> html.append(words(bar)).append('\n'));
      html.append("</pre>").append(paragraph(budget.get(budget.size() - 1)));
    }
    return html.toString();
  }

  private String named(String side) {
    MathMarkup markup = medium.markup();
    String name = markup.name(derived.derivation().unknown());
    return markup.row(List.of(name, markup.sign("="), side));
  }

  /** A line that goes on with the one above. */
  private String equal(String side) {
    MathMarkup markup = medium.markup();
    String line = markup.row(List.of(markup.sign("="), side));
    return "<p>" + medium.mathematics().apply(line) + "</p>";
  }

  private String math(Equation equation) {
    return medium.mathematics().apply(formula.write(equation));
  }

  private String words(String sentence) {
    return medium.words().apply(sentence);
  }

  private String paragraph(String sentence) {
    return "<p>" + words(sentence) + "</p>";
  }
}
