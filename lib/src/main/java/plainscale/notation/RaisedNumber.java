package plainscale.notation;

import java.math.BigDecimal;
import plainscale.units.Superscripts;

/** A raised exponent such as ⁻². */
final class RaisedNumber {
  private RaisedNumber() {}

  static Expr of(Token token, Tokens tokens) {
    StringBuilder plain = new StringBuilder();
    for (char c : token.text().toCharArray()) {
      plain.append(c == '⁻' ? "-" : Integer.toString(Superscripts.digit(c)));
    }
    if (!plain.toString().matches("-?\\d{1,6}")) {
      throw tokens.fault("This raised number is not one.", token.span());
    }
    return new Expr.Literal(token.span(), new BigDecimal(plain.toString()), null, true);
  }
}
