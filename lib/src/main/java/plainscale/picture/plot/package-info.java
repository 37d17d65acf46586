/**
 * Plots of numbers: {@link plainscale.picture.plot.Plot} draws points with error bars, curves,
 * bands and bars over axes whose titles are a quantity over its unit and whose ticks go by 1, 2 and
 * 5; several plots may share one axis. Series differ by mark and dash, not by colour alone.
 */
@NullMarked
package plainscale.picture.plot;

import org.jspecify.annotations.NullMarked;
