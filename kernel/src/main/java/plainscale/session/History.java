package plainscale.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import plainscale.wire.Json;

/** The cells that were run since the kernel started, the latest ones in memory. */
final class History {

  private static final int KEPT = 1_000;

  /** A history kept in memory knows one session. */
  private static final int SESSION = 1;

  /** One cell: its number, its source and the plain text of its result. */
  record Entry(int line, String input, Optional<String> output) {}

  private final Deque<Entry> entries = new ArrayDeque<>();

  synchronized void add(Entry entry) {
    entries.addLast(entry);
    if (entries.size() > KEPT) {
      entries.removeFirst();
    }
  }

  /** The content of a {@code history_reply}. */
  ObjectNode answer(ObjectNode asked) {
    boolean withOutput = asked.path("output").asBoolean(false);
    ObjectNode reply = Contents.ok();
    ArrayNode lines = reply.putArray("history");
    select(asked).forEach(entry -> lines.add(line(entry, withOutput)));
    return reply;
  }

  private List<Entry> select(ObjectNode asked) {
    int n = asked.path("n").asInt(KEPT);
    return switch (asked.path("hist_access_type").asText()) {
      case "range" -> range(asked);
      case "search" -> {
        String pattern = asked.path("pattern").asText("*");
        boolean unique = asked.path("unique").asBoolean(false);
        yield latest(n, unique, entry -> Glob.matches(pattern, entry.input()));
      }
      default -> latest(n, false, entry -> true);
    };
  }

  /** From {@code start} up to but without {@code stop}; session 0 is the current one. */
  private synchronized List<Entry> range(ObjectNode asked) {
    int session = asked.path("session").asInt(0);
    int start = asked.path("start").asInt(0);
    int stop = asked.path("stop").asInt(Integer.MAX_VALUE);
    return entries.stream()
        .filter(entry -> session == 0 || session == SESSION)
        .filter(entry -> entry.line() >= start && entry.line() < stop)
        .toList();
  }

  /** The last {@code n} that fit, oldest first; of equal inputs the latest if {@code unique}. */
  private synchronized List<Entry> latest(int n, boolean unique, Predicate<Entry> fits) {
    Set<String> seen = new HashSet<>();
    List<Entry> found = new ArrayList<>();
    entries
        .descendingIterator()
        .forEachRemaining(
            entry -> {
              if (found.size() < n && fits.test(entry) && (seen.add(entry.input()) || !unique)) {
                found.add(entry);
              }
            });
    Collections.reverse(found);
    return found;
  }

  private static ArrayNode line(Entry entry, boolean withOutput) {
    ArrayNode line = Json.array().add(SESSION).add(entry.line());
    if (withOutput) {
      line.addArray().add(entry.input()).add(entry.output().orElse(null));
    } else {
      line.add(entry.input());
    }
    return line;
  }
}
