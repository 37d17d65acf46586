package plainscale.language.java.process;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import plainscale.api.Displays;
import plainscale.language.MimeBundles;

/** Shows objects: results of the library as the notation shows them, all others in their words. */
final class Showing {
  private final Consumer<Event> events;

  Showing(Consumer<Event> events) {
    this.events = events;
  }

  void show(@Nullable Object object, boolean value) {
    events.accept(new Event.Shown(value, data(object)));
  }

  private static Map<String, String> data(@Nullable Object object) {
    Map<String, String> data = new LinkedHashMap<>();
    Displays.of(object)
        .ifPresentOrElse(
            results ->
                MimeBundles.of(results)
                    .data()
                    .forEach((type, text) -> data.put(type, text.toString())),
            () -> data.put("text/plain", ReadableText.of(object)));
    return data;
  }
}
