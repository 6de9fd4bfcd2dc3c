package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

  @TempDir
  private Path folder;

  private Run check(String... options) {
    String[] arguments = new String[options.length + 2];
    arguments[0] = "check";
    arguments[1] = folder.toString();
    System.arraycopy(options, 0, arguments, 2, options.length);
    return Run.of(arguments);
  }

  @Test
  void endsWithZeroWhereNothingIsWrong() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Run run = check();
    assertEquals("", run.err());
    assertEquals(ExitCode.DONE, run.code(), run.out());
    assertTrue(run.out().endsWith("1 file, 1 formula: 0 errors, 0 warnings, 0 notes\n"), run.out());
  }

  @Test
  void showsLineReasonAndFixes() {
    Bench.write(folder, "a.kettle", Bench.BROKEN);
    Run run = check();
    assertEquals(ExitCode.FOUND, run.code());
    Pinned.resource("cli/check.txt").check(run.outWithout(folder), CheckCommandTest.class);
  }

  @Test
  void writesTheSameAsJson() {
    Bench.write(folder, "a.kettle", Bench.BROKEN);
    Run run = check("--format", "json");
    assertEquals(ExitCode.FOUND, run.code());
    Pinned.resource("cli/check.json").check(run.outWithout(folder), CheckCommandTest.class);
  }

  /** The form that the GNU Coding Standards give to error messages, section 4.4. */
  @Test
  void writesOneLineForEachFinding() {
    Bench.write(folder, "a.kettle", Bench.BROKEN);
    Run run = check("--format", "line");
    assertEquals(ExitCode.FOUND, run.code());
    Pinned.resource("cli/check-lines.txt").check(run.outWithout(folder), CheckCommandTest.class);
    run.out()
        .lines()
        .forEach(line -> assertTrue(line.matches("\\S+:\\d+:\\d+: [a-z]+: .+ \\[[a-z-]+]"), line));
  }

  @Test
  void leavesOutWhatMattersLess() {
    Bench.write(
        folder,
        "a.kettle",
        Bench.BROKEN.replace("boil      white-sugar, water", "boil      white-sugar"));
    assertTrue(check().out().contains("1 error, 1 warning,"));
    Run errors = check("--severity", "error");
    assertTrue(errors.out().contains("1 error, 0 warnings,"), errors.out());
    assertFalse(errors.out().contains("unused-amount"), errors.out());
  }

  @Test
  void checksAFileWithinTheLibraryOfItsFolder() {
    Bench.write(folder, "stock.kettle", Bench.BROKEN.replace("plain-syrup", "other-syrup"));
    Bench.write(
        folder,
        "use.kettle",
        Bench.CLEAN.replace("plain-syrup", "user").replace("white-sugar", "other-syrup"));
    Run run = Run.of("check", folder.resolve("use.kettle").toString());
    assertFalse(run.out().contains("stock.kettle"), run.out());
    assertFalse(run.out().contains("unknown"), run.out());
    assertTrue(run.out().contains("1 file, 1 formula:"), run.out());
  }

  @Test
  void readsAFileOfALibraryFurtherUp() {
    Bench.write(folder, "stock.kettle", Bench.CLEAN.replace("plain-syrup", "other-syrup"));
    Path use = Bench.write(
        folder,
        "deeper/use.kettle",
        Bench.CLEAN.replace("plain-syrup", "user").replace("white-sugar", "other-syrup"));
    Run run = Run.of("check", "--in", folder.toString(), use.toString());
    assertEquals("", run.err());
    assertTrue(run.out().contains("1 file, 1 formula: 0 errors"), run.out());
  }

  @Test
  void takesFoldersBelowAnotherOnce() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Bench.write(folder, "deeper/b.kettle", Bench.CLEAN.replace("plain-syrup", "other"));
    Run run =
        check(folder.resolve("deeper").toString(), folder.resolve("a.kettle").toString());
    assertTrue(run.out().contains("2 files, 2 formulas:"), run.out());
  }

  @Test
  void readsEachFileOnceHoweverManyLinksLeadToIt() throws IOException {
    Path file = Bench.write(folder, "deeper/a.kettle", Bench.CLEAN);
    Files.createSymbolicLink(folder.resolve("deeper/loop"), folder);
    Files.createSymbolicLink(folder.resolve("b.kettle"), file);
    Run run = check();
    assertEquals("", run.err());
    assertTrue(run.out().contains("1 file, 1 formula:"), run.out());
  }

  @Test
  void leavesOutWhatToolsKeepForThemselves() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Bench.write(folder, ".old/a.kettle", Bench.CLEAN);
    assertTrue(check().out().contains("1 file, 1 formula:"));
  }

  @Test
  void findsFilesWithSpacesAccentsAndMarksInTheirNames() {
    Assumptions.assumeTrue(
        "UTF-8".equals(System.getProperty("sun.jnu.encoding")),
        "file names of this machine hold no accents");
    Bench.write(folder, "crème brûlée #2 50%/a b.kettle", Bench.BROKEN);
    Run run = check();
    assertTrue(
        run.out().contains("crème brûlée #2 50%/a b.kettle:8:3  error  missing-unit"), run.out());
    String sarif = check("--format", "sarif").out();
    assertTrue(sarif.contains("cr%C3%A8me%20br%C3%BBl%C3%A9e%20%232%2050%25/a%20b.kettle"), sarif);
  }

  @Test
  void saysPlainlyWhatCannotBeRead() throws IOException {
    Files.write(
        folder.resolve("latin.kettle"), "# br\u00fbl\u00e9".getBytes(StandardCharsets.ISO_8859_1));
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Run run = check();
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals(
        "kettlemark: cannot read FOLDER/latin.kettle: it is not UTF-8 text\n",
        run.err().replace(folder.toString(), "FOLDER"));
    assertTrue(run.out().contains("1 file, 1 formula:"), run.out());
  }

  @Test
  void saysThatThereIsNothingToCheck() {
    Run run = check();
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals("kettlemark: there is no .kettle file to check\n", run.err());
  }

  @Test
  void saysThatAPathLeadsNowhere() {
    Run run = Run.of("check", folder.resolve("none").toString());
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("there is no file or folder "), run.err());
  }

  @Test
  void countsWarningsAsErrorsOnRequest() {
    Bench.write(
        folder,
        "a.kettle",
        Bench.CLEAN.replace("boil      white-sugar, water", "boil      white-sugar"));
    Run lenient = check();
    assertTrue(lenient.out().contains("0 errors, 1 warning,"), lenient.out());
    assertEquals(ExitCode.DONE, lenient.code());
    assertEquals(ExitCode.FOUND, check("--warnings-as-errors").code());
    assertEquals(
        ExitCode.DONE, check("--warnings-as-errors", "--severity", "error").code());
  }

  private static final String ACCEPTED = Bench.CLEAN
      .replace("40.00 %", "39.00 %")
      .replace(
          "batch     1000 g", "batch     1000 g\n  accept    total-off \"as in the old book\"");

  @Test
  void countsWhatIsAcceptedAndShowsItNot() {
    Bench.write(folder, "a.kettle", ACCEPTED);
    Run run = check();
    assertEquals(ExitCode.DONE, run.code(), run.out());
    assertEquals("1 file, 1 formula: 0 errors, 0 warnings, 0 notes, 1 accepted\n", run.out());
  }

  @Test
  void namesWhatIsAcceptedInJson() {
    Bench.write(folder, "a.kettle", ACCEPTED.replace("book\"", "book\" until 2026-11-25"));
    String json = check("--format", "json").out();
    JsonObject report = JsonParser.parseString(json).getAsJsonObject();
    assertEquals(0, report.getAsJsonArray("findings").size());
    JsonObject accepted = report.getAsJsonArray("accepted").get(0).getAsJsonObject();
    assertEquals("total-off", accepted.get("rule").getAsString());
    assertEquals("error", accepted.get("severity").getAsString());
    assertEquals("as in the old book", accepted.get("reason").getAsString());
    assertEquals("2026-11-25", accepted.get("until").getAsString());
    assertEquals(1, report.getAsJsonObject("summary").get("accepted").getAsInt());
  }

  @Test
  void acceptsNothingWhenTheDayIsOver() {
    Bench.write(folder, "a.kettle", ACCEPTED.replace("book\"", "book\" until 2026-11-24"));
    Run run = check();
    assertEquals(ExitCode.FOUND, run.code());
    assertTrue(run.out().contains("lapsed-acceptance"), run.out());
    assertTrue(run.out().contains("total-off"), run.out());
  }

  private static final String UNTIDY = Bench.CLEAN
          .replace("60.00 % ", "59.50 % ")
          .replace("batch     1000 g", "batch     1000 g\n  note      \"x\"")
      + "  rest      for 3 minutes\n";

  @Test
  void mendsWhatIsBeyondDoubt() {
    Path file = Bench.write(folder, "a.kettle", UNTIDY.replace("59.50 % ", ".50 %   "));
    Run run = check("--fix");
    String path = file.toString();
    assertTrue(
        run.out()
            .startsWith(path + ":8:3  fixed  bare-point  Write `0.50`\n" + path
                + ":11:19  fixed  missing-time-unit  Write `min`\n1 file changed.\n"),
        run.out());
    String mended = Bench.read(file);
    assertTrue(mended.contains("0.50 %"), mended);
    assertTrue(mended.endsWith("for 3 min\n"), mended);
    assertTrue(run.out().contains("total-off"), run.out());
    assertEquals(ExitCode.FOUND, run.code());
    assertTrue(check("--fix").out().startsWith("Nothing to fix.\n"));
  }

  @Test
  void showsWhatItWouldMend() {
    Path file = Bench.write(folder, "a.kettle", UNTIDY);
    Run run = check("--fix", "--dry-run");
    assertEquals(ExitCode.FOUND, run.code());
    assertEquals(UNTIDY, Bench.read(file));
    assertTrue(
        run.out().contains("-  rest      for 3 minutes\n+  rest      for 3 min\n"), run.out());
    assertTrue(run.out().endsWith("1 file would change.\n"), run.out());
  }

  @Test
  void keepsReportsForProgramsApartFromWhatItMends() {
    Bench.write(folder, "a.kettle", UNTIDY);
    Run run = check("--fix", "--format", "json");
    assertTrue(JsonParser.parseString(run.out()).isJsonObject());
    assertTrue(run.err().contains("1 file changed."), run.err());
  }

  @Test
  void aDryRunNeedsSomethingToTry() {
    Bench.write(folder, "a.kettle", Bench.CLEAN);
    Run run = check("--dry-run");
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("--dry-run"), run.err());
  }
}
