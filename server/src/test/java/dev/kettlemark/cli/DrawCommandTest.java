package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {

  @Test
  void drawsTheFlow() {
    Run run = Run.of("draw", "italian-meringue", "--in", Run.SAMPLES);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertTrue(run.out().startsWith("<svg "), run.out());
    assertTrue(run.out().contains("Flow of Italian meringue"), run.out());
  }

  @Test
  void writesAFile(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("time.svg");
    Run run = Run.of(
        "draw", "italian-meringue", "--in", Run.SAMPLES, "-s", "time", "-o", file.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertEquals("", run.out());
    assertTrue(Files.readString(file).contains("Heat and time of Italian meringue"));
  }

  @Test
  void saysWhatItCannotDo(@TempDir Path folder) {
    Run nowhere = Run.of(
        "draw",
        "italian-meringue",
        "--in",
        Run.SAMPLES,
        "--out",
        folder.resolve("no/such/place.svg").toString());
    assertEquals(ExitCode.NOT_RUN, nowhere.code());
    assertTrue(nowhere.err().contains("cannot write"), nowhere.err());
    Run none = Run.of("draw", "white-sugar", "--in", Run.SAMPLES);
    assertEquals(ExitCode.NOT_RUN, none.code());
  }
}
