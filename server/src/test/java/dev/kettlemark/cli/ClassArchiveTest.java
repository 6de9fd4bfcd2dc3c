package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.grammar.KettleLexer;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Java machine itself says whether it started from the archive: with {@code -Xshare:on} it must. */
class ClassArchiveTest {

  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

  @TempDir
  private Path folder;

  @Test
  void startsTheServerFromIt() throws IOException, InterruptedException, URISyntaxException {
    Path jar = jar();
    ClassArchive archive = new ClassArchive(JAVA, Runtime.version().feature(), jar);
    Path file = folder.resolve("an archive");
    archive.make(file);
    assertTrue(Files.size(file) > 1_000_000, "the program's classes take megabytes");
    List<String> command = new ArrayList<>(List.of(JAVA.toString()));
    command.addAll(ClassArchive.MACHINE);
    command.addAll(archive.arguments(file));
    command.addAll(List.of("-Xshare:on", "-Xlog:class+load"));
    command.addAll(List.of("-jar", jar.toString(), "--version"));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
    assertTrue(
        said.lines()
            .anyMatch(line ->
                line.contains("dev.kettlemark.cli.Main") && line.contains("shared objects file")),
        said);
    assertEquals(Set.of("an archive", "program.jar"), left(), "and leaves nothing else behind");
  }

  @Test
  void leavesNothingBehindWhereItCannotBeMade() throws IOException {
    Path file = folder.resolve("archive");
    ClassArchive archive = new ClassArchive(JAVA, 17, folder.resolve("no such program.jar"));
    assertThrows(IOException.class, () -> archive.make(file));
    assertFalse(Files.exists(file));
    assertEquals(Set.of(), left());
  }

  private Set<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).collect(Collectors.toSet());
    }
  }

  /**
   * The program as one jar, as it is packaged: an archive holds no loose classes, and none that are signed.
   */
  private Path jar() throws IOException, URISyntaxException {
    Set<Path> parts = new LinkedHashSet<>(List.of(home(Main.class), home(KettleLexer.class)));
    Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(part -> part.endsWith(".jar"))
        .forEach(part -> parts.add(Path.of(part)));
    Manifest manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, Main.class.getName());
    Path jar = folder.resolve("program.jar");
    Set<String> packed = new HashSet<>();
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest)) {
      for (Path part : parts) {
        if (Files.isDirectory(part)) {
          pack(part, packed, out);
        } else {
          try (FileSystem inside = FileSystems.newFileSystem(part)) {
            pack(inside.getPath("/"), packed, out);
          }
        }
      }
    }
    return jar;
  }

  private static Path home(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private static void pack(Path part, Set<String> packed, JarOutputStream out) throws IOException {
    try (Stream<Path> found = Files.walk(part)) {
      for (Path one : found.filter(Files::isRegularFile).sorted().toList()) {
        String name = part.relativize(one).toString().replace(File.separatorChar, '/');
        if (!name.startsWith("META-INF/") && packed.add(name)) {
          out.putNextEntry(new JarEntry(name));
          Files.copy(one, out);
          out.closeEntry();
        }
      }
    }
  }
}
