package plainscale.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import plainscale.language.LanguageInfo;
import plainscale.wire.Header;

/** The content of {@code kernel_info_reply}. */
final class KernelInfo {

  private static final String IMPLEMENTATION = "plainscale";

  private KernelInfo() {}

  static ObjectNode reply(LanguageInfo language) {
    ObjectNode reply =
        Contents.ok()
            .put("protocol_version", Header.PROTOCOL)
            .put("implementation", IMPLEMENTATION)
            .put("implementation_version", version())
            .put("banner", language.banner());
    reply
        .putObject("language_info")
        .put("name", language.name())
        .put("version", language.version())
        .put("mimetype", language.mimeType())
        .put("file_extension", language.fileExtension())
        .put("pygments_lexer", language.pygmentsLexer());
    ArrayNode links = reply.putArray("help_links");
    for (LanguageInfo.HelpLink link : language.helpLinks()) {
      links.addObject().put("text", link.text()).put("url", link.url());
    }
    reply.putArray("supported_features");
    return reply;
  }

  /** From the jar's manifest; classes that run from a build directory have none. */
  private static String version() {
    return Optional.ofNullable(KernelInfo.class.getPackage().getImplementationVersion())
        .orElse("0.0.0");
  }
}
