package dev.kettlemark.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The user's own browser, where there is one. */
final class Browser {

  private Browser() {}

  /**
   * Asks the desktop to open an address.
   *
   * @param environment says whether there is a desktop
   * @return whether there is one that was asked
   */
  static boolean open(String address, Map<String, String> environment) {
    List<String> command = command(System.getProperty("os.name", ""), environment);
    if (command.isEmpty()) {
      return false;
    }
    try {
      new ProcessBuilder(command(address, command))
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException none) {
      return false;
    }
  }

  /** How an operating system opens an address; empty where nobody would see it. */
  static List<String> command(String system, Map<String, String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return List.of("rundll32", "url.dll,FileProtocolHandler");
    }
    if (name.startsWith("mac")) {
      return List.of("open");
    }
    boolean desktop = !environment.getOrDefault("DISPLAY", "").isEmpty()
        || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    return desktop ? List.of("xdg-open") : List.of();
  }

  private static List<String> command(String address, List<String> opener) {
    return Stream.concat(opener.stream(), Stream.of(address)).toList();
  }
}
