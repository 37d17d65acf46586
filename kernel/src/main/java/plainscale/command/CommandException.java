package plainscale.command;

/** Why a command cannot do its work, in one sentence. */
final class CommandException extends Exception {
  private static final long serialVersionUID = 1L;

  CommandException(String sentence) {
    super(sentence);
  }
}
