package plainscale.session;

import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Cells that wait for their turn on the one thread that runs them. Each gets a ticket, one higher
 * than the last; to abort all that wait is to remember the highest ticket given out.
 */
final class CellQueue {

  private static final int NONE = 0;

  /** A cell that has only just begun may not hear the first call. */
  private static final int INSISTENCE = 50;

  private static final long INSIST_EVERY_MILLIS = 100;

  /**
   * How long after a failed cell the rest of its burst may still come in to be aborted with it.
   * "Run all" sends the requests within a few milliseconds. The failed cell's own reply waits for
   * as long, so a front end that sends the next cell after this reply never loses it.
   */
  static final long BURST_MILLIS = 30;

  private final Executor thread;
  private final ScheduledExecutorService timer;
  private final long burstMillis;
  private final AtomicLong tickets = new AtomicLong(NONE);
  private volatile long abortedThrough = NONE;

  /** Changed under this object's lock, so that an interrupt cannot hit the next cell. */
  private volatile long running = NONE;

  CellQueue(Executor thread, ScheduledExecutorService timer, long burstMillis) {
    this.thread = thread;
    this.timer = timer;
    this.burstMillis = burstMillis;
  }

  /** Appends a cell; called by the thread that owns the sockets, so it never waits. */
  void submit(Runnable cell) {
    long ticket = tickets.incrementAndGet();
    thread.execute(
        () -> {
          turnTo(ticket);
          try {
            cell.run();
          } finally {
            turnTo(NONE);
          }
        });
  }

  /** Aborts all cells that were submitted up to now. */
  void abort() {
    abortedThrough = tickets.get();
  }

  /** Aborts also those that are still coming in; called by a cell that failed. */
  void abortBurst() {
    try {
      Thread.sleep(burstMillis);
    } catch (InterruptedException e) {
      // An interrupt aborts what waits in any case; there is nothing more to wait for.
    }
    abort();
  }

  /** Asked by the cell whose turn it is. */
  boolean isAborted() {
    return running <= abortedThrough;
  }

  /** Aborts what waits, and calls {@code interrupt} until the running cell ends. */
  void interrupt(Runnable interrupt) {
    abort();
    insist(running, interrupt, INSISTENCE);
  }

  private synchronized void insist(long ticket, Runnable interrupt, int times) {
    if (ticket == NONE || ticket != running || times == 0) {
      return;
    }
    interrupt.run();
    var unused =
        timer.schedule(
            () -> insist(ticket, interrupt, times - 1), INSIST_EVERY_MILLIS, TimeUnit.MILLISECONDS);
  }

  private synchronized void turnTo(long ticket) {
    running = ticket;
  }
}
