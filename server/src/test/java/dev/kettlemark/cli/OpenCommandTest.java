package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OpenCommandTest {

  @Test
  void saysWhatItCannotOpen() throws IOException {
    Run none = Run.of("open", "--no-browser", "../samples/no-such-folder");
    assertEquals(ExitCode.NOT_RUN, none.code());
    assertTrue(none.err().contains("is no folder"), none.err());
    assertEquals(
        ExitCode.NOT_RUN, Run.of("open", "--port", "65536", Run.SAMPLES).code());
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Run run = Run.of("open", "--no-browser", "--port", "" + taken.getLocalPort(), Run.SAMPLES);
      assertEquals(ExitCode.NOT_RUN, run.code());
      assertTrue(run.err().contains("is taken by another program"), run.err());
    }
  }

  /** A desktop is told by DISPLAY (X(7)) or WAYLAND_DISPLAY (wl_display_connect(3)). */
  @Test
  void opensABrowserOnlyWhereSomebodyCanSeeIt() {
    assertEquals(List.of(), Browser.command("Linux", Map.of()));
    assertEquals(List.of("xdg-open"), Browser.command("Linux", Map.of("DISPLAY", ":0")));
    assertEquals(
        List.of("xdg-open"), Browser.command("Linux", Map.of("WAYLAND_DISPLAY", "wayland-0")));
    assertEquals(List.of("open"), Browser.command("Mac OS X", Map.of()));
    assertEquals("rundll32", Browser.command("Windows 11", Map.of()).get(0));
  }
}
