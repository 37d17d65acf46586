package plainscale.language.java.process;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BooleanSupplier;

/**
 * What the kernel has still to be told, in order. Cells' threads only ever add to it, and one
 * thread of ours sends: a cell may be stopped at any point, but never in the middle of a frame.
 * Printed texts are joined, since front ends drop cells that send thousands of small ones; beyond a
 * limit for each cell the rest is left out, and that is said once.
 */
final class Outgoing {
  static final int MOST_CHARACTERS = 1_000_000;
  private static final String LEFT_OUT =
      "\n… the rest is left out: a cell may print a million characters.\n";

  private record Text(boolean error, StringBuilder characters) {
    Event.Printed event() {
      return new Event.Printed(error, characters.toString());
    }
  }

  private final Deque<Object> waiting = new ArrayDeque<>();
  private int printed;
  private boolean sending;

  /** A new cell may print as much again. */
  synchronized void begin() {
    printed = 0;
  }

  /** Adds to what is printed. */
  synchronized void print(boolean error, String text) {
    if (printed >= MOST_CHARACTERS) {
      return;
    }
    printed += text.length();
    String kept = printed >= MOST_CHARACTERS ? text + LEFT_OUT : text;
    if (waiting.peekLast() instanceof Text last && last.error() == error) {
      last.characters().append(kept);
    } else {
      waiting.add(new Text(error, new StringBuilder(kept)));
    }
    notifyAll();
  }

  /** Adds what is not printed. */
  synchronized void add(Event event) {
    waiting.add(event);
    notifyAll();
  }

  /** The next event, once there is one; the one before it counts as sent. */
  synchronized Event next() {
    sending = false;
    notifyAll();
    waitWhile(waiting::isEmpty);
    sending = true;
    Object first = waiting.remove();
    return first instanceof Text text ? text.event() : (Event) first;
  }

  /** Waits until all has been sent. */
  synchronized void drain() {
    waitWhile(() -> sending || !waiting.isEmpty());
  }

  private synchronized void waitWhile(BooleanSupplier reason) {
    while (reason.getAsBoolean()) {
      try {
        wait();
      } catch (InterruptedException e) {
        // A cell that interrupts every thread it finds loses nothing that it has shown.
      }
    }
  }
}
