package plainscale.language.java;

/** Where the code of cells runs, beyond what JShell asks of it. */
interface Cells {

  /** Another cell begins. */
  void begin();

  /** Shows the value of the last snippet, as the cell's own value or beside it. */
  void show(boolean value);

  /** The cell has ended: all that it has shown is to be passed on. */
  void end();

  /** Whether anything was stopped since the last question. */
  boolean wasStopped();
}
