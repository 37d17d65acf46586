package plainscale.data;

import java.util.List;

/** A column of words, such as the names of groups; an empty text where nothing stands. */
public record TextColumn(String name, String heading, List<String> texts) implements Column {

  /** Keeps its own copy. */
  public TextColumn {
    texts = List.copyOf(texts);
  }

  /** The text in that row, counted from 1. */
  public String text(int row) {
    return texts.get(row - 1);
  }

  @Override
  public int rows() {
    return texts.size();
  }

  @Override
  public boolean has(int row) {
    return !text(row).isEmpty();
  }

  @Override
  public <R> R accept(Visitor<R> visitor) {
    return visitor.texts(this);
  }
}
