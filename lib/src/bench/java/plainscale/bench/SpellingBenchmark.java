package plainscale.bench;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import plainscale.magnitude.Language;
import plainscale.magnitude.Words;

/** Numbers spelled in a second on one core, in each language with its own scale. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Threads(1)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class SpellingBenchmark {
  private static final BigDecimal AVOGADRO = new BigDecimal("602214076000000000000000");
  private static final int NUMBERS = 1 << 12;

  @Param({
    "ENGLISH",
    "BRITISH",
    "INDIAN_ENGLISH",
    "SPANISH",
    "FRENCH",
    "GERMAN",
    "BRAZILIAN",
    "PORTUGUESE",
    "ITALIAN",
    "HINDI"
  })
  private Language language = Language.ENGLISH;

  private Words words = Words.ENGLISH;
  private final BigDecimal[] numbers = new BigDecimal[NUMBERS];
  private int next;

  /** Random numbers of 24 digits. */
  @Setup
  public void prepare() {
    words = Words.of(language, language.defaultScale());
    Random random = new Random(24);
    BigInteger smallest = BigInteger.TEN.pow(23);
    for (int i = 0; i < NUMBERS; i++) {
      BigInteger above = new BigInteger(100, random).mod(smallest.multiply(BigInteger.valueOf(9)));
      numbers[i] = new BigDecimal(smallest.add(above));
    }
  }

  @Benchmark
  public String avogadro() {
    return words.spelled(AVOGADRO).text();
  }

  @Benchmark
  public String twentyFourDigits() {
    next = (next + 1) % NUMBERS;
    return words.spelled(numbers[next]).text();
  }
}
