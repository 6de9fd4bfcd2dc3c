package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FormatCommandTest {

  private static final String UNTIDY = Bench.CLEAN.replace("  batch     1000 g", "batch 1000 g");

  @TempDir
  private Path folder;

  @Test
  void replacesTheFileAndLeavesNothingElse() throws IOException {
    Path file = Bench.write(folder, "a.kettle", UNTIDY);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Run run = Run.of("format", folder.toString());
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().endsWith("1 file: 1 changed\n"), run.out());
    assertEquals(Bench.CLEAN, Bench.read(file));
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(file), files.toList());
    }
  }

  @Test
  void writesThroughALink() throws IOException {
    Path file = Bench.write(folder, "kept/a.txt", UNTIDY);
    Path link = Files.createSymbolicLink(folder.resolve("a.kettle"), file);
    Run.of("format", link.toString());
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(Bench.CLEAN, Bench.read(file));
  }

  @Test
  void checkNamesAndChangesNothing() {
    Path file = Bench.write(folder, "a.kettle", UNTIDY);
    Run run = Run.of("format", "--check", folder.toString());
    assertEquals(ExitCode.FOUND, run.code());
    assertEquals("FOLDER/a.kettle\n1 file: 1 would change\n", run.outWithout(folder));
    assertEquals(UNTIDY, Bench.read(file));
  }

  @Test
  void checkIsContentWithATidyFile() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Run run = Run.of("format", "--check", folder.toString());
    assertEquals(ExitCode.DONE, run.code());
    assertEquals("1 file: nothing to change\n", run.out());
  }

  @Test
  void diffShowsWhatWouldChange() {
    Bench.write(folder, "a.kettle", UNTIDY);
    Run run = Run.of("format", "--diff", folder.toString());
    assertEquals(ExitCode.FOUND, run.code());
    assertEquals("""
        --- FOLDER/a.kettle
        +++ FOLDER/a.kettle
        @@ -1,6 +1,6 @@
         formula plain-syrup "Plain syrup"
           percent   of charge
        -batch 1000 g
        +  batch     1000 g
           caution   hot-sugar
        \s
         stage pan
        1 file: 1 would change
        """, run.outWithout(folder));
  }

  @Test
  void readsTheStandardInput() {
    Run run = Run.of(false, Map.of(), UNTIDY, "format", "-");
    assertEquals(ExitCode.DONE, run.code());
    assertEquals(Bench.CLEAN, run.out());
  }

  @Test
  void goesOnBehindAFileThatCannotBeRead() throws IOException {
    Files.write(folder.resolve("a.kettle"), new byte[] {(byte) 0xff});
    Path file = Bench.write(folder, "b.kettle", UNTIDY);
    Run run = Run.of("format", folder.toString());
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("a.kettle: it is not UTF-8 text"), run.err());
    assertEquals(Bench.CLEAN, Bench.read(file));
  }
}
