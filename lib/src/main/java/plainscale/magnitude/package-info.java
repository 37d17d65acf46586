/**
 * Writing numbers: full digits with their significant figures and place-holder zeros told apart,
 * words, powers of ten, prefixes, ratios, lines of perspective and landmarks. Every number comes in
 * as a {@link java.math.BigDecimal} that is already rounded: its precision is its number of
 * significant figures. What comes out is data, so that text, HTML and pictures mark it each in its
 * own way. Entry: {@link plainscale.magnitude.Magnitude}.
 */
@NullMarked
package plainscale.magnitude;

import org.jspecify.annotations.NullMarked;
