package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ParentWatchTest {

  private static final String OWN = Long.toString(ProcessHandle.current().pid());

  @Test
  void theVariableNamesAProcess() {
    assertEquals(Optional.of(ProcessHandle.current()), ParentWatch.parent(OWN, "Linux"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "0", "-5", "", "abc", "99999999999999999999"})
  void oneAndNonsenseAreNotWatched(String variable) {
    assertEquals(Optional.empty(), ParentWatch.parent(variable, "Linux"));
  }

  @Test
  void anAbsentVariableIsNotWatched() {
    assertEquals(Optional.empty(), ParentWatch.parent(null, "Linux"));
  }

  @Test
  void aHandleOnWindowsIsNotWatched() {
    assertEquals(Optional.empty(), ParentWatch.parent(OWN, "Windows 11"));
  }

  @Test
  void theEndOfTheProcessIsNoticed() throws IOException, InterruptedException {
    Process parent = FakeKernel.javaProcess("plainscale.session.ParentWatchTest$Sleeper").start();
    ScheduledExecutorService timer = Threads.timer();
    CountDownLatch gone = new CountDownLatch(1);
    ParentWatch.start(parent.toHandle(), timer, gone::countDown);
    parent.destroyForcibly().waitFor();
    assertTrue(gone.await(20, TimeUnit.SECONDS));
    timer.shutdownNow();
  }

  /** A process that waits to be ended. */
  static final class Sleeper {
    public static void main(String[] args) throws InterruptedException {
      Thread.sleep(60_000);
    }
  }
}
