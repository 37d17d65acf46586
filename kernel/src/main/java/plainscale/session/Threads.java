package plainscale.session;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.RejectedExecutionHandler;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** The kernel's threads. All are daemons: a cell that does not stop cannot keep the process. */
final class Threads {

  /** What a cell that was left running still wants done while the kernel closes. */
  private static final RejectedExecutionHandler DROP = new ThreadPoolExecutor.DiscardPolicy();

  private Threads() {}

  /** One thread that does what it is given in order. */
  static ExecutorService single(String name) {
    return new ThreadPoolExecutor(
        1, 1, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), named(name), DROP);
  }

  static ScheduledThreadPoolExecutor timer() {
    return new ScheduledThreadPoolExecutor(1, named("timer"), DROP);
  }

  private static ThreadFactory named(String name) {
    return task -> {
      Thread thread = new Thread(task, "plainscale-" + name);
      thread.setDaemon(true);
      return thread;
    };
  }
}
