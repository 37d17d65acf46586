/**
 * Facts live in tables (tab-separated resource files), not in branches of code; this package reads
 * them. Entry: {@link plainscale.table.Table#read}.
 */
@NullMarked
package plainscale.table;

import org.jspecify.annotations.NullMarked;
