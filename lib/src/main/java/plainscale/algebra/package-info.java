/**
 * What is done with expressions: evaluating them to quantities within a budget of steps and time,
 * and deriving an unknown from relations, each step a record that is checked by numbers. Entries:
 * {@link plainscale.algebra.Evaluator}, {@link plainscale.algebra.Solver}.
 */
@NullMarked
package plainscale.algebra;

import org.jspecify.annotations.NullMarked;
