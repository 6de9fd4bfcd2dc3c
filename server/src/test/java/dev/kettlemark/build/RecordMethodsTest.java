package dev.kettlemark.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the build writes out for records compares and counts as the Java machine does; all other tests run on classes
 * that it has rewritten.
 */
class RecordMethodsTest {

  @TempDir
  private Path folder;

  private BuildStep step;

  @BeforeEach
  void copy() throws IOException {
    step = new BuildStep("RecordMethods", ManyRecords.class, folder);
    step.copy();
  }

  @Test
  void doWhatTheMachineDoes() throws Exception {
    assertNotEquals(List.of(), machineMade(folder));
    step.run();
    assertEquals(List.of(), machineMade(folder));
    List<String> expected = new ManyRecords().call();
    assertEquals(expected, step.outcome());
    assertTrue(expected.size() > 15, expected::toString);
  }

  @Test
  void areWrittenOnce() throws Exception {
    step.assertWritesOnce();
  }

  @Test
  void theProgramIsRewritten() throws IOException {
    assertEquals(List.of(), machineMade(BuildStep.builtProgram()));
  }

  private static List<String> machineMade(Path folder) throws IOException {
    return BuildStep.made(
        folder, (maker, called) -> maker.endsWith("ObjectMethods") && !called.equals("toString"));
  }
}
