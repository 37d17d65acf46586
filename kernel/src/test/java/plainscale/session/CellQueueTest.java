package plainscale.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class CellQueueTest {

  private static final long FOREVER = TimeUnit.HOURS.toMillis(1);

  private final ExecutorService thread = Threads.single("test-cells");
  private final ScheduledExecutorService timer = Threads.timer();
  private final BlockingQueue<String> ends = new LinkedBlockingQueue<>();

  @AfterEach
  void stopThreads() {
    thread.shutdown();
    timer.shutdown();
  }

  @Test
  void cellsRunInOrder() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, 0);
    for (int i = 0; i < 20; i++) {
      String name = "cell " + i;
      queue.submit(() -> ends.add(name));
    }
    for (int i = 0; i < 20; i++) {
      assertEquals("cell " + i, nextEnd());
    }
  }

  /** The failed cell waits for an hour, unless interrupted: so the order here is certain. */
  @Test
  void whatComesInWhileAFailedCellWaitsForItsBurstIsAborted() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, FOREVER);
    BlockingQueue<Thread> cellThread = new LinkedBlockingQueue<>();
    queue.submit(
        () -> {
          cellThread.add(Thread.currentThread());
          queue.abortBurst();
        });
    Thread waiting = cellThread.take();
    queue.submit(() -> report(queue));
    waiting.interrupt();
    assertEquals("aborted", nextEnd());
    queue.submit(() -> report(queue));
    assertEquals("run", nextEnd());
  }

  @Test
  void aCellThatWasNotAbortedRuns() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, 0);
    queue.abort();
    queue.submit(() -> report(queue));
    assertEquals("run", nextEnd());
  }

  @Test
  void anInterruptIsRepeatedUntilTheCellEnds() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, 0);
    CountDownLatch third = new CountDownLatch(3);
    CountDownLatch started = new CountDownLatch(1);
    queue.submit(
        () -> {
          started.countDown();
          waitFor(third);
          ends.add("heard");
        });
    started.await();
    queue.interrupt(third::countDown);
    assertEquals("heard", nextEnd());
  }

  @Test
  void anInterruptWhenNothingRunsCallsNobody() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, 0);
    AtomicInteger calls = new AtomicInteger();
    queue.submit(() -> ends.add("first"));
    thread.execute(() -> ends.add("idle"));
    assertEquals("first", nextEnd());
    assertEquals("idle", nextEnd());
    queue.interrupt(calls::incrementAndGet);
    queue.submit(() -> report(queue));
    assertEquals("run", nextEnd());
    assertEquals(0, calls.get());
  }

  /** The second cell lasts until the timer has had the time to call again. */
  @Test
  void anInterruptIsNotRepeatedInTheNextCell() throws InterruptedException {
    CellQueue queue = new CellQueue(thread, timer, 0);
    AtomicInteger calls = new AtomicInteger();
    CountDownLatch started = new CountDownLatch(1);
    CountDownLatch called = new CountDownLatch(1);
    CountDownLatch later = new CountDownLatch(1);
    queue.submit(
        () -> {
          started.countDown();
          waitFor(called);
        });
    started.await();
    queue.interrupt(
        () -> {
          calls.incrementAndGet();
          called.countDown();
        });
    queue.submit(
        () -> {
          waitFor(later);
          report(queue);
        });
    var unused = timer.schedule(later::countDown, 350, TimeUnit.MILLISECONDS);
    assertEquals("run", nextEnd());
    assertEquals(1, calls.get());
  }

  private void report(CellQueue queue) {
    ends.add(queue.isAborted() ? "aborted" : "run");
  }

  private String nextEnd() throws InterruptedException {
    String end = ends.poll(20, TimeUnit.SECONDS);
    assertTrue(end != null, "no cell ended");
    return end;
  }

  private static void waitFor(CountDownLatch latch) {
    try {
      latch.await(20, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
