package plainscale.command;

import picocli.CommandLine.IVersionProvider;

/** The version of the jar. */
final class Version implements IVersionProvider {
  /** The version, or "development" outside the jar. */
  static String text() {
    String version = Main.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"Plainscale " + text(), "Java " + System.getProperty("java.version")};
  }
}
