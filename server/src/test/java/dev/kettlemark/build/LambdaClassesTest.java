package dev.kettlemark.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build makes of lambdas does what they did; all other tests run on classes that it has rewritten. */
class LambdaClassesTest {

  @TempDir
  private Path folder;

  private BuildStep step;

  @BeforeEach
  void copy() throws IOException {
    step = new BuildStep("LambdaClasses", ManyLambdas.class, folder);
    step.copy();
  }

  @Test
  void doWhatTheyDid() throws Exception {
    assertNotEquals(List.of(), lambdas(folder));
    step.run();
    assertEquals(List.of(), lambdas(folder));
    List<String> expected = new ManyLambdas().call();
    assertEquals(expected, step.outcome());
    assertTrue(expected.size() > 15, expected::toString);
  }

  /** All of a nest in one, but for interfaces of which none may be with another. */
  @Test
  void areFew() throws Exception {
    step.run();
    try (Stream<Path> files = Files.walk(folder)) {
      List<String> written = files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.contains("$$"))
          .sorted()
          .toList();
      assertEquals(List.of("ManyLambdas$$0.class", "ManyLambdas$$1.class"), written);
    }
  }

  @Test
  void areWrittenOnce() throws Exception {
    step.assertWritesOnce();
  }

  /** Otherwise the program would hold what nothing in its sources asks for. */
  @Test
  void takeAwayWhatIsLeftOfAnEarlierState() throws Exception {
    step.run();
    Map<Path, List<Byte>> first = step.bytes();
    Path left = folder.resolve("dev/kettlemark/build/ManyLambdas$$99.class");
    Files.copy(folder.resolve("dev/kettlemark/build/ManyLambdas$$0.class"), left);
    step.run();
    assertEquals(first, step.bytes());
  }

  /** Those that can be written to a stream are left to the machine; the program has none. */
  @Test
  void theProgramIsRewritten() throws IOException {
    assertEquals(List.of(), lambdas(BuildStep.builtProgram()));
  }

  private static List<String> lambdas(Path folder) throws IOException {
    return BuildStep.made(folder, (maker, called) -> maker.endsWith("LambdaMetafactory"));
  }
}
