package dev.kettlemark.cli;

/** The terminal program. */
public final class Main {

  private Main() {}

  public static void main(String[] arguments) {
    // Threads of a language server that lost its editor must not keep the program alive.
    System.exit(KettlemarkCommand.run(Terminal.ofProcess(), arguments));
  }
}
