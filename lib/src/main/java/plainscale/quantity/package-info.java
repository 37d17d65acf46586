/**
 * A value with its unit, the figures that were written and its uncertainty by source. Entry:
 * Quantity.
 */
@NullMarked
package plainscale.quantity;

import org.jspecify.annotations.NullMarked;
