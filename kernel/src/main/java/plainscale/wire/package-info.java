/**
 * Messages as the Jupyter protocol puts them on the wire: frames, signatures and JSON, and the
 * connection file that says where. No socket and no behaviour here. Entry: {@link
 * plainscale.wire.WireCodec}.
 */
@NullMarked
package plainscale.wire;

import org.jspecify.annotations.NullMarked;
