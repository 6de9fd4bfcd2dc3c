package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printing, where the machine has Chromium, and reading back, where it has Poppler. */
class SheetPdfTest {

  /** A4 is 210 × 297 mm by ISO 216 and Letter 8½ × 11 in, in points of 1/72 in. */
  @ParameterizedTest
  @CsvSource({"a4, 594 x 841", "letter, 612 x 792"})
  void printsTheSheetOnPaper(String paper, String points, @TempDir Path folder) throws IOException {
    assumeTrue(isThere("chromium") && isThere("pdftotext"), "Chromium and Poppler");
    Path pdf = folder.resolve("sheet.pdf");
    Run run = Run.of(
        "sheet",
        "heather-bench",
        "--in",
        Run.SAMPLES,
        "--format",
        "pdf",
        "--paper",
        paper,
        "--out",
        pdf.toString());
    assertEquals(ExitCode.DONE, run.code(), run.err());

    String about = told("pdfinfo", pdf.toString());
    String[] size = points.split(" x ");
    assertTrue(about.replaceAll("\\.[0-9]+", "").contains(size[0] + " x " + size[1]), about);
    assertTrue(about.matches("(?s).*Tagged:\\s+yes.*"), about);

    String[] pages = told("pdftotext", "-layout", pdf.toString(), "-").split("\f");
    assertTrue(pages.length >= 4 && pages.length <= 9, "pages: " + pages.length);
    assertTrue(pages[0].contains("Heather-honey nougat"), pages[0]);
    assertTrue(pages[1].strip().startsWith("Ingredient"), "the head of a cut table comes again");
    for (int i = 0; i < pages.length; i++) {
      assertTrue(
          pages[i].matches("(?s).*\\b" + (i + 1) + "\\s*/\\s*" + pages.length + "\\b.*"),
          "page " + (i + 1));
      assertTrue(pages[i].contains("GS-020"), "a page that has fallen out is known by its code");
      assertTrue(pages[i].strip().lines().count() > 5, "nearly nothing on page " + (i + 1));
    }
    String all = String.join("\n", pages);
    for (String word : new String[] {"Before you start", "18.90", "140 ± 1", "Drafted from"}) {
      assertTrue(all.toLowerCase(Locale.ROOT).contains(word.toLowerCase(Locale.ROOT)), word);
    }
  }

  @Test
  void asksForAFile() {
    Run run = Run.of("sheet", "heather-bench", "--in", Run.SAMPLES, "--format", "pdf");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("--out"), run.err());
  }

  @Test
  void saysWhatIsMissing(@TempDir Path folder) {
    System.setProperty(PrintingBrowser.PROPERTY, folder.resolve("nowhere").toString());
    try {
      Path pdf = folder.resolve("sheet.pdf");
      Run run = Run.of(
          "sheet", "heather-bench", "--in", Run.SAMPLES, "-f", "pdf", "--out", pdf.toString());
      assertEquals(ExitCode.NOT_RUN, run.code());
      assertTrue(run.err().contains("Chromium"), run.err());
      assertFalse(Files.exists(pdf));
    } finally {
      System.clearProperty(PrintingBrowser.PROPERTY);
    }
  }

  private static boolean isThere(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }

  private static String told(String... command) throws IOException {
    Process process = new ProcessBuilder(command).start();
    return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
