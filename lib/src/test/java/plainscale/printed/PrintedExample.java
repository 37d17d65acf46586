package plainscale.printed;

import java.util.List;

/**
 * An example of a book: the chapter of physics (the file it stands in), its id and title, where it
 * is printed, the cell that works it, and the printed answers.
 */
record PrintedExample(
    String chapter, String id, String title, String source, String cell, List<Answer> answers) {
  PrintedExample {
    answers = List.copyOf(answers);
  }

  @Override
  public String toString() {
    return chapter + "/" + id + ", " + title;
  }
}
