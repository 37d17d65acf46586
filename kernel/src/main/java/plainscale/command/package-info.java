/**
 * The command line: running lessons, writing handouts, installing the kernel into Jupyter, opening
 * JupyterLab, and the kernel itself as Jupyter starts it. One class per command. Entry: {@link
 * plainscale.command.Main}.
 */
@NullMarked
package plainscale.command;

import org.jspecify.annotations.NullMarked;
