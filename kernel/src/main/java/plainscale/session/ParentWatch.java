package plainscale.session;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Ends the kernel when the server that started it is gone, so that a crashed server leaves no
 * kernels behind. The server puts its process id into {@code JPY_PARENT_PID}.
 */
final class ParentWatch {

  static final String VARIABLE = "JPY_PARENT_PID";

  private static final long EVERY_SECONDS = 1;

  /** In a container the server may be process 1, which looks like an orphan's parent. */
  private static final long INIT = 1;

  private ParentWatch() {}

  /** The process to watch; none where the variable is absent, 1, or not visible from here. */
  static Optional<ProcessHandle> parent(@Nullable String variable, String operatingSystem) {
    // On Windows the variable holds a handle, not a process id.
    if (variable == null || operatingSystem.toLowerCase(Locale.ROOT).startsWith("windows")) {
      return Optional.empty();
    }
    try {
      long pid = Long.parseLong(variable.strip());
      return pid <= INIT ? Optional.empty() : ProcessHandle.of(pid);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** Calls {@code gone} once the process has ended, within about a second. */
  static void start(ProcessHandle parent, ScheduledExecutorService timer, Runnable gone) {
    var unused =
        timer.scheduleWithFixedDelay(
            () -> {
              if (!parent.isAlive()) {
                gone.run();
              }
            },
            EVERY_SECONDS,
            EVERY_SECONDS,
            TimeUnit.SECONDS);
  }
}
