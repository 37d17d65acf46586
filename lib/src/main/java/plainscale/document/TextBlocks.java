package plainscale.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Block;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import plainscale.text.Near;

/**
 * The blocks of a text that begin cells: fences of ours and markers, at the top level of the
 * CommonMark document and at the beginning of their line. What stands in lists, quotations,
 * comments or other fences is prose.
 */
final class TextBlocks {
  /** A block of ours. */
  sealed interface Own {
    /** The index of its first line. */
    int first();

    /** The index of its last line. */
    int last();
  }

  /**
   * A fence.
   *
   * @param word its first word
   * @param rest what follows that word
   */
  record Fence(int first, int last, FenceWord word, String rest) implements Own {}

  /**
   * A comment that begins a text cell.
   *
   * @param rest what follows the word {@code cell}
   */
  record Marker(int first, int last, String rest) implements Own {}

  private static final Parser PARSER =
      Parser.builder()
          .includeSourceSpans(IncludeSourceSpans.BLOCKS)
          .inlineParserFactory(context -> (lines, node) -> {}) // only blocks are asked for
          .build();
  private static final Pattern FENCE =
      Pattern.compile("[ ]{0,3}(`{3,}|~{3,})[ \t]*([^ \t\r]*)[ \t]*(.*?)[ \t\r]*");
  private static final Pattern MARKER =
      Pattern.compile("<!--[ \t]*cell(?:[ \t]+(.*?))?[ \t]*-->[ \t\r]*");

  /** A comment that says what only the marker of a cell says. */
  private static final Pattern LIKE_MARKER =
      Pattern.compile(
          "[ ]{0,3}<!--[ \t]*(?:cell\\b|.*\\b(?:role|minutes|lines|blank|alternative):).*");

  private final List<String> lines;
  private final int from;
  private final String file;
  private final List<Own> own = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();

  private TextBlocks(List<String> lines, int from, String file) {
    this.lines = lines;
    this.from = from;
    this.file = file;
  }

  /** The blocks of ours in the lines from that index on, in order. */
  static TextBlocks of(List<String> lines, int from, String file) throws LessonException {
    TextBlocks blocks = new TextBlocks(lines, from, file);
    blocks.scan();
    return blocks;
  }

  /** Whether a line opens a fence of ours. */
  static boolean isFence(String line) {
    Matcher fence = FENCE.matcher(line);
    return fence.matches() && FenceWord.named(fence.group(2)).isPresent();
  }

  List<Own> own() {
    return own;
  }

  /** What looks like a cell and is none. */
  List<String> remarks() {
    return remarks;
  }

  /** A carriage return within a line is content to us and a line end to CommonMark. */
  private void scan() throws LessonException {
    String body = String.join("\n", lines.subList(from, lines.size())).replace('\r', ' ');
    for (Node node = PARSER.parse(body).getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof FencedCodeBlock fence) {
        fence(fence);
      } else if (node instanceof HtmlBlock html) {
        html(html);
      }
    }
  }

  private int first(Block block) {
    return from + block.getSourceSpans().get(0).getLineIndex();
  }

  private int last(Block block) {
    List<SourceSpan> spans = block.getSourceSpans();
    return from + spans.get(spans.size() - 1).getLineIndex();
  }

  private TextPlace place(int index) {
    return new TextPlace(file, index + 1);
  }

  private void fence(FencedCodeBlock block) throws LessonException {
    int first = first(block);
    if (block.getClosingFenceLength() == null) {
      String fence = block.getFenceCharacter().repeat(block.getOpeningFenceLength());
      throw place(first)
          .refused("the fence that opens here is not closed; put a line " + fence + " after it");
    }
    Matcher opening = FENCE.matcher(lines.get(first));
    if (!opening.matches()) {
      return; // cannot be, since CommonMark found the fence
    }
    refuseFenceWithin(first, last(block), opening.group(1));
    String word = opening.group(2);
    Optional<FenceWord> known = FenceWord.named(word);
    if (known.isEmpty()) {
      Near.to(word, FenceWord.words(), 1).forEach(near -> misspelled(first, word, near));
    } else if (block.getFenceIndent() > 0) {
      remarks.add(
          place(first)
              .remark(
                  "this fence is indented, so it is prose; move it to the beginning of the line if it is a cell"));
    } else {
      own.add(new Fence(first, last(block), known.get(), opening.group(3)));
    }
  }

  /** A cell within a fence that is no shorter: the fence was not closed before it. */
  private void refuseFenceWithin(int first, int last, String fence) throws LessonException {
    for (int i = first + 1; i < last; i++) {
      if (lines.get(i).startsWith(fence) && isFence(lines.get(i))) {
        throw place(first)
            .refused(
                "the fence that opens here is not closed before line %d, in which a cell begins; put a line %s between"
                    .formatted(i + 1, fence));
      }
    }
  }

  private void misspelled(int first, String word, String near) {
    remarks.add(
        place(first)
            .remark("the word “" + word + "” makes this fence prose; did you mean " + near + "?"));
  }

  private void html(HtmlBlock block) throws LessonException {
    int first = first(block);
    Optional<OpenHtml> open = OpenHtml.of(lines.subList(first, last(block) + 1));
    if (open.isPresent()) {
      throw place(first)
          .refused(
              "%s opens here and is not closed; put %s after it"
                  .formatted(open.get().opening(), open.get().closing()));
    }
    Matcher marker = MARKER.matcher(lines.get(first));
    if (marker.matches()) {
      String rest = marker.group(1);
      own.add(new Marker(first, first, rest == null ? "" : rest));
    } else if (LIKE_MARKER.matcher(lines.get(first)).matches()) {
      remarks.add(
          place(first)
              .remark(
                  "this comment begins no cell; a marker stands alone in its line, as <!-- cell role: note -->"));
    }
  }
}
