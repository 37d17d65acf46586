package plainscale.language.java;

/** Where the code of cells runs, beyond what JShell asks of it. */
interface Cells {

  /** Another cell begins. */
  void begin();

  /**
   * Shows the value of the last snippet, as the cell's own value or beside it; returns what went
   * wrong in the value's own code, which is empty if nothing did.
   */
  String show(boolean value);

  /** The cell has ended: all that it has shown is to be passed on. */
  void end();

  /** Whether anything was stopped since the last question. */
  boolean wasStopped();
}
