package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** NO_COLOR: no-color.org, an informal standard: any value but the empty one asks for plain text. */
class ColourTest {

  private static final String ESCAPE = "\u001b";

  @TempDir
  private Path folder;

  @BeforeEach
  void writeAMistake() {
    Bench.write(folder, "a.kettle", Bench.BROKEN);
  }

  private boolean isColoured(boolean interactive, Map<String, String> environment, String when) {
    Run run = Run.of(interactive, environment, "", "check", folder.toString(), "--color", when);
    return run.out().contains(ESCAPE);
  }

  @Test
  void coloursOnATerminalOnly() {
    assertEquals(true, isColoured(true, Map.of(), "auto"));
    assertEquals(false, isColoured(false, Map.of(), "auto"));
  }

  @Test
  void honoursTheWishForPlainText() {
    assertEquals(false, isColoured(true, Map.of("NO_COLOR", "1"), "auto"));
    assertEquals(true, isColoured(true, Map.of("NO_COLOR", ""), "auto"));
    assertEquals(false, isColoured(true, Map.of("TERM", "dumb"), "auto"));
  }

  @Test
  void theOptionWinsOverTheEnvironment() {
    assertEquals(true, isColoured(false, Map.of("NO_COLOR", "1"), "always"));
    assertEquals(false, isColoured(true, Map.of(), "never"));
  }

  @Test
  void saysTheSameInColour() {
    String coloured = Run.of("check", folder.toString(), "--color=always").out();
    assertEquals(
        Run.of("check", folder.toString()).out(), coloured.replaceAll(ESCAPE + "\\[[0-9;]*m", ""));
  }
}
