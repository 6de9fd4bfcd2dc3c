package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** {@code bin/kettlemark} with a Java that only tells how it was called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

  private static final List<String> PLAIN = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  /** Tells its arguments, one on a line. */
  private static final String JAVA = "#!/bin/sh\nprintf '%s\\n' \"$@\"\n";

  @TempDir
  private Path temporary;

  private final Map<String, String> environment = new TreeMap<>();
  private Path launcher;
  private Path jar;
  private Path java;

  @BeforeEach
  void install() throws IOException {
    // A temporary folder may be reached by a link; the launcher tells where it really is.
    Path folder = Files.createDirectory(temporary.toRealPath().resolve("a place"));
    launcher =
        executable(folder.resolve("bin/kettlemark"), Files.readString(Path.of("bin/kettlemark")));
    jar =
        Files.createFile(Files.createDirectory(folder.resolve("target")).resolve("kettlemark.jar"));
    java = java("17.0.15");
    environment.put("PATH", System.getenv("PATH"));
    environment.put("HOME", temporary.toString());
    environment.put("JAVA_HOME", java.toString());
  }

  private static Path executable(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    assertTrue(file.toFile().setExecutable(true));
    return file;
  }

  private Path java(String version) throws IOException {
    Path home = temporary.toRealPath().resolve("java " + version);
    executable(home.resolve("bin/java"), JAVA);
    Files.writeString(
        home.resolve("release"), "IMPLEMENTOR=\"N. N.\"\nJAVA_VERSION=\"" + version + "\"\n");
    return home;
  }

  /** What it said, and its exit code where that is not 0. */
  private List<String> told(Path program, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().clear();
    builder.environment().putAll(environment);
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    int code = process.waitFor();
    List<String> lines =
        new ArrayList<>(said.isEmpty() ? List.of() : List.of(said.split("\n", -1)));
    if (!lines.isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    return code == 0 ? lines : List.of(code + ": " + said.strip());
  }

  private static List<String> all(List<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).toList();
  }

  @Test
  void handsTheArgumentsOnAsTheyAre() throws IOException, InterruptedException {
    assertEquals(
        all(PLAIN, "-jar", jar.toString(), "check", "a b", "*", "", "$HOME", "--"),
        told(launcher, "check", "a b", "*", "", "$HOME", "--"));
    assertEquals(all(PLAIN, "-jar", jar.toString()), told(launcher));
  }

  @Test
  void servesWithTheArgumentsOfTheEditors() throws IOException, InterruptedException {
    assertEquals(
        all(ClassArchive.MACHINE, "-jar", jar.toString(), "serve"), told(launcher, "serve"));
    List<String> roomy = ClassArchive.MACHINE.stream()
        .map(argument -> argument.equals("-Xmx256m") ? "-Xmx512m" : argument)
        .toList();
    assertEquals(all(roomy, "-jar", jar.toString(), "open"), told(launcher, "open"));
  }

  @Test
  void startsFromWhatWasPrepared() throws IOException, InterruptedException {
    for (String version : List.of("17.0.15", "21", "25.0.1")) {
      Path home = java(version);
      environment.put("JAVA_HOME", home.toString());
      int feature = Runtime.Version.parse(version).feature();
      Path archive = temporary.resolve("kept files/kettlemark/classes-" + feature + ".archive");
      Files.createDirectories(archive.getParent());
      environment.put("XDG_CACHE_HOME", temporary.resolve("kept files").toString());
      assertEquals(all(PLAIN, "-jar", jar.toString(), "--version"), told(launcher, "--version"));
      Files.createFile(archive);
      List<String> expected = new ArrayList<>(PLAIN);
      expected.addAll(new ClassArchive(home, feature, jar).arguments(archive));
      assertEquals(
          all(expected, "-jar", jar.toString(), "--version"), told(launcher, "--version"), version);
    }
  }

  @Test
  void theWritersOwnArgumentsHaveTheLastWord() throws IOException, InterruptedException {
    environment.put("KETTLEMARK_JAVA_OPTIONS", "-Xmx1g -Dkettlemark.log=*");
    assertEquals(
        all(ClassArchive.MACHINE, "-Xmx1g", "-Dkettlemark.log=*", "-jar", jar.toString(), "serve"),
        told(launcher, "serve"));
  }

  @Test
  void isFoundThroughLinksAndFindsTheProgramBesideItself()
      throws IOException, InterruptedException {
    Path one = Files.createSymbolicLink(temporary.resolve("one"), launcher);
    Path two = Files.createSymbolicLink(temporary.resolve("two"), Path.of("one"));
    assertEquals(all(PLAIN, "-jar", jar.toString()), told(two));
    Path beside = Files.move(jar, launcher.resolveSibling("kettlemark.jar"));
    assertEquals(all(PLAIN, "-jar", beside.toString()), told(one));
  }

  @Test
  void takesTheJavaOfThePathWhereNoHomeIsNamed() throws IOException, InterruptedException {
    environment.remove("JAVA_HOME");
    environment.put("PATH", java.resolve("bin") + ":" + System.getenv("PATH"));
    assertEquals(all(PLAIN, "-jar", jar.toString()), told(launcher));
  }

  @Test
  void saysWhatIsMissing() throws IOException, InterruptedException {
    for (String version : List.of("11.0.22", "1.8.0_292")) {
      Path old = java(version);
      environment.put("JAVA_HOME", old.toString());
      assertEquals(
          List.of("2: kettlemark: it needs Java 17 or newer; found Java " + version + " at " + old
              + "/bin/java"),
          told(launcher));
    }
    environment.put("JAVA_HOME", "/nowhere");
    assertEquals(
        List.of("2: kettlemark: JAVA_HOME holds no Java: there is no /nowhere/bin/java"),
        told(launcher));
    Files.delete(jar);
    assertEquals(
        List.of("2: kettlemark: there is no " + jar
            + "; build it: mvn -B -q -DskipTests -pl server -am package"),
        told(launcher));
  }
}
