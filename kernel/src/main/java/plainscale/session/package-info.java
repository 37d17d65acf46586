/**
 * A running kernel: sockets, threads and the handling of requests, in front of one {@link
 * plainscale.language.Language}. One thread owns the sockets; cells run on a second, in order; what
 * a front end asks while a cell runs (completion, inspection) is answered on a third; interrupt and
 * shutdown on a fourth. Entry: {@link plainscale.session.KernelServer#run}.
 */
@NullMarked
package plainscale.session;

import org.jspecify.annotations.NullMarked;
