package plainscale.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import plainscale.document.check.Finding;
import plainscale.document.check.Severity;
import plainscale.text.Printable;
import plainscale.wire.Json;

/** What was found in lessons, as lines that an editor can jump to, or as JSON. */
final class CheckReport {
  /** The most findings of one file that are printed; JSON has all of them. */
  static final int MOST = 100;

  private CheckReport() {}

  /** The lines of one file: each finding, and how many more there are. */
  static List<String> lines(CheckedFile checked) {
    List<String> lines = new ArrayList<>();
    checked.findings().stream().limit(MOST).forEach(finding -> lines.add(line(checked, finding)));
    int more = checked.findings().size() - MOST;
    if (more > 0) {
      lines.add(checked.file() + ": " + more + " more; mend these first.");
    }
    return lines.stream().map(line -> Printable.of(line).replace('\n', ' ')).toList();
  }

  private static String line(CheckedFile checked, Finding finding) {
    String repair = finding.repair().isEmpty() ? "" : " Try: " + finding.repair();
    return "%s: %s: %s%s [%s]"
        .formatted(
            place(checked, finding),
            finding.severity().word(),
            finding.sentence(),
            repair,
            finding.rule());
  }

  private static String place(CheckedFile checked, Finding finding) {
    if (checked.text()) {
      return finding.line() > 0 ? checked.file() + ":" + finding.line() : checked.file();
    }
    String cell = finding.cell().isEmpty() ? "" : ", cell " + finding.cell();
    String line = finding.line() > 0 ? ", line " + finding.line() : "";
    return checked.file() + cell + line;
  }

  /** One line about all of them, and about the files that could not be read. */
  static String summary(List<CheckedFile> checked, int unreadable) {
    String lessons = count(checked.size(), "lesson") + " checked: ";
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long found = count(checked, severity);
      if (found > 0) {
        counts.add(count(found, severity.word()));
      }
    }
    String found = counts.isEmpty() ? "nothing to mend" : String.join(", ", counts);
    String refused = unreadable == 0 ? "" : "; " + count(unreadable, "file") + " could not be read";
    if (checked.isEmpty() && unreadable > 0) {
      return "No lesson checked" + refused + ".";
    }
    return lessons + found + refused + ".";
  }

  /** How many findings of that severity there are. */
  static long count(List<CheckedFile> checked, Severity severity) {
    return checked.stream()
        .flatMap(file -> file.findings().stream())
        .filter(finding -> finding.severity() == severity)
        .count();
  }

  private static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** An array of objects, one for each finding; what is not known is null. */
  static String json(List<CheckedFile> checked) {
    ArrayNode array = Json.array();
    for (CheckedFile file : checked) {
      file.findings().forEach(finding -> array.add(json(file.file(), finding)));
    }
    return array.toPrettyString();
  }

  private static ObjectNode json(String file, Finding finding) {
    ObjectNode object = Json.object().put("file", file);
    object.put("line", finding.line() > 0 ? finding.line() : null);
    return object
        .put("cell", finding.cell().isEmpty() ? null : finding.cell())
        .put("rule", finding.rule())
        .put("severity", finding.severity().word())
        .put("sentence", finding.sentence())
        .put("repair", finding.repair().isEmpty() ? null : finding.repair());
  }
}
