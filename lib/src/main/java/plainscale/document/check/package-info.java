/**
 * Checking a lesson before a class sees it: the lesson is run, and each rule, one class, tells what
 * it finds with its place and the nearest repair. Rules know results, not how they are rendered.
 * Entry: {@link plainscale.document.check.LessonCheck#of}.
 */
@NullMarked
package plainscale.document.check;

import org.jspecify.annotations.NullMarked;
