package dev.kettlemark.cli;

import java.io.Console;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What a command reads from and writes to.
 *
 * @param in the standard input
 * @param binaryOut the standard output for a protocol that counts bytes
 * @param out the standard output for text, always UTF-8
 * @param err the standard error for text, always UTF-8
 * @param interactive whether a person looks at the output
 * @param environment the process' variables
 * @param clock tells the day; nothing else in the program asks the machine for it. Made when it is first asked for, since
 *     the time zone of the machine takes long to find out
 */
record Terminal(
    InputStream in,
    OutputStream binaryOut,
    PrintWriter out,
    PrintWriter err,
    boolean interactive,
    Map<String, String> environment,
    Supplier<Clock> clock) {

  /** A table of a formula needs this much; wider text is harder to read. */
  static final int USUAL_WIDTH = 80;

  private static final int NARROWEST = 60;
  private static final int WIDEST = 200;

  Terminal {
    environment = Map.copyOf(environment);
  }

  /** The streams of this process. */
  static Terminal ofProcess() {
    return new Terminal(
        System.in,
        System.out,
        writer(System.out),
        writer(System.err),
        isInteractive(System.console()),
        System.getenv(),
        Clock::systemDefaultZone);
  }

  /** The day on which the command runs. */
  LocalDate today() {
    return LocalDate.now(clock.get());
  }

  /** The width in cells: that of {@code COLUMNS}, or the usual one. */
  int width() {
    String columns = environment.getOrDefault("COLUMNS", "");
    if (!columns.matches("[0-9]{1,4}")) {
      return USUAL_WIDTH;
    }
    return Math.min(WIDEST, Math.max(NARROWEST, Integer.parseInt(columns)));
  }

  /** Whether the user has asked all programs for plain text; see no-color.org. */
  boolean wantsNoColour() {
    return !environment.getOrDefault("NO_COLOR", "").isEmpty()
        || environment.getOrDefault("TERM", "").equals("dumb");
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), false);
  }

  /** From Java 22 on there can be a console without a terminal behind it, and a method that tells. */
  private static boolean isInteractive(@org.jspecify.annotations.Nullable Console console) {
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException before22) {
      return true;
    } catch (IllegalAccessException | InvocationTargetException unknown) {
      return false;
    }
  }
}
