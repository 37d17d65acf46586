package plainscale.document.check;

/**
 * Something that a rule has found in a lesson.
 *
 * @param rule the name of the rule
 * @param severity how much it matters
 * @param cell the id of the cell; empty for the lesson as a whole
 * @param line in a text file the line of the file, in a notebook the line of the cell, from 1; 0
 *     where no line is meant
 * @param sentence what is wrong
 * @param repair the nearest repair; may be empty
 */
public record Finding(
    String rule, Severity severity, String cell, int line, String sentence, String repair) {}
