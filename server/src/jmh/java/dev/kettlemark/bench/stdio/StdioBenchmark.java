package dev.kettlemark.bench.stdio;

import dev.kettlemark.bench.BenchTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a writer waits for, measured through the pipes of the packaged server and held against floors in the
 * same run.
 *
 * <p>Arguments: the packaged jar. The floors are {@link EchoServer} without and with reading the text, from the
 * same jar, so that they load the protocol's library under the same conditions.
 */
public final class StdioBenchmark {

  private static final int ROUNDS = 9;

  /** Turns that are not counted, and turns that are. */
  private static final int WARM = 5;

  private static final int TURNS = 10;

  /** Of one turn; a writer does not change the text at each. */
  private static final int KEYS = 20;

  private static final int BURSTS = 10;
  private static final int FORMULAS = 2_000;
  private static final int USERS = 400;

  /** A writer who opens a text reads it first; meanwhile the server rehearses. */
  private static final Duration READING = Duration.ofSeconds(4);

  private static final List<String> JVM = List.of(
      "-XX:+UseSerialGC",
      "-XX:TieredStopAtLevel=1",
      "-XX:CompileThresholdScaling=0.1",
      "-Xms24m",
      "-Xmx256m");

  private final String java =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private final Path jar;
  private final Path floors;
  private final Path folder;

  /** A file with nothing beside it. */
  private final Path alone;

  private StdioBenchmark(Path jar) throws IOException {
    this.jar = jar.toAbsolutePath();
    this.folder = Files.createTempDirectory("kettlemark-bench");
    this.floors = folder.resolve("floors.jar");
    this.alone = Files.createDirectory(folder.resolve("alone")).resolve("bench.kettle");
    packFloors();
  }

  public static void main(String[] arguments) throws IOException {
    StdioBenchmark benchmark = new StdioBenchmark(Path.of(arguments[0]));
    System.out.println("OpenJDK " + Runtime.version() + ", "
        + Runtime.getRuntime().availableProcessors() + " cores; milliseconds, median / 95th\n");
    try {
      benchmark.starts();
      benchmark.keys();
      benchmark.requests();
      benchmark.library();
    } finally {
      benchmark.tidyUp();
    }
  }

  private void tidyUp() throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      inside.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
    }
  }

  /** From the start of the process to what is found in a text of forty lines. */
  private void starts() throws IOException {
    String text = text(BenchTexts.formula());
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put("echo, archive", archived("echo", floor("echo")));
    commands.put("kettlemark, archive", archived("server", server()));
    commands.put("kettlemark", server());
    Map<String, List<Double>> taken = new LinkedHashMap<>();
    Map<String, Long> memory = new LinkedHashMap<>();
    for (int round = 0; round < ROUNDS; round++) {
      for (Map.Entry<String, List<String>> command : commands.entrySet()) {
        try (Peer peer = Peer.start(command.getValue(), alone)) {
          taken.computeIfAbsent(command.getKey(), key -> new ArrayList<>()).add(peer.open(text));
          memory.put(command.getKey(), peer.megabytes(false));
        }
      }
    }
    System.out.println("| Start to first findings | | of the floor | MB |\n|---|--:|--:|--:|");
    double floor = median(taken.get("echo, archive"));
    List<Double> once = once(text);
    System.out.printf(
        Locale.ROOT,
        "| all rules once, archive | %s | %.2f | |%n",
        shown(once),
        median(once) / floor);
    taken.forEach((name, times) -> System.out.printf(
        Locale.ROOT,
        "| %s | %s | %.2f | %d |%n",
        name,
        shown(times),
        median(times) / floor,
        memory.get(name)));
  }

  /** A process that does nothing but check the text. */
  private List<Double> once(String text) throws IOException {
    Path formula = Files.writeString(folder.resolve("once.kettle"), text);
    Path archive = folder.resolve("once.jsa");
    List<String> command = command(
        List.of("-cp", jar + ":" + floors, OnceThrough.class.getName(), formula.toString()));
    run(command, "-XX:ArchiveClassesAtExit=" + archive);
    List<Double> taken = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      taken.add(run(command, "-XX:SharedArchiveFile=" + archive));
    }
    return taken;
  }

  /** How many milliseconds a command takes from start to end. */
  private static double run(List<String> command, String option) throws IOException {
    List<String> line = with(option, command);
    long start = System.nanoTime();
    Process process = new ProcessBuilder(line)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
    try {
      if (process.waitFor() != 0) {
        throw new IOException("failed: " + line);
      }
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
    return (System.nanoTime() - start) / 1e6;
  }

  /** From a key to what is found then, and from forty-one keys at once. */
  private void keys() throws IOException {
    System.out.println(
        "\n| Key to findings | Lines | One key | Of the floor | 41 keys at once | Most MB |\n"
            + "|---|--:|--:|--:|--:|--:|");
    List<Double> floors = keys("echo", floor("echo"), List.of());
    keys("reads the text", floor("parse"), floors);
    keys("kettlemark", server(), floors);
  }

  /**
   * Types in three texts in turns, since the machine's speed changes from minute to minute.
   *
   * @param floors what a key takes in each of them at least; empty where that is not known yet
   */
  private List<Double> keys(String name, List<String> command, List<Double> floors)
      throws IOException {
    List<Writer> writers = new ArrayList<>();
    try {
      for (int lines : new int[] {100, 1_000, 10_000}) {
        writers.add(
            new Writer(lines, Peer.start(command, alone), BenchTexts.formulas(lines / 40 + 1)));
        read();
      }
      for (int turn = 0; turn < WARM + TURNS; turn++) {
        for (Writer writer : writers) {
          writer.type(turn >= WARM);
        }
      }
      for (int burst = 0; burst < BURSTS; burst++) {
        for (Writer writer : writers) {
          writer.burst(burst);
        }
      }
      for (int i = 0; i < writers.size(); i++) {
        System.out.println("| " + name + " | "
            + writers
                .get(i)
                .row(floors.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(floors.get(i))));
      }
      return writers.stream().map(writer -> median(writer.keys)).toList();
    } finally {
      for (Writer writer : writers) {
        writer.peer.close();
      }
    }
  }

  /** Somebody who types in the middle of a text. */
  private static final class Writer {

    private final int lines;
    private final Peer peer;
    private final Position place;
    private final List<Double> keys = new ArrayList<>();
    private final List<Double> bursts = new ArrayList<>();

    Writer(int lines, Peer peer, Document document) throws IOException {
      this.lines = lines;
      this.peer = peer;
      this.place =
          document.text().source().position(BenchTexts.cursor(document), PositionEncoding.UTF16);
      peer.open(text(document));
    }

    /** Types the keys of one turn. */
    void type(boolean counts) throws IOException {
      for (int key = 0; key < KEYS; key++) {
        double taken = peer.key(place.line(), place.column(), Integer.toString(key % 10));
        if (counts) {
          keys.add(taken);
        }
      }
    }

    void burst(int first) throws IOException {
      bursts.add(peer.burst(
          place.line(),
          place.column(),
          IntStream.range(0, 41)
              .mapToObj(key -> Integer.toString((key + first) % 10))
              .toList()));
    }

    String row(OptionalDouble floor) throws IOException {
      return "%d | %s | %s | %s | %d |"
          .formatted(
              lines,
              shown(keys),
              floor.isEmpty() ? "" : "%.1f".formatted(median(keys) / floor.getAsDouble()),
              shown(bursts),
              peer.megabytes(true));
    }
  }

  /** What an editor asks for in a text of ten thousand lines. */
  private void requests() throws IOException {
    Document document = BenchTexts.formulas(250);
    Position place =
        document.text().source().position(BenchTexts.cursor(document), PositionEncoding.UTF16);
    String at = ", \"position\": {\"line\": %d, \"character\": %d}"
        .formatted(place.line(), place.column() + 24);
    Map<String, String> asked = new LinkedHashMap<>();
    asked.put("completion", at);
    asked.put("hover", at);
    asked.put("definition", at);
    asked.put("references", at + ", \"context\": {\"includeDeclaration\": true}");
    asked.put("documentSymbol", "");
    asked.put("semanticTokens/full", "");
    asked.put("formatting", ", \"options\": {\"tabSize\": 2, \"insertSpaces\": true}");
    System.out.println("\n| Asked in 10000 lines | |\n|---|--:|");
    try (Peer peer = Peer.start(server(), alone)) {
      peer.open(text(document));
      read();
      for (Map.Entry<String, String> request : asked.entrySet()) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 80; i++) {
          double taken = peer.request("textDocument/" + request.getKey(), request.getValue());
          if (i >= 40) {
            times.add(taken);
          }
        }
        System.out.printf("| %s | %s |%n", request.getKey(), shown(times));
      }
    }
  }

  private static void read() {
    try {
      Thread.sleep(READING.toMillis());
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** A folder of two thousand formulas, four hundred of which weigh in one ingredient of the user's. */
  private void library() throws IOException {
    Path library = Files.createDirectory(folder.resolve("library"));
    // One caution is left out, so that there is something to tell of each.
    String formula = text(BenchTexts.formula()).replace("  caution   choking\n", "");
    for (int i = 0; i < FORMULAS; i++) {
      String numbered = formula
          .replace("bench-nougat", "bench-nougat-" + i)
          .replace("BN-001", "BN-%05d".formatted(i));
      Files.writeString(
          library.resolve("f%d.kettle".formatted(i)),
          i < USERS ? numbered.replace("white-sugar", "quay-sugar") : numbered);
    }
    String pantry =
        "ingredient quay-sugar \"Sugar of the quay\"\n  contains  99.8 % sucrose, 0.2 % water\n";
    Files.writeString(library.resolve("own.kettle"), pantry);
    System.out.println("\n| A folder of " + FORMULAS + " formulas | |\n|---|--:|");
    try (Peer peer = Peer.inFolder(server(), library, "own.kettle")) {
      System.out.printf(Locale.ROOT, "| the open file told | %.0f |%n", peer.open(pantry));
      long before = System.nanoTime();
      double hover =
          peer.request("textDocument/hover", ", \"position\": {\"line\": 0, \"character\": 14}");
      System.out.printf(Locale.ROOT, "| a hover then | %.0f |%n", hover);
      peer.awaitTold(FORMULAS + 1);
      System.out.printf(
          Locale.ROOT, "| all told, after that | %.0f |%n", (System.nanoTime() - before) / 1e6);
      List<Double> own = new ArrayList<>();
      List<Double> all = new ArrayList<>();
      for (int edit = 0; edit < 8; edit++) {
        peer.forgetTold();
        long start = System.nanoTime();
        // Its name is changed and changed back, so all who weigh it in have something else to tell.
        own.add(peer.key(0, pantry.indexOf("y-sugar"), edit % 2 == 0 ? "x" : "y"));
        peer.awaitTold(USERS + 1);
        all.add((System.nanoTime() - start) / 1e6);
      }
      System.out.printf("| a key in the ingredient of %d | %s |%n", USERS, shown(own));
      System.out.printf("| all of these told | %s |%n", shown(all));
      System.out.printf("| MB | %d |%n", peer.megabytes(false));
    }
  }

  private List<String> server() {
    return command(List.of("-jar", jar.toString(), "serve"));
  }

  private List<String> floor(String argument) {
    return command(List.of("-cp", jar + ":" + floors, EchoServer.class.getName(), argument));
  }

  private List<String> command(List<String> program) {
    return Stream.of(List.of(java), JVM, program).flatMap(List::stream).toList();
  }

  /** The same command with an archive of its classes, made in one session. */
  private List<String> archived(String name, List<String> command) throws IOException {
    Path archive = folder.resolve(name + ".jsa");
    List<String> training = with("-XX:ArchiveClassesAtExit=" + archive, command);
    try (Peer peer = Peer.start(training, alone)) {
      peer.open(text(BenchTexts.formula()));
    }
    return with("-XX:SharedArchiveFile=" + archive, command);
  }

  /** A command with a further option of Java. */
  private static List<String> with(String option, List<String> command) {
    List<String> line = new ArrayList<>(command);
    line.add(1, option);
    return line;
  }

  private void packFloors() throws IOException {
    String folderName = EchoServer.class.getPackageName().replace('.', '/') + "/";
    Path classes = Path.of(
        EchoServer.class.getProtectionDomain().getCodeSource().getLocation().getPath());
    try (OutputStream file = Files.newOutputStream(floors);
        JarOutputStream packed = new JarOutputStream(file);
        Stream<Path> found = Files.list(classes.resolve(folderName))) {
      for (Path one : found.sorted().toList()) {
        packed.putNextEntry(new JarEntry(folderName + one.getFileName()));
        Files.copy(one, packed);
        packed.closeEntry();
      }
    }
  }

  private static String text(Document document) {
    return document.text().source().text();
  }

  private static double median(List<Double> times) {
    return percentile(times, 0.5);
  }

  private static String shown(List<Double> times) {
    return "%.1f / %.1f".formatted(median(times), percentile(times, 0.95));
  }

  private static double percentile(List<Double> times, double share) {
    double[] sorted = times.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
