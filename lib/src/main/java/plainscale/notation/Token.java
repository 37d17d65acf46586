package plainscale.notation;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One word of the notation. {@code space} tells whether white space stood before it. For a number
 * {@code value} is the decimal as written and {@code concise} the digits in brackets of {@code
 * 2.70(5)}.
 */
record Token(Type type, String text, Span span, boolean space, @Nullable Literal literal) {

  enum Type {
    NUMBER,
    NAME,
    SYMBOL,
    RAISED,
    STRING,
    END
  }

  /** The number that a number token means. */
  record Literal(BigDecimal value, @Nullable BigDecimal concise, boolean whole) {}

  boolean is(String symbol) {
    return type == Type.SYMBOL && text.equals(symbol);
  }

  boolean isWord(String word) {
    return type == Type.NAME && text.equals(word);
  }

  Literal number() {
    if (literal == null) {
      throw new IllegalStateException("not a number: " + text);
    }
    return literal;
  }
}
