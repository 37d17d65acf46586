package plainscale.document;

import java.util.Locale;
import java.util.Optional;

/** What a cell is for in its lesson. */
public enum Role {
  /** Words for everybody. */
  TEXT,
  /** What was measured, with fallback values. */
  MEASUREMENT,
  /** Relations that hold. */
  RELATION,
  /** An unknown found from relations. */
  DERIVATION,
  /** Values that follow. */
  RESULT,
  /** Numbers set against each other. */
  CONTRAST,
  /** Force diagrams, fields, plots, rulers. */
  PICTURE,
  /** What students are asked. */
  QUESTION,
  /** The answer to a question: for the teacher. */
  ANSWER,
  /** What can hurt someone, and what to do about it. */
  CAUTION,
  /** A note to the teacher: what to prepare, what to watch for. */
  NOTE,
  /** Common slips and how to recognise them: for the teacher. */
  SLIPS;

  /** The role as it is written in a lesson. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The role of that word. */
  public static Optional<Role> named(String word) {
    return ByWord.find(values(), Role::word, word);
  }

  /** Whether only the teacher's edition has it. */
  public boolean forTheTeacher() {
    return this == ANSWER || this == NOTE || this == SLIPS;
  }
}
