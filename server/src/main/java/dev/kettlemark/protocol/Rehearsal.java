package dev.kettlemark.protocol;

import dev.kettlemark.protocol.wire.Loopback;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import java.io.FilterInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Does what an editor is going to ask for, before it asks and while nothing else is to be done.
 *
 * <p>The Java machine takes many times as long for whatever it has not done often. So it looks at a small formula
 * while client and server greet each other, and once both have been silent for a moment, a client inside the process
 * edits that formula and asks about it, in a server of its own that sees nothing else. It holds its breath whenever
 * the real client speaks.
 */
public final class Rehearsal {

  /** A writer who has just opened a text reads it first. */
  private static final Duration SILENCE = Duration.ofMillis(300);

  private static final Duration PATIENCE = Duration.ofMinutes(1);

  /** Enough for the Java machine to compile what a key needs; some three seconds of a processor together. */
  private static final int ROUNDS = 80;

  /** The only text that its server ever sees. */
  private static final String TEXT = "\"textDocument\":{\"uri\":\"untitled:first-look\"";

  /** What is edited, and the word that is asked about. */
  private static final String EDITED = "48.00 %  white-sugar";

  private static final List<String> ASKED_AT_PLACE =
      List.of("completion", "hover", "definition", "documentHighlight");

  private static final List<String> ASKED_OF_TEXT =
      List.of("semanticTokens/full", "documentSymbol", "codeLens", "foldingRange", "documentLink");

  private final String version;
  private volatile long lastByte = System.nanoTime();

  private Rehearsal(String version) {
    this.version = version;
  }

  static Rehearsal of(String version) {
    return new Rehearsal(version);
  }

  /** Begins on a thread of its own. */
  public static Rehearsal begin(String version) {
    Rehearsal rehearsal = of(version);
    Thread thread = new Thread(rehearsal::run, "kettlemark-rehearsal");
    thread.setDaemon(true);
    thread.start();
    return rehearsal;
  }

  /** The stream from the client, listened to. */
  public InputStream heard(InputStream in) {
    return new FilterInputStream(in) {
      @Override
      public int read(byte[] bytes, int offset, int length) throws IOException {
        int read = super.read(bytes, offset, length);
        lastByte = System.nanoTime();
        return read;
      }
    };
  }

  /** The stream to the client, listened to. */
  public OutputStream heard(OutputStream out) {
    return new FilterOutputStream(out) {
      @Override
      public void write(byte[] bytes, int offset, int length) throws IOException {
        lastByte = System.nanoTime();
        out.write(bytes, offset, length);
      }
    };
  }

  private void run() {
    FirstLook.take();
    try {
      awaitRest();
      play(ROUNDS);
    } catch (IOException broken) {
      // Not asked for before: the rehearsal must not wait for the log of the machine.
      Logger.getLogger(Rehearsal.class.getName())
          .log(Level.WARNING, "bug: the rehearsal broke off", broken);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private void awaitSilence() throws InterruptedException {
    for (long waited = 0; waited < PATIENCE.toMillis(); waited += SILENCE.toMillis() / 3) {
      if (System.nanoTime() - lastByte > SILENCE.toNanos()) {
        return;
      }
      TimeUnit.NANOSECONDS.sleep(SILENCE.toNanos() / 3);
    }
  }

  /** Silence alone may be that of a server which reads a large library. */
  private void awaitRest() throws InterruptedException {
    Duration before;
    do {
      awaitSilence();
      before = worked();
      TimeUnit.NANOSECONDS.sleep(SILENCE.toNanos());
    } while (worked().minus(before).compareTo(SILENCE.dividedBy(4)) > 0);
  }

  /** The processor time of the process so far; none where the system does not tell. */
  private static Duration worked() {
    return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
  }

  /** Plays the client; each round is a key and what an editor asks after it. */
  void play(int rounds) throws IOException, InterruptedException {
    try (Loopback client = Loopback.of((in, out) ->
        KettlemarkServer.serve(version, in, out, OptionalLong.empty(), () -> LocalDate.MIN))) {
      client.ask("initialize", "{\"processId\":null,\"rootUri\":null,\"capabilities\":{}}");
      client.tell("initialized", "{}");
      client.tell("textDocument/didOpen", """
          {%s,"languageId":"kettlemark","version":0,"text":%s}}""".formatted(TEXT, Loopback.quoted(FirstLook.FORMULA)));
      client.await("textDocument/publishDiagnostics");
      Source source = Source.of(FirstLook.FORMULA);
      Position edited = source.position(FirstLook.FORMULA.indexOf(EDITED), PositionEncoding.UTF16);
      for (int round = 1; round <= rounds; round++) {
        awaitSilence();
        play(client, edited, round);
      }
      client.ask("shutdown", "null");
      client.tell("exit", "{}");
    }
  }

  private static void play(Loopback client, Position edited, int round) throws IOException {
    int digit = EDITED.indexOf('.') + 1;
    client.tell("textDocument/didChange", """
        {%s,"version":%d},"contentChanges":[{"range":{"start":%s,"end":%s},"text":"%d"}]}""".formatted(
            TEXT, round, place(edited, digit), place(edited, digit + 1), round % 10));
    client.await("textDocument/publishDiagnostics");
    String at = "{%s},\"position\":%s,\"context\":{\"triggerKind\":1}}"
        .formatted(TEXT, place(edited, EDITED.indexOf("sugar")));
    for (String asked : ASKED_AT_PLACE) {
      client.ask("textDocument/" + asked, at);
    }
    for (String asked : ASKED_OF_TEXT) {
      client.ask("textDocument/" + asked, "{" + TEXT + "}}");
    }
  }

  private static String place(Position edited, int behind) {
    return "{\"line\":%d,\"character\":%d}".formatted(edited.line(), edited.column() + behind);
  }
}
