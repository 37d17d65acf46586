/**
 * Pictures as data: a {@link plainscale.picture.Scene} lists lines, areas and texts with what each
 * is for, a builder ({@link plainscale.picture.MagnitudeRuler}, {@link
 * plainscale.picture.NestedSquares}, {@link plainscale.picture.Dots}) makes one, and {@link
 * plainscale.picture.SvgWriter} turns it into SVG. Every scene has a text alternative, a ground of
 * its own and shades that survive a black-and-white printer.
 */
@NullMarked
package plainscale.picture;

import org.jspecify.annotations.NullMarked;
