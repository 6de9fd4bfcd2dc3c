package dev.kettlemark.cli;

import dev.kettlemark.Today;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Map;

/** What one run of the program printed and how it ended. */
record Run(int code, String out, String err) {

  /** The sample library, from the folder that the tests run in. */
  static final String SAMPLES = "../samples/gannet-slip";

  /** Runs the program as in a pipe, 80 cells wide. */
  static Run of(String... arguments) {
    return of(false, Map.of(), "", arguments);
  }

  static Run of(
      boolean interactive, Map<String, String> environment, String in, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal = new Terminal(
        new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
        new ByteArrayOutputStream(),
        new PrintWriter(out),
        new PrintWriter(err),
        interactive,
        environment,
        () -> Clock.fixed(Today.DAY.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC));
    int code = KettlemarkCommand.run(terminal, arguments);
    return new Run(code, plain(out), plain(err));
  }

  /** The output with a folder's path replaced, so that it reads the same on each machine. */
  String outWithout(Path folder) {
    return out.replace(folder.toString(), "FOLDER");
  }

  private static String plain(StringWriter writer) {
    return writer.toString().replace(System.lineSeparator(), "\n");
  }
}
