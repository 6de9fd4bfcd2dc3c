package dev.kettlemark.publishing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FileNamesTest {

  private static final List<String> HOSTILE = List.of(
      "../x",
      "..\\x",
      "/etc/passwd",
      "x/../../y",
      "x",
      "X",
      "con",
      "COM1",
      "nul",
      "a\"b'c",
      "<script>alert(1)</script>",
      "%2e%2e%2f",
      "naïve",
      "naive",
      "ﬁg",
      "яблоко",
      "яблоки",
      "",
      " ",
      ".",
      "..",
      "-",
      "a-",
      "a",
      "A ",
      "x".repeat(300),
      "x".repeat(301),
      "line\nbreak",
      "tab\tbed",
      "\u0000");

  @Test
  void makesSafeAndDistinctFiles() {
    Set<String> files = new HashSet<>();
    for (String name : HOSTILE) {
      String file = FileNames.of(name);
      assertTrue(file.matches("[a-z0-9](-?[a-z0-9]+)*"), name + " became " + file);
      assertTrue(file.length() <= 80, file);
      assertTrue(Manifest.isPage("sheets/" + file + "-chef.html"), file);
      assertTrue(files.add(file), name + " meets another in " + file);
    }
  }

  @Test
  void leavesASafeNameAsItIs() {
    assertEquals("heather-nougat-2", FileNames.of("heather-nougat-2"));
  }

  @Test
  void staysDistinctWhateverTheNames() {
    Chance.rounds(1, random -> {
      Map<String, String> seen = new HashMap<>();
      for (int i = 0; i < 20_000; i++) {
        StringBuilder name = new StringBuilder();
        for (int j = random.nextInt(6); j >= 0; j--) {
          name.append("abAB-./é\"<".charAt(random.nextInt(10)));
        }
        String before = seen.put(FileNames.of(name.toString()), name.toString());
        assertTrue(before == null || before.equals(name.toString()), before + " and " + name);
      }
    });
  }

  @Test
  void readsItsOwnManifestAgain() {
    ItemRow row =
        new ItemRow("x", "formula", "tab\tline\n<b>\"", "", "1", "", "draft", "≈ 82 %", "milk", "");
    Manifest manifest = new Manifest(
        Map.of("sheets/x-chef.html", new Manifest.Written("hash", LocalDate.of(2026, 4, 6))),
        List.of(row));
    assertEquals(manifest, Manifest.of(manifest.text()).orElseThrow());
    assertEquals(manifest.text(), Manifest.of(manifest.text()).orElseThrow().text());
  }

  @Test
  void claimsNothingOutsideItsFolder() {
    String text = "kettlemark site 1\n"
        + "page\t../outside.html\th\t2026-04-06\n"
        + "page\t/etc/passwd\th\t2026-04-06\n"
        + "page\ta/b/c.html\th\t2026-04-06\n"
        + "page\tsheets/..html\th\t2026-04-06\n"
        + "page\tindex.html\th\t2026-04-06\n"
        + "nonsense\n";
    assertEquals(Set.of("index.html"), Manifest.of(text).orElseThrow().pages().keySet());
    assertTrue(Manifest.of("something else").isEmpty());
  }
}
