/**
 * The library as a Java program uses it: quantities, relations, what-ifs, magnitudes, pictures,
 * class data and laws by methods that are imported statically, over the very sheet that the
 * notation runs on. All types are immutable. Entry: {@link plainscale.api.Plainscale}.
 */
@NullMarked
package plainscale.api;

import org.jspecify.annotations.NullMarked;
