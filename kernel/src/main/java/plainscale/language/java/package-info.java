/**
 * Java as a cell language. JShell compiles in the kernel and runs what it has compiled in a process
 * of its own, so that a cell which ends its process, fills its memory or never comes back costs its
 * values at most, never the kernel. Nothing here is loaded by a kernel of another language.
 */
@NullMarked
package plainscale.language.java;

import org.jspecify.annotations.NullMarked;
