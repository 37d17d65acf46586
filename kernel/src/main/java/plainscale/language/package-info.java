/**
 * What the kernel asks of a cell language, and nothing of the wire: source text goes in, mime
 * bundles come out. The session calls one {@link plainscale.language.Language}; a second language
 * is a second implementation.
 */
@NullMarked
package plainscale.language;

import org.jspecify.annotations.NullMarked;
