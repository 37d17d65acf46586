package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plainscale.laws.Hazard;
import plainscale.laws.Hazards;
import plainscale.magnitude.Writing;
import plainscale.notation.Printer;
import plainscale.quantity.Shown;
import plainscale.sheet.GuardResult;
import plainscale.sheet.GuardResult.Excess;
import plainscale.sheet.Result;
import plainscale.units.UnitOfMeasure;

/** The sentences of plausibility and of cautions, the same in every medium. */
final class GuardText implements GuardResult.Visitor<GuardText.Told> {
  private static final int LONGEST = 4;
  private static final String LOCAL_RULES = "the rules of the school decide";

  /**
   * What is said: blocks of a lead word, a sentence and further ones.
   *
   * @param style how a page marks it
   */
  record Told(String style, List<Block> blocks) {}

  /** A lead word or a heading, which may be empty, the sentence after it and those below. */
  record Block(String lead, String first, List<String> more) {}

  private static Told told(String style, String lead, String first, List<String> more) {
    return new Told(style, List.of(new Block(lead, first, more)));
  }

  @Override
  public Told expected(GuardResult.Expected expected) {
    String name = named(expected.label(), expected.value(), expected.writing());
    String why = expected.why().isEmpty() ? "" : " (" + expected.why() + ")";
    String where = where(expected.limits(), expected.writing());
    return switch (expected.verdict()) {
      case INSIDE ->
          told("expected", "", name + " lies " + where + ", as expected" + why + ".", List.of());
      case WITHIN_UNCERTAINTY ->
          told("expected", "", hardly(name, where, "twice its uncertainty", why), List.of());
      case WITHIN_LAST_DIGIT ->
          told("expected", "", hardly(name, where, "half of its last digit", why), List.of());
      case OUTSIDE ->
          told(
              "unexpected",
              "Unexpected:",
              name + " should lie " + where + why + "; " + excess(expected) + ".",
              doubts(expected.doubt(), name(expected.label()), expected.writing()));
    };
  }

  private static String hardly(String name, String where, String open, String why) {
    return "%s is outside by less than %s, so it may lie %s%s.".formatted(name, open, where, why);
  }

  private static String where(GuardResult.Limits limits, Writing writing) {
    if (limits instanceof GuardResult.Around around) {
      return "within %s of %s"
          .formatted(
              ValueText.number(around.within(), writing),
              ValueText.number(around.middle(), writing));
    }
    GuardResult.Between between = (GuardResult.Between) limits;
    Optional<String> low = between.lower().map(l -> ValueText.number(l, writing));
    Optional<String> high = between.upper().map(h -> ValueText.number(h, writing));
    if (low.isPresent() && high.isPresent()) {
      return "between " + low.get() + " and " + high.get();
    }
    return low.map(l -> "above " + l).orElseGet(() -> "below " + high.orElse(""));
  }

  private static String excess(GuardResult.Expected expected) {
    Excess excess = expected.excess().orElseThrow();
    String limit = limit(expected.limits(), excess.isAbove());
    return excess(excess, limit, expected.writing());
  }

  private static String limit(GuardResult.Limits limits, boolean above) {
    boolean single =
        limits instanceof GuardResult.Between between
            && (between.lower().isEmpty() || between.upper().isEmpty());
    return single ? "that" : above ? "the upper limit" : "the lower limit";
  }

  private static String excess(Excess excess, String limit, Writing writing) {
    String amount = ValueText.number(excess.amount(), writing);
    return switch (excess.way()) {
      case TIMES -> "it is " + amount + " times " + limit;
      case PART -> limit + " is " + amount + " times as much";
      case PER_CENT_ABOVE -> "it is " + amount + " % above " + limit;
      case PER_CENT_BELOW -> "it is " + amount + " % below " + limit;
      case ABOVE -> "it is " + amount + " above " + limit;
      case BELOW -> "it is " + amount + " below " + limit;
      case NEGATIVE -> "it is negative";
      case MULTIPLE -> "it is " + amount + " times " + limit;
    };
  }

  @Override
  public Told impossible(GuardResult.Impossible impossible) {
    String name = named(impossible.label(), impossible.value(), impossible.writing());
    String sentence = name + " " + beyond(impossible) + ". " + impossible.why();
    return told(
        "impossible",
        impossible.strict() ? "Cannot be:" : "Hard to believe:",
        sentence,
        doubts(impossible.doubt(), name(impossible.label()), impossible.writing()));
  }

  private static String beyond(GuardResult.Impossible impossible) {
    Writing writing = impossible.writing();
    Excess excess = impossible.excess();
    String amount = ValueText.number(excess.amount(), writing);
    boolean number = impossible.limit().unit().equals(UnitOfMeasure.ONE);
    String size = ValueText.number(limit(impossible), writing);
    String limit = impossible.what().equals("-") ? size : size + ", " + impossible.what();
    return switch (excess.way()) {
      case TIMES -> number ? "is above " + limit : "is " + amount + " times " + limit;
      case PER_CENT_ABOVE, ABOVE -> "is above " + limit;
      case PART, PER_CENT_BELOW, BELOW ->
          impossible.limit().value().signum() == 0 && impossible.what().equals("-")
              ? "is negative"
              : "is below " + limit;
      case NEGATIVE ->
          impossible.limit().unit().equals(UnitOfMeasure.ONE) || impossible.what().equals("-")
              ? "is negative"
              : "is below " + limit;
      case MULTIPLE -> "is " + amount + " times " + impossible.what();
    };
  }

  /** A limit to four figures at most. */
  private static Shown limit(GuardResult.Impossible impossible) {
    Shown limit = impossible.limit();
    return limit.value().precision() > LONGEST ? limit.toFigures(LONGEST) : limit;
  }

  private static List<String> doubts(GuardResult.Doubt doubt, String value, Writing writing) {
    List<String> sentences = new ArrayList<>();
    for (GuardResult.Suspect suspect : doubt.suspects()) {
      boolean itself = suspect.name().equals(value);
      String it =
          itself ? "it could be" : "it would be " + ValueText.number(suspect.then(), writing);
      sentences.add(
          "%s %s = %s instead of %s %s: %s"
              .formatted(
                  sentences.isEmpty() ? "With" : "Or with",
                  suspect.name(),
                  ValueText.number(suspect.meant(), writing),
                  ValueText.number(suspect.written(), writing),
                  it,
                  suspect.question()));
    }
    doubt
        .strongest()
        .filter(lever -> !lever.name().equals(value))
        .map(lever -> lever(lever, value, writing))
        .ifPresent(sentences::add);
    return sentences;
  }

  private static String lever(GuardResult.Lever lever, String value, Writing writing) {
    String it = value.isEmpty() ? "It" : value;
    String needed =
        lever
            .wanted()
            .map(
                wanted ->
                    ": it would have to be "
                        + ValueText.number(wanted, writing)
                        + lever.times().map(t -> ", " + factor(t, writing)).orElse(""))
            .orElse("");
    return "No usual slip explains it. %s hangs most on %s = %s%s."
        .formatted(it, lever.name(), ValueText.number(lever.now(), writing), needed);
  }

  private static String factor(BigDecimal times, Writing writing) {
    return ValueText.number(new Shown(times, null, UnitOfMeasure.ONE), writing) + " times as much";
  }

  @Override
  public Told setOff(GuardResult.SetOff setOff) {
    Writing writing = setOff.writing();
    String limit = ValueText.number(setOff.limit(), writing);
    String beyond =
        switch (setOff.side()) {
          case ABOVE -> setOff.limit().value().signum() == 0 ? "" : " is above " + limit;
          case REACHED -> " reaches " + limit;
          case BELOW -> " is below " + limit;
        };
    String sentence =
        "%s%s, %s: %s; %s."
            .formatted(
                named(setOff.label(), setOff.value(), writing),
                beyond,
                setOff.whose(),
                setOff.advice(),
                LOCAL_RULES);
    return told("caution", "Caution (" + setOff.hazard().title() + "):", sentence, List.of());
  }

  @Override
  public Told cautioned(GuardResult.Cautioned cautioned) {
    List<Block> blocks = new ArrayList<>();
    for (Hazard hazard : cautioned.hazards()) {
      List<String> sentences = new ArrayList<>(hazard.cautions());
      sentences.add("Source: " + hazard.source() + ".");
      blocks.add(new Block("Caution: " + hazard.title(), "", sentences));
    }
    blocks.add(new Block("", Hazards.LAST_WORD, List.of()));
    return new Told("caution", blocks);
  }

  private static String named(Result.Label label, Shown value, Writing writing) {
    String name = name(label);
    return (name.isEmpty() ? "" : name + " = ") + ValueText.number(value, writing);
  }

  private static String name(Result.Label label) {
    return label.name().or(() -> label.formula().map(Printer::print)).orElse("");
  }

  /** As plain text. */
  static String text(Told told) {
    return told.blocks().stream().flatMap(GuardText::lines).collect(Collectors.joining("\n"));
  }

  private static Stream<String> lines(Block block) {
    String head =
        Stream.of(block.lead(), block.first())
            .filter(part -> !part.isEmpty())
            .collect(Collectors.joining(" "));
    return Stream.concat(Stream.of(head), block.more().stream().map(line -> "  " + line));
  }
}
