/**
 * Results to plain text, HTML and TeX. A renderer reads results only, so that the terminal, the
 * notebook and the handout cannot disagree. HTML comes for two media: a cell's output, which must
 * survive a front end's sanitising (TeX in \(…\), pictures as data URIs), and a page (MathML,
 * inline SVG). Entry: {@link plainscale.render.Renderers}.
 */
@NullMarked
package plainscale.render;

import org.jspecify.annotations.NullMarked;
