package plainscale.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The text form of a lesson: a head, then CommonMark in which fences of ours are cells and all else
 * is text. What is malformed is refused with the line and the nearest repair.
 */
final class TextReader {
  private static final String MARK = "\uFEFF";

  /** A cell whose id is not settled. */
  private record Draft(
      FenceWord kind,
      Optional<String> id,
      String source,
      ObjectNode metadata,
      ObjectNode attachments,
      int first,
      int line) {}

  private final String file;
  private final List<String> lines;
  private final List<String> remarks = new ArrayList<>();
  private final List<Draft> drafts = new ArrayList<>();

  /** The marker whose text is being read. */
  private TextBlocks.@Nullable Marker marker;

  private TextReader(String file, List<String> lines) {
    this.file = file;
    this.lines = lines;
  }

  static Lesson read(String file, String text) throws LessonException {
    boolean marked = text.startsWith(MARK);
    String plain = TextLines.withLineFeeds(marked ? text.substring(1) : text);
    if (plain.indexOf('\0') >= 0 && TextHead.opening(TextLines.of(plain)) < 0) {
      throw new LessonException(file + " is not a text, so it is no lesson.");
    }
    TextReader reader = new TextReader(file, TextLines.of(plain));
    if (marked) {
      reader.remarks.add("Line 1: the byte-order mark was passed over; save without it.");
    }
    return reader.read();
  }

  private Lesson read() throws LessonException {
    TextHead head = TextHead.read(lines, file);
    remarks.addAll(head.remarks());
    NotebookReader.checkLanguage(file, head.metadata());
    TextBlocks blocks = TextBlocks.of(lines, head.end(), file);
    remarks.addAll(blocks.remarks());
    int from = head.end();
    for (TextBlocks.Own own : blocks.own()) {
      text(from, own.first());
      if (own instanceof TextBlocks.Marker next) {
        marker = next;
        emptyBeforeFence(next);
      } else if (own instanceof TextBlocks.Fence fence) {
        fence(fence);
      }
      from = own.last() + 1;
    }
    text(from, lines.size());
    if (drafts.stream().allMatch(draft -> draft.kind() == FenceWord.RAW)) {
      throw new LessonException(
          file + " has a head and no cells; write words below it, or a fence ```plainscale.");
    }
    return new Lesson(file, head.metadata(), cells(), remarks, null);
  }

  private void emptyBeforeFence(TextBlocks.Marker next) {
    int below = next.last() + 1;
    if (below < lines.size() && TextBlocks.isFence(lines.get(below))) {
      remarks.add(
          place(next.first())
              .remark(
                  "this marker begins a cell of text, and there is none; what a cell of code says of itself stands behind ```plainscale"));
    }
  }

  private TextPlace place(int index) {
    return new TextPlace(file, index + 1);
  }

  /** The text in these lines, without blank ones at its ends; a marker makes a cell of none. */
  private void text(int from, int to) throws LessonException {
    int first = from;
    int end = to;
    while (first < end && TextLines.isBlank(lines.get(first))) {
      first++;
    }
    while (end > first && TextLines.isBlank(lines.get(end - 1))) {
      end--;
    }
    TextBlocks.Marker begins = marker;
    marker = null;
    if (begins != null) {
      int line = first == end ? from : first;
      add(FenceWord.TEXT, begins.rest(), begins.first(), join(first, end), line);
    } else if (first < end) {
      add(FenceWord.TEXT, "", first, join(first, end), first);
    }
  }

  private String join(int from, int to) {
    return String.join("\n", lines.subList(from, to));
  }

  private void fence(TextBlocks.Fence fence) throws LessonException {
    int first = fence.first() + 1;
    if (fence.word() == FenceWord.ATTACHMENT) {
      attach(fence, lines.subList(first, fence.last()));
    } else {
      add(fence.word(), fence.rest(), fence.first(), join(first, fence.last()), first);
    }
  }

  private void attach(TextBlocks.Fence fence, List<String> data) throws LessonException {
    Draft last = drafts.isEmpty() ? null : drafts.get(drafts.size() - 1);
    if (last == null || last.kind() == FenceWord.CODE) {
      throw place(fence.first())
          .refused("a picture belongs to the text before it, and there is none; move it below one");
    }
    AttachmentText.read(fence.rest(), data, place(fence.first()), last.attachments());
  }

  private void add(FenceWord kind, String rest, int first, String source, int line)
      throws LessonException {
    CellLine said = CellLine.read(rest, place(first));
    remarks.addAll(said.remarks());
    ObjectNode attachments = LessonJson.MAPPER.createObjectNode();
    drafts.add(
        new Draft(kind, said.id(), source, said.metadata(), attachments, first + 1, line + 1));
  }

  /** Ids that are written come first; the others follow from the sources and avoid them. */
  private List<LessonCell> cells() {
    Set<String> written = new HashSet<>();
    drafts.forEach(draft -> draft.id().ifPresent(written::add));
    Set<String> avoided = new HashSet<>(written);
    Map<String, Integer> lineOf = new HashMap<>();
    List<LessonCell> cells = new ArrayList<>();
    for (Draft draft : drafts) {
      String id = draft.id().orElseGet(() -> CellIds.derived(draft.source()));
      Integer before = lineOf.get(id);
      if (draft.id().isEmpty() || before != null) {
        String free = CellIds.free(id, avoided);
        if (draft.id().isPresent()) {
          remarks.add(
              "Lines %d and %d: two cells are called %s; the second is now called %s."
                  .formatted(before, draft.first(), id, free));
        }
        id = free;
      }
      avoided.add(id);
      lineOf.put(id, draft.first());
      cells.add(cell(draft, id));
    }
    return cells;
  }

  private static LessonCell cell(Draft draft, String id) {
    return switch (draft.kind()) {
      case CODE -> new LessonCell.Code(id, draft.source(), draft.metadata(), draft.line());
      case RAW ->
          new LessonCell.Raw(
              id, draft.source(), draft.metadata(), draft.attachments(), draft.line());
      default ->
          new LessonCell.Prose(
              id, draft.source(), draft.metadata(), draft.attachments(), draft.line());
    };
  }
}
