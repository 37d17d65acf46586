/** Editions of a lesson. */
@NullMarked
package plainscale.document.edition;

import org.jspecify.annotations.NullMarked;
