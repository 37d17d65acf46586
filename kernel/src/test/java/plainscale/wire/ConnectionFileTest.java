package plainscale.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConnectionFileTest {

  private static final String GOOD =
      """
      {"transport": "tcp", "ip": "127.0.0.1", "shell_port": 50001, "control_port": 50002,
       "stdin_port": 50003, "iopub_port": 50004, "hb_port": 50005, "key": "a-b-c",
       "signature_scheme": "hmac-sha256", "kernel_name": "plainscale", "jupyter_session": ""}
      """;

  @Test
  void everyChannelHasItsOwnEndpoint() throws Exception {
    ConnectionFile file = parse(GOOD);
    assertEquals("tcp://127.0.0.1:50001", file.endpoint(Channel.SHELL));
    assertEquals("tcp://127.0.0.1:50002", file.endpoint(Channel.CONTROL));
    assertEquals("tcp://127.0.0.1:50003", file.endpoint(Channel.STDIN));
    assertEquals("tcp://127.0.0.1:50004", file.endpoint(Channel.IOPUB));
    assertEquals("tcp://127.0.0.1:50005", file.endpoint(Channel.HEARTBEAT));
    assertEquals("a-b-c", file.key());
  }

  @Test
  void ipcEndpointsAreFileNamesWithNumbers() throws Exception {
    String text = GOOD.replace("tcp", "ipc").replace("127.0.0.1", "/run/k-ipc");
    ConnectionFile file = parse(text.replace("50001", "1"));
    assertEquals("ipc:///run/k-ipc-1", file.endpoint(Channel.SHELL));
  }

  @Test
  void anAddressOfVersionSixStandsInBrackets() throws Exception {
    ConnectionFile file = parse(GOOD.replace("127.0.0.1", "::1"));
    assertEquals("tcp://[::1]:50001", file.endpoint(Channel.SHELL));
    assertTrue(file.isIpv6());
  }

  @Test
  void transportSchemeAndKeyMayBeLeftOut() throws Exception {
    ConnectionFile file =
        parse(
            GOOD.replace("\"transport\": \"tcp\",", "")
                .replace("\"key\": \"a-b-c\",", "")
                .replace("\"signature_scheme\": \"hmac-sha256\",", ""));
    assertEquals(ConnectionFile.Transport.TCP, file.transport());
    assertEquals("", file.key());
  }

  @Test
  void theKeyIsNotPrinted() throws Exception {
    assertFalse(parse(GOOD).toString().contains("a-b-c"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "50001            | 0              | shell_port must be a whole number from 1 to 65535",
        "50002            | 70000          | control_port must be a whole number from 1 to 65535",
        "50003            | 1.5            | stdin_port must be a whole number from 1 to 65535",
        "50004            | \"50004\"      | iopub_port must be a whole number from 1 to 65535",
        "\"hb_port\"      | \"other_port\" | hb_port must be a whole number from 1 to 65535",
        "\"127.0.0.1\"    | \" \"          | ip is missing",
        "\"127.0.0.1\"    | 127            | ip must be a text",
        "\"a-b-c\"        | null           | key must be a text",
        "\"tcp\"          | \"carrier\"    | transport must be tcp or ipc, not \"carrier\"",
        "\"hmac-sha256\"  | \"hmac-md5\"   | signature_scheme must be hmac-sha256",
        "{                | [              | not a JSON object",
        "}                | ,              | not a JSON object",
      })
  void aFaultIsToldInOneLine(String good, String bad, String message) {
    assertTrue(GOOD.contains(good), good);
    MalformedConnectionFile e =
        assertThrows(MalformedConnectionFile.class, () -> parse(GOOD.replace(good, bad)));
    assertTrue(e.getMessage().startsWith("connection file: " + message), e.getMessage());
    assertEquals(1, e.getMessage().lines().count());
  }

  @Test
  void foreignTextInTheMessageStaysShortAndOnOneLine() {
    String transport = "\"" + "x\\n".repeat(1_000) + "\"";
    MalformedConnectionFile e =
        assertThrows(
            MalformedConnectionFile.class, () -> parse(GOOD.replace("\"tcp\"", transport)));
    assertEquals(1, e.getMessage().lines().count());
    assertTrue(e.getMessage().length() < 120, e.getMessage());
  }

  @Test
  void aFileIsReadFromDisk(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("k.json"), GOOD);
    assertEquals("tcp://127.0.0.1:50001", ConnectionFile.read(file).endpoint(Channel.SHELL));
  }

  @Test
  void aMissingFileIsToldInOneLine(@TempDir Path folder) {
    Path absent = folder.resolve("absent.json");
    MalformedConnectionFile e =
        assertThrows(MalformedConnectionFile.class, () -> ConnectionFile.read(absent));
    assertTrue(e.getMessage().endsWith("absent.json cannot be read"), e.getMessage());
  }

  private static ConnectionFile parse(String text) throws MalformedConnectionFile {
    return ConnectionFile.parse(text.getBytes(StandardCharsets.UTF_8));
  }
}
