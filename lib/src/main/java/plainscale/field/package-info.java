/**
 * Electric and gravitational fields on plain doubles in SI units: sources with closed forms, their
 * sum ({@link plainscale.field.Configuration}, the entry), and what is drawn from it as data: field
 * lines, equipotentials, a section along a line, a relief, the motion of a test charge. The
 * constant of the field is a number handed in (k_e for charges, −G for masses), so one code serves
 * both. Places are Commons Math's vectors, in metres; maps lie in the plane z = 0. Nothing here
 * knows notation, sheets or pictures. Every computation has a bound ({@link
 * plainscale.field.Effort}).
 */
@NullMarked
package plainscale.field;

import org.jspecify.annotations.NullMarked;
