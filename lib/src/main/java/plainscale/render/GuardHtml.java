package plainscale.render;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.stream.Stream;

/** What {@link GuardText} says, as HTML; what is not as it should be has a bar at its side. */
final class GuardHtml {
  private static final String QUIET = "expected";
  private static final String BAR =
      " style=\"border-left:4px solid;padding-left:0.6em;margin:0.4em 0\"";

  private GuardHtml() {}

  static String of(GuardText.Told told, Medium medium) {
    return "<div class=\"ps-guard ps-"
        + told.style()
        + "\""
        + (told.style().equals(QUIET) ? "" : BAR)
        + ">"
        + told.blocks().stream().map(block -> paragraph(block, medium)).collect(joining())
        + "</div>";
  }

  private static String paragraph(GuardText.Block block, Medium medium) {
    String lead = block.lead().isEmpty() ? "" : "<b>" + medium.words().apply(block.lead()) + "</b>";
    String first = medium.words().apply(block.first());
    String head = Stream.of(lead, first).filter(part -> !part.isEmpty()).collect(joining(" "));
    List<String> more = block.more().stream().map(medium.words()).toList();
    return "<p>" + Stream.concat(Stream.of(head), more.stream()).collect(joining("<br/>")) + "</p>";
  }
}
