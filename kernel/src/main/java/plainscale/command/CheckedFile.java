package plainscale.command;

import java.util.List;
import plainscale.document.check.Finding;

/**
 * A lesson that was checked.
 *
 * @param file its file, as the command line names it
 * @param text whether it is a text, in whose lines findings stand
 * @param findings what was found
 */
record CheckedFile(String file, boolean text, List<Finding> findings) {
  /** Keeps its own copy of the findings. */
  CheckedFile {
    findings = List.copyOf(findings);
  }
}
