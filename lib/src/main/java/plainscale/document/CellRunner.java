package plainscale.document;

import plainscale.sheet.Run;

/** Runs the cells of one lesson, in order; a sheet does, and a program for cells in Java. */
@FunctionalInterface
public interface CellRunner {

  /** What a cell shows, and what it changes in earlier ones. */
  Run run(String cellId, String source);
}
