/**
 * Force diagrams on squared paper: {@link plainscale.picture.force.ForceDiagram} draws what acts on
 * each body from a dot, to one scale that is chosen so that components come out in whole or half
 * boxes, with the same forces head to tail beside it. It knows components in newtons and words;
 * what is drawn is what it is given, balanced or not.
 */
@NullMarked
package plainscale.picture.force;

import org.jspecify.annotations.NullMarked;
