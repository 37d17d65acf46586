package plainscale.session;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import plainscale.language.Language;

/**
 * The language, once it is there. It is made while the sockets open; whoever needs it before waits.
 */
final class LanguageHolder {

  private final CompletableFuture<Language> language = new CompletableFuture<>();

  /** Makes the language; false, with one line in the log, if that fails. */
  boolean create(Supplier<? extends Language> factory) {
    try {
      return language.complete(factory.get());
    } catch (RuntimeException | Error e) {
      language.completeExceptionally(e);
      Log.line("the cell language does not start: " + e);
      return false;
    }
  }

  /** Not woken by {@link Thread#interrupt()}, which belongs to the cell. */
  Language get() {
    return language.join();
  }

  /** Does something with the language unless it is not there yet. */
  void ifReady(Consumer<Language> action) {
    if (language.isDone() && !language.isCompletedExceptionally()) {
      action.accept(language.join());
    }
  }

  /** Lets the language close, but does not wait for it beyond the time given. */
  void close(long millis) {
    CompletableFuture<Void> closing = CompletableFuture.runAsync(() -> ifReady(Language::close));
    var done = closing.completeOnTimeout(null, millis, TimeUnit.MILLISECONDS);
    done.exceptionally(e -> null).join();
  }
}
