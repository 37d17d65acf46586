package plainscale.wire;

/** The five sockets between a front end and a kernel, with the name of each one's port. */
public enum Channel {
  SHELL("shell_port"),
  CONTROL("control_port"),
  STDIN("stdin_port"),
  IOPUB("iopub_port"),
  HEARTBEAT("hb_port");

  private final String portField;

  Channel(String portField) {
    this.portField = portField;
  }

  /** The field of the connection file that holds this channel's port. */
  public String portField() {
    return portField;
  }
}
