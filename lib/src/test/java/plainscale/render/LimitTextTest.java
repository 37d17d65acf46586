package plainscale.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainscale.sheet.Sheet;

/** The sentence on each kind of ending; the exponents are those of the leading terms. */
class LimitTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "θ to 90° show 1/cos(θ)    | 1/cos(θ) grows without bound: ten times nearer makes it 10 times as much (it goes as 1/(90° − θ)).",
        "θ to 90° show -tan(θ)^2   | -tan(θ)^2 grows without bound below zero: ten times nearer makes it 100 times as much (it goes as 1/(90° − θ)²).",
        "θ to 90° show cos(θ)      | cos(θ) goes to zero as (90° − θ).",
        "θ to 20° show θ - 20°     | θ - 20° goes to zero as (θ − 20°).",
        "θ to -20° show 20° + θ    | 20° + θ goes to zero as (θ + 20°).",
        "θ to 90° show t           | t does not contain θ.",
        "θ to 90° show θ/θ         | θ/θ is the same in all these rows.",
        "t to 0 s show sqrt(t/τ)   | sqrt(t/τ) goes to zero as t^(1/2).",
        "t to 0 s show ln(t/τ)     | ln(t/τ) falls without bound, slowly: every row changes it by −2.30, as a logarithm does.",
        "t to infinity show t^2/τ  | t^2/τ grows without bound: ten times t makes it 100 times as much (it goes as t²).",
        "t to infinity show 1/t    | 1/t goes to zero as 1/t.",
        "t to infinity show t/(t + τ) to 4 figures | t/(t + τ) tends to 1.000 (by numbers).",
        "t to infinity show exp(-t/τ) | exp(-t/τ) goes to zero faster than by any power.",
        "t to infinity show exp(t/τ)  | exp(t/τ) grows without bound, faster than by any power.",
        "t to 0 s show 1/t + 1e5 [1/s] | 1/t + 1e5 [1/s] grows without bound: what grows in it goes as 1/t.",
        "t to 0 s show (t/τ)^0.123 | (t/τ)^0.123 goes to zero as t^0.123."
      })
  void oneSentence(String limit, String sentence) {
    assertEquals(sentence, lastLine(limit));
  }

  private static String lastLine(String limit) {
    Sheet sheet = new Sheet();
    sheet.run("a", "θ = 30°\ngiven t = 0.7 s\ngiven τ = 0.2 s");
    String text = Renderers.text(sheet.run("b", "limit " + limit).results());
    return text.substring(text.lastIndexOf('\n') + 1).replace('\u202f', ' ');
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "t to 0 s show sqrt(t/τ - 0.01)     | Nearer than at t = 0.007 s it has no value.",
        "t to infinity show sqrt(50 - t/τ)  | Beyond t = 7 s it has no value.",
        "θ to 0° show (1 - cos(θ))/θ^2      | Nearer than at θ = 3 × 10⁻⁴° its values scatter or their digits run out; they do not count."
      })
  void whyNearerRowsDoNotCount(String limit, String remark) {
    assertEquals(remark, lastLine(limit));
    assertTrue(remark.endsWith("."));
  }
}
