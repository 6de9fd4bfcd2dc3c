package dev.kettlemark.files;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

  private static Optional<String> hash(String classPath) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      Set<Path> entries = new LinkedHashSet<>(List.of(own()));
      // An empty entry stands for the working folder, which holds no part of the program.
      Stream.of(classPath.split(File.pathSeparator))
          .filter(entry -> !entry.isEmpty())
          .forEach(entry -> entries.add(Path.of(entry).toAbsolutePath().normalize()));
      for (Path entry : entries) {
        for (Path file : files(entry)) {
          digest.update(file.toString().getBytes(StandardCharsets.UTF_8));
          digest.update(Files.readAllBytes(file));
        }
      }
      return Optional.of(HexFormat.of().formatHex(digest.digest()));
    } catch (IOException | UncheckedIOException | URISyntaxException unreadable) {
      return Optional.empty();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Where this very class comes from, whatever loaded it. */
  private static Path own() throws URISyntaxException {
    return Path.of(
        ProgramFiles.class.getProtectionDomain().getCodeSource().getLocation().toURI());
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
