package plainscale.wire;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;

/**
 * Where the kernel listens and the key that signs its messages, as the front end's connection file
 * says: {@code {"transport": "tcp", "ip": "127.0.0.1", "shell_port": 50001, …, "key": "…"}}. An
 * empty key turns signing off.
 */
public record ConnectionFile(
    Transport transport, String ip, Map<Channel, Integer> ports, String key) {

  /** How the sockets are reached: over the network, or through files named {@code ip-port}. */
  public enum Transport {
    TCP,
    IPC
  }

  private static final int LAST_PORT = 65_535;
  private static final String SCHEME = "hmac-sha256";

  public ConnectionFile {
    ports = Map.copyOf(ports);
  }

  /** Reads the file that the front end wrote. */
  public static ConnectionFile read(Path file) throws MalformedConnectionFile {
    byte[] text;
    try {
      text = Files.readAllBytes(file);
    } catch (IOException e) {
      throw new MalformedConnectionFile("connection file " + file + " cannot be read");
    }
    return parse(text);
  }

  /** Reads the text of a connection file. */
  public static ConnectionFile parse(byte[] text) throws MalformedConnectionFile {
    ObjectNode fields;
    try {
      fields = Json.read(text);
    } catch (IOException e) {
      throw new MalformedConnectionFile("connection file: not a JSON object");
    }
    String key = text(fields, "key", "");
    requireKnownScheme(text(fields, "signature_scheme", SCHEME), key);
    return new ConnectionFile(
        transport(text(fields, "transport", "tcp")), ip(fields), ports(fields), key);
  }

  /** The address to bind, as {@code tcp://127.0.0.1:50001} or {@code ipc://file-1}. */
  public String endpoint(Channel channel) {
    int port = ports.getOrDefault(channel, 0);
    if (transport == Transport.IPC) {
      return "ipc://" + ip + "-" + port;
    }
    return "tcp://" + (isIpv6() ? "[" + ip + "]" : ip) + ":" + port;
  }

  /** Whether the address is a literal of IP version 6, which sockets must be told. */
  public boolean isIpv6() {
    return transport == Transport.TCP && ip.indexOf(':') >= 0;
  }

  /** Without the key: it is a secret, and records end up in logs. */
  @Override
  public String toString() {
    return "ConnectionFile[" + endpoint(Channel.SHELL) + ", …]";
  }

  private static Transport transport(String name) throws MalformedConnectionFile {
    return switch (name) {
      case "tcp" -> Transport.TCP;
      case "ipc" -> Transport.IPC;
      default ->
          throw new MalformedConnectionFile(
              "connection file: transport must be tcp or ipc, not " + quoted(name));
    };
  }

  private static String ip(ObjectNode fields) throws MalformedConnectionFile {
    String ip = text(fields, "ip", "");
    if (ip.isBlank()) {
      throw new MalformedConnectionFile("connection file: ip is missing");
    }
    return ip;
  }

  private static Map<Channel, Integer> ports(ObjectNode fields) throws MalformedConnectionFile {
    Map<Channel, Integer> ports = new EnumMap<>(Channel.class);
    for (Channel channel : Channel.values()) {
      JsonNode port = fields.path(channel.portField());
      if (!port.isInt() || port.intValue() < 1 || port.intValue() > LAST_PORT) {
        throw new MalformedConnectionFile(
            "connection file: "
                + channel.portField()
                + " must be a whole number from 1 to "
                + LAST_PORT);
      }
      ports.put(channel, port.intValue());
    }
    return ports;
  }

  private static void requireKnownScheme(String scheme, String key) throws MalformedConnectionFile {
    if (!key.isEmpty() && !scheme.equals(SCHEME)) {
      throw new MalformedConnectionFile(
          "connection file: signature_scheme must be " + SCHEME + ", not " + quoted(scheme));
    }
  }

  private static String text(ObjectNode fields, String name, String otherwise)
      throws MalformedConnectionFile {
    JsonNode value = fields.path(name);
    if (value.isMissingNode()) {
      return otherwise;
    }
    if (!value.isTextual()) {
      throw new MalformedConnectionFile("connection file: " + name + " must be a text");
    }
    return value.textValue();
  }

  /** Foreign text inside a message that has to stay one short line. */
  private static String quoted(String text) {
    String line = text.replaceAll("\\p{Cntrl}", " ");
    return '"' + (line.length() > 40 ? line.substring(0, 40) + "…" : line) + '"';
  }
}
