/**
 * What physics knows, as tables with their sources: the constants of nature (CODATA 2022 and the
 * rounded values of school books). Entry: {@link plainscale.laws.Constants}.
 */
@NullMarked
package plainscale.laws;

import org.jspecify.annotations.NullMarked;
