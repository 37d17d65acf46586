/**
 * A class's results: a table read from comma-separated text with its units and uncertainties, the
 * statistics of a column, and lines and curves fitted to two columns. Everything is immutable;
 * numbers stay decimals as written until a formula needs doubles. Entries: {@link
 * plainscale.data.DataTable#read}, {@link plainscale.data.Statistics#of}, {@link
 * plainscale.data.Fits}.
 */
@NullMarked
package plainscale.data;

import org.jspecify.annotations.NullMarked;
