/**
 * What runs in the process of its own that Java cells have: it takes compiled snippets from the
 * kernel, runs them, renders what they show, and passes on what they print and ask for. The kernel
 * and this process talk over the two standard pipes between them; whatever a cell does to its
 * process, the kernel lives.
 */
@NullMarked
package plainscale.language.java.process;

import org.jspecify.annotations.NullMarked;
