/**
 * What is done with expressions: evaluating them to quantities within a budget of steps and time.
 * Rearranging relations will live here too. Entry: {@link plainscale.algebra.Evaluator}.
 */
@NullMarked
package plainscale.algebra;

import org.jspecify.annotations.NullMarked;
