/**
 * Examples whose answers are printed in textbooks and guides, each worked in the notation and
 * judged by the printed figures.
 */
@NullMarked
package plainscale.printed;

import org.jspecify.annotations.NullMarked;
