package plainscale.render;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plainscale.magnitude.Digits;
import plainscale.quantity.Distribution;
import plainscale.quantity.Shown;
import plainscale.sheet.Account;
import plainscale.sheet.Result;

/** An uncertainty budget as a table and sentences, the same in every medium. */
final class BudgetText {
  private static final List<String> HEAD =
      List.of("source", "share of the variance", "contribution", "its own value", "sensitivity");
  private static final int OWN = 3;

  private final Result.Budgeted budgeted;
  private final Account account;

  BudgetText(Result.Budgeted budgeted) {
    this.budgeted = budgeted;
    this.account = budgeted.account();
  }

  /** The sources, a row each, below a head; what none of them has is no column. */
  List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>(List.of(HEAD));
    account.shares().forEach(share -> rows.add(row(share)));
    boolean own = account.shares().stream().anyMatch(share -> share.own().isPresent());
    return own ? rows : rows.stream().map(row -> row.subList(0, OWN)).toList();
  }

  private List<String> row(Account.Share share) {
    return List.of(
        share.source(),
        Bars.bar(share.share()),
        number(share.contribution()),
        share.own().map(this::own).orElse(""),
        share.own().map(own -> number(own.sensitivity())).orElse(""));
  }

  private String own(Account.Input own) {
    boolean normal = own.distribution() == Distribution.NORMAL;
    String value = number(own.value());
    return normal ? value : value + ", " + own.distribution().name().toLowerCase(Locale.ROOT);
  }

  private String number(Shown shown) {
    return ValueText.number(shown, budgeted.writing());
  }

  /** What to know better, what second order says, and what came of the trials. */
  List<String> sentences() {
    List<String> lines = new ArrayList<>();
    lines.add(
        account
            .improvement()
            .map(this::improvement)
            .orElse("To first order nothing makes it uncertain."));
    account.secondOrder().ifPresent(u -> lines.add(secondOrder(u)));
    account.drawn().ifPresent(drawn -> lines.addAll(trials(drawn)));
    return lines;
  }

  private String improvement(Account.Improvement best) {
    String advice =
        best.constant()
            ? "What limits it most is the constant %s".formatted(best.source())
            : "To know it better, measure %s better".formatted(best.source());
    return "%s: with half the uncertainty there, the result has ± %s instead of ± %s."
        .formatted(advice, number(best.halved()), number(best.now()));
  }

  private String secondOrder(Shown u) {
    return "To second order the standard uncertainty is %s: within the uncertainties the formula bends (JCGM 100, 5.1.2)."
        .formatted(number(u));
  }

  private List<String> trials(Account.Drawn drawn) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%s trials (seed %d), every source drawn at random, give %s."
            .formatted(whole(drawn.count()), drawn.seed(), number(drawn.mean())));
    lines.add(
        "95 %% of them lie within %s, with as many below as above; the linear result says %s."
            .formatted(ends(drawn.symmetric()), ends(drawn.linear())));
    drawn
        .shortest()
        .ifPresent(
            e ->
                lines.add(
                    "The shortest interval that holds 95 %% of them is %s.".formatted(ends(e))));
    if (drawn.without() > 0) {
      lines.add(
          "%s trials have no value and are left out, such as the root of a negative number."
              .formatted(whole(drawn.without())));
    }
    lines.add(verdict(drawn.verdict()));
    return lines;
  }

  private String whole(int count) {
    return Digits.of(BigDecimal.valueOf(count), budgeted.writing().digits()).text();
  }

  private String ends(Account.Ends ends) {
    return ValueText.range(ends.low(), ends.high(), budgeted.writing());
  }

  private static String verdict(Account.Verdict verdict) {
    return switch (verdict) {
      case AGREE -> "Both agree to the figures that the result is shown with.";
      case DISAGREE ->
          "They disagree by more than the figures that the result is shown with: the linear result does not hold here; the trials do (JCGM 101, 8).";
      case UNDECIDED ->
          "So few trials cannot tell whether the linear result holds to the figures that the result is shown with.";
    };
  }
}
