package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** SECURITY.md names every library in the jar, and every test that it calls as a witness is there. */
class SecurityPageTest {

  private static final Pattern DEPENDENCY =
      Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);
  private static final Pattern NAME = Pattern.compile("<artifactId>([^<]+)</artifactId>");
  private static final Pattern WITNESS = Pattern.compile("`([A-Z]\\w+Test)(?:\\.(\\w+))?`");

  private final String page = read(Path.of("SECURITY.md"));

  @Test
  void namesEveryLibraryThatIsNotForTestsAlone() {
    Set<String> missing = new TreeSet<>();
    for (Path pom : List.of(Path.of("pom.xml"), Path.of("..", "grammar", "pom.xml"))) {
      String build = read(pom).split("<profiles>")[0];
      Matcher dependency = DEPENDENCY.matcher(build);
      while (dependency.find()) {
        Matcher name = NAME.matcher(dependency.group(1));
        boolean isOfTheJar = name.find() && !dependency.group(1).contains("<scope>test</scope>");
        if (isOfTheJar
            && !name.group(1).startsWith("kettlemark-")
            && !page.contains("`" + name.group(1) + "`")) {
          missing.add(name.group(1));
        }
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void callsWitnessesThatAreThere() throws IOException {
    int called = 0;
    Matcher witness = WITNESS.matcher(page);
    while (witness.find()) {
      String source = source(witness.group(1));
      String method = witness.group(2);
      assertTrue(method == null || source.contains("void " + method + "("), witness.group());
      called++;
    }
    assertTrue(called >= 5, "only " + called);
  }

  private static String source(String test) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
      return files
          .filter(file -> file.endsWith(test + ".java"))
          .findFirst()
          .map(SecurityPageTest::read)
          .orElseThrow(() -> new AssertionError("there is no " + test));
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }
}
