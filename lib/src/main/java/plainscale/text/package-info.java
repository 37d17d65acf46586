/**
 * Small helpers for words and texts that several packages need. Entry: {@link
 * plainscale.text.Near}.
 */
@NullMarked
package plainscale.text;

import org.jspecify.annotations.NullMarked;
