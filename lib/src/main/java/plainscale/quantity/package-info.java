/**
 * A value with its kind, the figures that were written and its uncertainty by source; arithmetic
 * and elementary functions on such values, and rounding them for display. Everything is immutable.
 * Entry: {@link plainscale.quantity.Quantity}.
 */
@NullMarked
package plainscale.quantity;

import org.jspecify.annotations.NullMarked;
