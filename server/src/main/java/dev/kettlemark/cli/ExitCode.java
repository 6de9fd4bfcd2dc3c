package dev.kettlemark.cli;

/** What the program tells its caller by its exit code. */
final class ExitCode {

  static final int DONE = 0;

  /** The command ran, and its answer is no: an error was found, a file is not formatted. */
  static final int FOUND = 1;

  /** The command could not run as asked: an unknown option, a name nobody knows, an unreadable file. */
  static final int NOT_RUN = 2;

  /** A mistake of the program itself. */
  static final int BROKEN = 3;

  private ExitCode() {}
}
