package plainscale.session;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plainscale.wire.Channel;
import plainscale.wire.ConnectionFile;
import plainscale.wire.Json;
import plainscale.wire.MalformedConnectionFile;

/** The kernel with the fake language as a process of its own. */
final class FakeKernel {

  private FakeKernel() {}

  public static void main(String[] args) throws MalformedConnectionFile {
    System.exit(KernelServer.run(ConnectionFile.read(Path.of(args[0])), FakeLanguage::new));
  }

  /** A Java process with the class path of the tests. */
  static ProcessBuilder javaProcess(String mainClass, String... args) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-XX:+UseSerialGC");
    command.add(mainClass);
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("CLASSPATH", System.getProperty("java.class.path"));
    return builder;
  }

  /** A connection file with ports that are free at this moment. */
  static ConnectionFile connection(Path folder) throws IOException, MalformedConnectionFile {
    return ConnectionFile.read(connectionFile(folder));
  }

  static Path connectionFile(Path folder) throws IOException {
    var fields = Json.object().put("transport", "tcp").put("ip", "127.0.0.1").put("key", "k-e-y");
    freePorts().forEach((channel, port) -> fields.put(channel.portField(), port));
    return Files.write(folder.resolve("connection.json"), Json.write(fields));
  }

  private static Map<Channel, Integer> freePorts() throws IOException {
    Map<Channel, Integer> ports = new EnumMap<>(Channel.class);
    List<ServerSocket> held = new ArrayList<>();
    for (Channel channel : Channel.values()) {
      ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
      held.add(socket);
      ports.put(channel, socket.getLocalPort());
    }
    for (ServerSocket socket : held) {
      socket.close();
    }
    return ports;
  }
}
