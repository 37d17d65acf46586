/**
 * What physics knows, as tables with their sources: the constants of nature (CODATA 2022 and the
 * rounded values of school books), the laws, between what a quantity lies whatever was measured,
 * the usual slips in givens, and the hazards of lessons with their cautions. Entries: {@link
 * plainscale.laws.Constants}, {@link plainscale.laws.Laws}, {@link plainscale.laws.PhysicalBounds},
 * {@link plainscale.laws.Hazards}.
 */
@NullMarked
package plainscale.laws;

import org.jspecify.annotations.NullMarked;
