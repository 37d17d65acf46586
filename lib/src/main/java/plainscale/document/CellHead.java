package plainscale.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a cell says of itself under the key {@code plainscale} of its metadata, as far as it can be
 * read: what is missing or of a wrong type is as if it were not there, and {@link Schema} tells.
 *
 * @param role what it is for, if it says so
 * @param minutes how long a class takes for it, if it says so
 * @param lines lines to write on under a question, if it says so
 * @param blanks what editions leave to be filled in, where it says so
 */
public record CellHead(
    Optional<Role> role, OptionalInt minutes, OptionalInt lines, Map<Edition, Blank> blanks) {
  /** Keeps its own copy of the blanks. */
  public CellHead {
    blanks = Map.copyOf(blanks);
  }

  /** The head in the metadata of a cell. */
  public static CellHead of(JsonNode metadata) {
    JsonNode head = metadata.path(LessonHead.KEY);
    return new CellHead(
        Role.named(head.path("role").asText("")),
        LessonHead.whole(head.path("minutes")),
        LessonHead.whole(head.path("lines")),
        blanks(head.path("blank")));
  }

  private static Map<Edition, Blank> blanks(JsonNode blank) {
    Map<Edition, Blank> blanks = new EnumMap<>(Edition.class);
    blank
        .properties()
        .forEach(
            entry ->
                Edition.named(entry.getKey())
                    .ifPresent(
                        edition ->
                            Blank.named(entry.getValue().asText(""))
                                .ifPresent(how -> blanks.put(edition, how))));
    return blanks;
  }

  /** What that edition leaves to be filled in: as the cell says, else by its role. */
  public Blank blank(Edition edition) {
    Blank said = blanks.get(edition);
    if (said != null) {
      return said;
    }
    if (role.map(Role::forTheTeacher).orElse(false) && edition != Edition.TEACHER) {
      return Blank.CELL;
    }
    return edition == Edition.STUDENT ? Blank.VALUES : Blank.NOTHING;
  }
}
