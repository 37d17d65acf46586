/**
 * The sheet: what is defined, what depends on what, and the running of a cell to results. A sheet
 * is declarative: a name means its newest definition, and every value is computed from the givens
 * at the moment it is shown. Results are data; the renderers turn them into text, HTML and TeX.
 * Entry: {@link plainscale.sheet.Sheet}.
 */
@NullMarked
package plainscale.sheet;

import org.jspecify.annotations.NullMarked;
