/**
 * Lessons as files: reading a notebook, running its cells in a sheet, and writing the handout, one
 * HTML file without a network. Entry: {@link plainscale.document.Lesson#read}.
 */
@NullMarked
package plainscale.document;

import org.jspecify.annotations.NullMarked;
