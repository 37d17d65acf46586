package plainscale.document;

import java.util.List;
import java.util.Map;

/**
 * TeX as plain signs, as far as names, numbers and units go: {@code 6.7\times10^{-8}\,\text{C}} is
 * {@code 6.7×10^-8 C}.
 */
final class PlainTex {
  private static final List<Map.Entry<String, String>> SIGNS =
      List.of(
          Map.entry("\\\\(?:text|mathrm|mathit|mathsf|operatorname|unit)\\s*\\{([^{}]*)\\}", "$1"),
          Map.entry("\\{,\\}", ","),
          Map.entry("\\\\(?:times|cdot)(?![A-Za-z])\\s*", "×"),
          Map.entry("\\\\pm(?![A-Za-z])", "±"),
          Map.entry("\\\\(?:,|;|:|!| |quad|qquad)|~", " "),
          Map.entry("\\\\(?:approx|sim|le|ge|leq|geq|ne|rightarrow|to)(?![A-Za-z])", " = "),
          Map.entry("\\\\([A-Za-z]+)", "$1"),
          Map.entry("[{}\\\\]", ""));

  private PlainTex() {}

  static String of(String tex) {
    String plain = tex;
    for (Map.Entry<String, String> sign : SIGNS) {
      plain = plain.replaceAll(sign.getKey(), sign.getValue());
    }
    return plain;
  }
}
