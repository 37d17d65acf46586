/**
 * The lessons that ship with the program, as resources. Entry: {@link
 * plainscale.lessons.ShippedLessons}.
 */
@NullMarked
package plainscale.lessons;

import org.jspecify.annotations.NullMarked;
