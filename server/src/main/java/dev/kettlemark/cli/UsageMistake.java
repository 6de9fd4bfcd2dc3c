package dev.kettlemark.cli;

/** The command was asked for something it cannot do; the message is for the user, who can mend it. */
final class UsageMistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UsageMistake(String message) {
    super(message);
  }

  @Override
  public String getMessage() {
    return String.valueOf(super.getMessage());
  }
}
