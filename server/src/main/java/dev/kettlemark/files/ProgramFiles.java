package dev.kettlemark.files;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The files that the program itself runs from. */
public final class ProgramFiles {

  private static final Optional<String> HASH = hash(System.getProperty("java.class.path", ""));

  private ProgramFiles() {}

  /**
   * What tells this program from any other, also from one of the same version that was built anew; empty
   * where its files cannot be read.
   */
  public static Optional<String> hash() {
    return HASH;
  }

  static Optional<String> hash(String classPath) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String entry : classPath.split(File.pathSeparator, -1)) {
        if (entry.isEmpty()) {
          // It stands for the working folder, which is no part of the program and may be of any
          // size.
          return Optional.empty();
        }
        for (Path file : files(Path.of(entry))) {
          digest.update(file.toString().getBytes(StandardCharsets.UTF_8));
          digest.update(Files.readAllBytes(file));
        }
      }
      return Optional.of(HexFormat.of().formatHex(digest.digest()));
    } catch (IOException | UncheckedIOException unreadable) {
      return Optional.empty();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static List<Path> files(Path entry) throws IOException {
    if (!Files.exists(entry)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(entry)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }
}
