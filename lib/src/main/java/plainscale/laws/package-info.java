/**
 * What physics knows, as tables with their sources: the constants of nature (CODATA 2022 and the
 * rounded values of school books), and the laws. Entries: {@link plainscale.laws.Constants}, {@link
 * plainscale.laws.Laws}.
 */
@NullMarked
package plainscale.laws;

import org.jspecify.annotations.NullMarked;
