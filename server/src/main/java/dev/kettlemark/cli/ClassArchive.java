package dev.kettlemark.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A file of loaded classes with which the Java machine starts the server in about half the time.
 *
 * <p>The machine itself makes it at the end of a session, and itself leaves it aside where it does not fit:
 * another Java, another build of the program, another collector of garbage.
 *
 * @param java the program that runs Java
 * @param version the feature version of that Java, such as 17
 * @param program the jar of Kettlemark
 */
record ClassArchive(Path java, int version, Path program) {

  /** From here on the archive holds linked classes and profiles as well (JEP 514, JEP 515). */
  private static final int WITH_PROFILES = 25;

  /**
   * What editors start the server with; an archive fits one collector only.
   *
   * <p>The first compiler alone is as fast at what a key asks for, starts sooner and takes less memory. It compiles
   * after a tenth of the usual calls, since a key runs each rule once.
   */
  static final List<String> MACHINE = List.of(
      "-XX:+UseSerialGC",
      "-XX:TieredStopAtLevel=1",
      "-XX:CompileThresholdScaling=0.1",
      "-Xms24m",
      "-Xmx256m");

  private static final long PATIENCE_SECONDS = 120;

  /** A short session that touches what every session does, its leave apart. */
  private static final List<String> SESSION = List.of("""
      {"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,\
      "capabilities":{}}}""", """
      {"jsonrpc":"2.0","method":"initialized","params":{}}""", """
      {"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":\
      "untitled:first","languageId":"kettlemark","version":1,"text":"formula drop\\n  percent of \
      charge\\n  batch 1 kg\\n  caution hot-sugar\\nstage pan\\n  60 % white-sugar\\n  20 % \
      glucose-syrup-42\\n  q.s. water\\n  cook to 145 °C\\nstage body\\n  all of pan\\n  1 % \
      citric-acid\\n  mix\\n  deposit body above 120 °C\\n"}}}""", """
      {"jsonrpc":"2.0","id":2,"method":"textDocument/hover","params":{"textDocument":{"uri":\
      "untitled:first"},"position":{"line":5,"character":10}}}""", """
      {"jsonrpc":"2.0","id":3,"method":"textDocument/completion","params":{"textDocument":{"uri":\
      "untitled:first"},"position":{"line":8,"character":3}}}""", """
      {"jsonrpc":"2.0","id":4,"method":"textDocument/diagnostic","params":{"textDocument":{"uri":\
      "untitled:first"}}}""");

  private static final String LAST_ANSWER = "\"id\":4";

  private static final List<String> LEAVE = List.of("""
      {"jsonrpc":"2.0","id":5,"method":"shutdown"}""", """
      {"jsonrpc":"2.0","method":"exit"}""");

  /**
   * The arguments by which a Java machine starts with an archive.
   *
   * <p>Where it does not fit, the machine would say so on the standard output, in the middle of a protocol
   * that counts bytes; so it is told to keep its remarks to itself.
   */
  List<String> arguments(Path archive) {
    return List.of("-Xlog:disable", using(archive));
  }

  private String using(Path archive) {
    return (version >= WITH_PROFILES ? "-XX:AOTCache=" : "-XX:SharedArchiveFile=") + archive;
  }

  /**
   * Makes the archive in one step: a reader finds all of it or none.
   *
   * @throws IOException where the machine makes none, or the file cannot be written
   */
  void make(Path archive) throws IOException, InterruptedException {
    Path folder = archive.toAbsolutePath().normalize().getParent();
    if (folder == null) {
      throw new IOException(archive + " is no file");
    }
    Path drafts = Files.createTempDirectory(Files.createDirectories(folder), "archive");
    Path draft = drafts.resolve("draft");
    try {
      train(drafts, draft);
      if (!Files.isRegularFile(draft) || !starts(drafts, draft)) {
        throw new IOException("this Java makes no archive of classes");
      }
      Files.move(draft, archive, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      try (Stream<Path> left = Files.list(drafts)) {
        for (Path one : left.toList()) {
          Files.delete(one);
        }
      }
      Files.delete(drafts);
    }
  }

  private void train(Path drafts, Path draft) throws IOException, InterruptedException {
    String option = version >= WITH_PROFILES ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=";
    Process process =
        started(drafts, List.of(option + draft.toAbsolutePath()), "serve").start();
    // A session that hangs is ended, and with it the reading below.
    CompletableFuture<Process> limit = process
        .onExit()
        .orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS)
        .whenComplete((ended, late) -> {
          if (late != null) {
            process.destroyForcibly();
          }
        });
    try (OutputStream out = process.getOutputStream();
        InputStream in = process.getInputStream()) {
      send(out, SESSION);
      StringBuilder said = new StringBuilder();
      byte[] some = new byte[8192];
      for (int read = in.read(some); read >= 0; read = in.read(some)) {
        said.append(new String(some, 0, read, StandardCharsets.ISO_8859_1));
        if (said.indexOf(LAST_ANSWER) >= 0) {
          send(out, LEAVE);
          said.setLength(0);
        }
      }
      process.waitFor();
    } finally {
      limit.cancel(false);
      process.destroyForcibly();
    }
  }

  /** Whether the program starts from an archive and nothing else; half an archive would end Java. */
  private boolean starts(Path drafts, Path archive) throws IOException, InterruptedException {
    String only = version >= WITH_PROFILES ? "-XX:AOTMode=on" : "-Xshare:on";
    Process process = started(drafts, List.of(only, using(archive.toAbsolutePath())), "--version")
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      return false;
    }
    return process.exitValue() == 0;
  }

  /** Java with this program. */
  private ProcessBuilder started(Path drafts, List<String> options, String command) {
    List<String> line = new ArrayList<>(List.of(java.toString()));
    line.addAll(MACHINE);
    line.addAll(options);
    line.addAll(List.of("-jar", program.toAbsolutePath().toString(), command));
    return new ProcessBuilder(line)
        // A machine that breaks off leaves its report where it works.
        .directory(drafts.toFile())
        .redirectError(ProcessBuilder.Redirect.DISCARD);
  }

  private static void send(OutputStream out, List<String> messages) throws IOException {
    for (String message : messages) {
      byte[] body = message.getBytes(StandardCharsets.UTF_8);
      out.write(
          ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
      out.write(body);
    }
    out.flush();
  }
}
