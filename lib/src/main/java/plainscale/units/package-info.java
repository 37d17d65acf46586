/**
 * Units of measurement: their symbols (a table, prefixes, UCUM codes), texts made of several
 * symbols, and the kinds of quantity that they measure. Conversion and dimensions are Indriya's;
 * this package adds the usual school symbols, the difference between an angle and a plain number,
 * and sentences. Entry: {@link plainscale.units.UnitParser}.
 */
@NullMarked
package plainscale.units;

import org.jspecify.annotations.NullMarked;
