package plainscale.document;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A lesson to its text form. A text cell stands as it is if the reader, asked here, reads it so;
 * else in a fence. Equal lessons give equal texts.
 */
final class TextWriter {
  private final Lesson lesson;
  private final List<String> blocks = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /** Whether the last block is text that the next text would run into. */
  private boolean open;

  private TextWriter(Lesson lesson) {
    this.lesson = lesson;
  }

  static String write(Lesson lesson) throws LessonException {
    return new TextWriter(lesson).write();
  }

  private String write() throws LessonException {
    blocks.add(seen(TextHead.write(lesson), "its head"));
    for (LessonCell cell : lesson.cells()) {
      int from = blocks.size();
      cell(cell);
      for (String block : blocks.subList(from, blocks.size())) {
        seen(block, "the cell " + cell.id());
      }
    }
    return String.join("\n", blocks);
  }

  /** Half of a pair of code units is no character, and UTF-8 has no bytes for it. */
  private String seen(String block, String where) throws LessonException {
    if (block.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
      throw new LessonException(
          lesson.name()
              + " cannot be written as text: in "
              + where
              + " stands half of a character (a lone surrogate); take it out.");
    }
    return block;
  }

  private void cell(LessonCell cell) {
    String rest = CellLine.write(ownId(cell), cell.metadata());
    if (cell instanceof LessonCell.Prose prose) {
      text(prose, rest);
      attach(prose.attachments());
    } else if (cell instanceof LessonCell.Raw raw) {
      fence(FenceWord.RAW, rest, raw);
      attach(raw.attachments());
    } else {
      fence(FenceWord.CODE, rest, cell);
    }
  }

  /** The id, or nothing if a reader derives the same. */
  private String ownId(LessonCell cell) {
    String derived = CellIds.free(CellIds.derived(cell.source()), ids);
    ids.add(cell.id());
    return cell.id().equals(derived) ? "" : cell.id();
  }

  private void text(LessonCell.Prose cell, String rest) {
    String source = cell.source();
    if (!source.isEmpty() && !standsAlone(source)) {
      fence(FenceWord.TEXT, rest, cell);
      return;
    }
    boolean marked = open || !rest.isEmpty() || source.isEmpty();
    String marker = marked ? "<!-- cell" + rest + " -->\n" : "";
    blocks.add(marker + source + (source.isEmpty() ? "" : "\n"));
    open = true;
  }

  /** Whether a text before a fence is read as that text, whole, and as nothing else. */
  private static boolean standsAlone(String source) {
    List<String> lines =
        List.of((source + "\n\n" + Fences.write(FenceWord.CODE, "", "")).split("\n"));
    try {
      List<TextBlocks.Own> own = TextBlocks.of(lines, 0, "").own();
      return own.size() == 1
          && own.get(0).first() == lines.size() - 2
          && !TextLines.isBlank(lines.get(0))
          && !TextLines.isBlank(lines.get(lines.size() - 4));
    } catch (LessonException e) {
      return false; // it leaves something open
    }
  }

  private void fence(FenceWord word, String rest, LessonCell cell) {
    blocks.add(Fences.write(word, rest, cell.source()));
    open = false;
  }

  private void attach(ObjectNode attachments) {
    for (String fence : AttachmentText.write(attachments)) {
      blocks.add(fence);
      open = false;
    }
  }
}
