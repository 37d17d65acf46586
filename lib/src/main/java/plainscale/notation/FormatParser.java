package plainscale.notation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import plainscale.text.Near;
import plainscale.units.UnitOfMeasure;
import plainscale.units.UnitTable;

/**
 * What follows a value and says how to show it: {@code { "in" ( form | unit ) | "to" number
 * ("figure" | "figures") | "roughly" }}.
 */
final class FormatParser {
  private static final int MOST_FIGURES = 30;
  private static final BigDecimal TOO_MANY = BigDecimal.valueOf(MOST_FIGURES + 1L);
  private static final List<String> ENDS = List.of("against", "in", "to", "by", "with", "roughly");
  private static final Map<String, Format.Style> FORMS =
      Map.of(
          "words", Format.Style.WORDS,
          "digits", Format.Style.DIGITS,
          "parts", Format.Style.PARTS,
          "orders", Format.Style.ORDERS);

  private final Tokens tokens;
  private final UnitReader units;
  private final List<Statement.Option> wording = new ArrayList<>();
  private @Nullable UnitOfMeasure unit;
  private Format.Style style = Format.Style.NUMBER;
  private int figures;

  FormatParser(Tokens tokens, UnitReader units) {
    this.tokens = tokens;
    this.units = units;
  }

  Format format() {
    while (true) {
      if (tokens.acceptWord("in")) {
        form();
      } else if (tokens.acceptWord("to")) {
        figures = figures();
      } else if (tokens.acceptWord("roughly")) {
        style = Format.Style.ROUGHLY;
      } else {
        return new Format(unit, style, figures, wording);
      }
    }
  }

  private void form() {
    Token token = tokens.peek();
    Format.Style form = token.type() == Token.Type.NAME ? FORMS.get(token.text()) : null;
    if (form != null) {
      tokens.next();
      choose(form);
    } else if (token.isWord("full") && tokens.peek(1).isWord("words")) {
      tokens.next();
      tokens.next();
      choose(Format.Style.FULL_WORDS);
    } else {
      refuseMisspelledForm(token);
      unit = units.untilEnd(ENDS);
      return;
    }
    while (tokens.peek().type() == Token.Type.NAME && !ENDS.contains(tokens.peek().text())) {
      wording.add(option(tokens));
    }
  }

  /** {@code roughly in words de}: the words of a form that is worded anyway. */
  private void choose(Format.Style form) {
    boolean worded = form == Format.Style.WORDS && style.isWorded();
    style = worded ? style : form;
  }

  /** {@code in word}, {@code in orders}: nearer to a form than to a unit. */
  private void refuseMisspelledForm(Token token) {
    String text = token.text();
    if (token.type() != Token.Type.NAME || UnitTable.standard().find(text).isPresent()) {
      return;
    }
    List<String> near = Near.to(text.toLowerCase(Locale.ROOT), FORMS.keySet(), 2);
    if (!near.isEmpty() || text.equals("full")) {
      List<String> repairs = new ArrayList<>(near.stream().map(w -> "in " + w).toList());
      repairs.add("in full words");
      throw tokens.fault(
          Problem.Kind.SYNTAX, "I know no form “" + text + "”.", token.span(), repairs);
    }
  }

  /** A word, or a language tag of several parts (IETF BCP 47): {@code de-CH}. */
  static Statement.Option option(Tokens tokens) {
    Span span = tokens.next().span();
    while (tokens.peek().is("-") && !tokens.peek().space()) {
      tokens.next();
      span = span.to(tokens.next().span());
    }
    return new Statement.Option(span, tokens.text(span));
  }

  private int figures() {
    Token number = tokens.next();
    boolean whole = number.type() == Token.Type.NUMBER && number.number().whole();
    int value = whole ? number.number().value().min(TOO_MANY).intValue() : 0;
    if (value <= 0 || value > MOST_FIGURES) {
      throw tokens.fault("A number of figures runs from 1 to 30.", number.span(), "to 2 figures");
    }
    if (!tokens.acceptWord("figures") && !tokens.acceptWord("figure")) {
      throw tokens.unexpected("“figures” belongs here");
    }
    return value;
  }
}
