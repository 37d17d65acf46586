/**
 * The cell notation: source text to syntax tree, and the printer back to text. Nothing is evaluated
 * here; what needs to be known of the sheet (which names are quantities) comes in through {@link
 * plainscale.notation.Names}. Entry: {@link plainscale.notation.Notation#parse}.
 */
@NullMarked
package plainscale.notation;

import org.jspecify.annotations.NullMarked;
