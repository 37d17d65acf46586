package plainscale.language;

import java.util.List;

/**
 * What {@code kernel_info_reply} says of the language; {@code pygmentsLexer} is the colouring of
 * exported notebooks.
 */
public record LanguageInfo(
    String name,
    String version,
    String mimeType,
    String fileExtension,
    String pygmentsLexer,
    String banner,
    List<HelpLink> helpLinks) {

  /** A line in the front end's help menu. */
  public record HelpLink(String text, String url) {}
}
