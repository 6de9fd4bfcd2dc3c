package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import picocli.CommandLine;

/** However many processors there are, a check says the same in the same order. */
class CheckOnManyCoresTest {

  private static final Cores ONE = new Cores(1);
  private static final Cores FOUR = new Cores(4);

  /** More than are checked at a time. */
  private static final int MORE_THAN_AT_A_TIME = 520;

  @TempDir
  private Path folder;

  private static Run check(Cores cores, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal = new Terminal(
        new ByteArrayInputStream(new byte[0]),
        new ByteArrayOutputStream(),
        new PrintWriter(out),
        new PrintWriter(err),
        false,
        Map.of(),
        () -> Clock.fixed(Today.DAY.atStartOfDay(ZoneOffset.UTC).toInstant(), ZoneOffset.UTC));
    int code = new CommandLine(new CheckCommand(terminal, Paint::plain, cores))
        .setCaseInsensitiveEnumValuesAllowed(true)
        .execute(arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private Run check(Cores cores, CheckCommand.Format format) {
    return check(cores, "--format", format.name(), folder.toString());
  }

  @ParameterizedTest
  @EnumSource(CheckCommand.Format.class)
  void saysTheSameOfAllSamples(CheckCommand.Format format) {
    String[] arguments = {"--format", format.name(), "../samples"};
    Run alone = check(ONE, arguments);
    assertTrue(alone.out().contains("unused-amount"), "the mistakes are found");
    assertEquals(alone, check(FOUR, arguments));
  }

  @ParameterizedTest
  @EnumSource(CheckCommand.Format.class)
  void saysTheSameOfAGeneratedLibrary(CheckCommand.Format format) throws IOException {
    generate(200);
    unreadable("formula-7a.kettle");
    unreadable("deeper/z.kettle");
    Run alone = check(ONE, format);
    assertEquals(ExitCode.NOT_RUN, alone.code());
    assertEquals(2, alone.err().lines().count(), alone.err());
    assertEquals(alone, check(FOUR, format));
    assertEquals(alone, check(new Cores(7), format));
  }

  @Test
  void saysTheSameOfMoreThanIsCheckedAtATime() {
    generate(MORE_THAN_AT_A_TIME);
    Run alone = check(ONE, CheckCommand.Format.LINE);
    assertEquals(ExitCode.FOUND, alone.code());
    assertEquals(alone, check(FOUR, CheckCommand.Format.LINE));
    List<String> files =
        alone.out().lines().map(line -> line.replaceFirst(":.*", "")).distinct().toList();
    assertEquals(files.stream().sorted().toList(), files);
  }

  /** Beside so much text there is no room for the trees of the formulas. */
  @Test
  void saysTheSameOfALibraryThatIsReadTwice() {
    generate(60);
    Run small = check(FOUR, CheckCommand.Format.LINE);
    String line = "# " + "x".repeat(9_997) + "\n";
    for (int i = 0; i * 500_000L <= TreeRoom.USUAL; i++) {
      Bench.write(folder, "comment-" + i + ".kettle", line.repeat(50));
    }
    assertEquals(small, check(ONE, CheckCommand.Format.LINE));
    assertEquals(small, check(FOUR, CheckCommand.Format.LINE));
  }

  @Test
  void mendsTheSameInTheSameOrder() {
    generate(200);
    Run dry = check(ONE, "--fix", "--dry-run", folder.toString());
    assertEquals(ExitCode.FOUND, dry.code());
    assertEquals(dry, check(FOUR, "--fix", "--dry-run", folder.toString()));
    Run alone = check(ONE, "--fix", folder.toString());
    assertTrue(alone.out().contains("40 files changed."), alone.out());
    List<String> mended = texts();
    generate(200);
    assertEquals(alone, check(FOUR, "--fix", folder.toString()));
    assertEquals(mended, texts());
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void worksOnAsManyThingsAtATimeAsThereAreProcessors() {
    CyclicBarrier allAtWork = new CyclicBarrier(FOUR.count());
    Set<Thread> workers = Collections.synchronizedSet(new HashSet<>());
    List<Integer> things = IntStream.range(0, 400).boxed().toList();
    List<Integer> doubled = FOUR.map(things, thing -> {
      if (workers.add(Thread.currentThread())) {
        await(allAtWork);
      }
      return 2 * thing;
    });
    assertEquals(things.stream().map(thing -> 2 * thing).toList(), doubled);
    assertEquals(FOUR.count(), workers.size());
  }

  @Test
  void tellsTheFirstFaultAsItIs() {
    List<Integer> things = IntStream.range(0, 50).boxed().toList();
    for (Cores cores : List.of(ONE, FOUR)) {
      ArithmeticException fault = assertThrows(
          ArithmeticException.class,
          () -> cores.map(things, thing -> {
            if (thing % 20 == 19) {
              throw new ArithmeticException("fault of " + thing);
            }
            return thing;
          }));
      assertEquals("fault of 19", fault.getMessage());
      assertThrows(
          StackOverflowError.class,
          () -> cores.map(things, thing -> {
            throw new StackOverflowError();
          }));
    }
  }

  @Test
  void needsAProcessor() {
    assertThrows(IllegalArgumentException.class, () -> new Cores(0));
  }

  /** A stock that the others take from, variants of it, and formulas with a mistake here and there. */
  private void generate(int count) {
    String stock = Bench.CLEAN.replace("plain-syrup", "stock").replace("Plain", "Stock");
    Bench.write(folder, "formula-stock.kettle", stock);
    for (int i = 1; i < count; i++) {
      String own = Bench.CLEAN.replace("plain-syrup", "syrup-" + i).replace("Plain", "Plain " + i);
      String text = switch (i % 5) {
        case 0 -> own.replace("40.00 %", "39.00 %");
        case 1 -> own.replace("60.00 % ", ".60 %   ");
        case 2 -> own.replace("white-sugar", "stock");
        case 3 -> "variant syrup-" + i + " \"Less water\" of stock\n  batch     " + i + " kg\n";
        default -> own.replace("boil      white-sugar, water", "boil      white-sugar");
      };
      Bench.write(folder, "formula-" + i + ".kettle", text);
    }
  }

  private void unreadable(String name) throws IOException {
    Path file = Bench.write(folder, name, "");
    Files.write(file, "# br\u00fbl\u00e9".getBytes(StandardCharsets.ISO_8859_1));
  }

  private List<String> texts() {
    List<String> texts = new ArrayList<>();
    KettleFiles.below(folder, problem -> {}).forEach(file -> texts.add(Bench.read(file)));
    return texts;
  }

  private static void await(CyclicBarrier barrier) {
    try {
      barrier.await();
    } catch (InterruptedException | BrokenBarrierException broken) {
      throw new IllegalStateException(broken);
    }
  }
}
