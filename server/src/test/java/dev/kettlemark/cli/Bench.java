package dev.kettlemark.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small texts on disk to try commands on. */
final class Bench {

  static final String CLEAN = """
      formula plain-syrup "Plain syrup"
        percent   of charge
        batch     1000 g
        caution   hot-sugar

      stage pan
        60.00 %             white-sugar
        40.00 %             water
        boil      white-sugar, water under lid until dissolved
      """;

  /** The same with one amount that lacks its unit. */
  static final String BROKEN = CLEAN.replace("40.00 %  ", "40.00    ");

  private Bench() {}

  static Path write(Path folder, String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.toAbsolutePath().getParent());
      return Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
