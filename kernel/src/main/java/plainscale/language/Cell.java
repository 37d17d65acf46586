package plainscale.language;

import java.util.Optional;

/**
 * The source of one cell. {@code id} is the front end's cell id where it sends one, so that a cell
 * which is run again can be known as the same; {@code silent} asks for no output and no trace.
 */
public record Cell(String source, Optional<String> id, boolean silent) {}
