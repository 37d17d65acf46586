/**
 * Fields as scenes: {@link plainscale.picture.field.FieldMap} (field lines or arrows with
 * equipotentials), {@link plainscale.picture.field.PathMap} (the way of a body), {@link
 * plainscale.picture.field.ReliefMap} (the potential as height), {@link
 * plainscale.picture.field.SectionPlot} (along a line). What is drawn was computed before, by
 * {@code plainscale.field}; here it is scaled, labelled and said in words.
 */
@NullMarked
package plainscale.picture.field;

import org.jspecify.annotations.NullMarked;
