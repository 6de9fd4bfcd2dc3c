package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Pinned;
import dev.kettlemark.text.Cells;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangesCommandTest {

  private static final String SHEET =
      "5.50 % water, 91.50 % protein, 0.40 % fat, 1.80 % ash, 0.80 % other";
  private static final String NEW_SHEET =
      "14.60 % water, 82.40 % protein, 0.40 % fat, 1.80 % ash, 0.80 % other";

  @TempDir
  Path folder;

  /** The samples with the supplier's new sheet and a bar with almonds. */
  private Path changedSamples() throws IOException {
    Path changed = Files.createDirectories(folder.resolve("changed"));
    try (Stream<Path> files = Files.list(Path.of(Run.SAMPLES))) {
      for (Path file : files.toList()) {
        String text = Bench.read(file)
            .replace(SHEET, NEW_SHEET)
            .replace(
                "15.00 %             sunflower-seed",
                "14.00 %             sunflower-seed\n   1.00 %             roasted-almond")
            .replace("fold      oat-flake,", "fold      roasted-almond, oat-flake,");
        Bench.write(changed, file.getFileName().toString(), text);
      }
    }
    return changed;
  }

  private static Run changes(String from, Path to, String... more) {
    List<String> words = new ArrayList<>(List.of("changes", "--from", from, "--to", to.toString()));
    words.addAll(List.of(more));
    return Run.of(words.toArray(String[]::new));
  }

  @Test
  void showsWhatAChangeOfTheSamplesDoes() throws IOException {
    Run run = changes(Run.SAMPLES, changedSamples());
    assertEquals(ExitCode.DONE, run.code(), run.err());
    // What stands above names a folder that is another one on each machine.
    String shown = run.out().substring(run.out().indexOf("changed in the texts"));
    assertTrue(shown.lines().allMatch(line -> Cells.of(line) <= 80), shown);
    Pinned.resource("cli/changes/samples.txt").check(shown, ChangesCommandTest.class);
  }

  @Test
  void saysThatNothingChanged() {
    Run run = changes(Run.SAMPLES, Path.of(Run.SAMPLES));
    assertEquals(ExitCode.DONE, run.code());
    assertTrue(run.out().contains("Nothing changed"), run.out());
  }

  /** By hand: 0.95 % · 91.5 / 82.4 = 1.0549 %. */
  @Test
  void writesJson() throws IOException {
    JsonObject json = JsonParser.parseString(
            changes(Run.SAMPLES, changedSamples(), "--format", "json").out())
        .getAsJsonObject();
    JsonObject dose = json.getAsJsonArray("doses").get(0).getAsJsonObject();
    assertEquals("heather-nougat-plant", dose.get("formula").getAsString());
    assertEquals(1.0549, dose.get("percentToKeep").getAsDouble(), 5e-5);
    assertEquals(3, json.getAsJsonArray("items").size());
    JsonObject figure = json.getAsJsonArray("items")
        .get(1)
        .getAsJsonObject()
        .getAsJsonArray("figures")
        .get(0)
        .getAsJsonObject();
    assertEquals(180, figure.getAsJsonObject("before").get("grams").getAsDouble(), 1e-9);
    assertEquals(168, figure.getAsJsonObject("after").get("grams").getAsDouble(), 1e-9);
  }

  @Test
  void refusesAFolderThatIsNotThere() {
    Run run = changes(Run.SAMPLES, folder.resolve("nowhere"));
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("is no folder"), run.err());
  }

  @Test
  void saysThatGitCannotBeRun() {
    UsageMistake mistake = assertThrows(
        UsageMistake.class,
        () -> new GitRevision(folder, "no-such-program-of-that-name")
            .texts("HEAD", new ArrayList<>()));
    assertTrue(String.valueOf(mistake.getMessage()).contains("cannot be run"));
  }

  @Test
  void comparesRevisions() throws Exception {
    assumeTrue(git("--version"), "git is not installed");
    Path library = Files.createDirectories(folder.resolve("repository/küche"));
    Bench.write(library, "syrup.kettle", Bench.CLEAN);
    Bench.write(library, "deep/er.kettle", "formula old-one\n");
    Bench.write(library, "notes.txt", "not a formula");
    Bench.write(library.resolve(".."), "outside.kettle", "formula outside\n");
    commitAll();
    Files.delete(library.resolve("deep/er.kettle"));
    Bench.write(library, "syrup.kettle", Bench.CLEAN.replace("1000 g", "2000 g"));
    commitAll();
    Run last = Run.of("changes", "--in", library.toString());
    assertTrue(last.out().contains("Nothing changed"), last.out() + last.err());
    Run before = Run.of("changes", "--in", library.toString(), "--from", "rev:HEAD~1");
    assertEquals(ExitCode.DONE, before.code(), before.err());
    assertTrue(before.out().contains("formula old-one, gone"), before.out());
    assertTrue(before.out().contains("40.00 % · 800.0 g"), before.out());
    assertTrue(!before.out().contains("outside"), before.out());
    Run back =
        Run.of("changes", "--in", library.toString(), "--from", "rev:HEAD", "--to", "rev:HEAD~1");
    assertTrue(back.out().contains("formula old-one, new"), back.out());
  }

  @Test
  void saysThatARevisionIsMissing() throws Exception {
    assumeTrue(git("--version"), "git is not installed");
    Path library = Files.createDirectories(folder.resolve("repository"));
    Bench.write(library, "syrup.kettle", Bench.CLEAN);
    commitAll();
    for (String revision : List.of("rev:no-such", "rev:", "rev:--all")) {
      Run run = Run.of("changes", "--in", library.toString(), "--from", revision);
      assertEquals(ExitCode.NOT_RUN, run.code(), revision);
      assertTrue(run.err().contains("git knows no revision"), run.err());
    }
  }

  @Test
  void saysThatAFolderIsInNoRepository() throws Exception {
    assumeTrue(git("--version"), "git is not installed");
    Bench.write(folder, "syrup.kettle", Bench.CLEAN);
    Run run = Run.of("changes", "--in", folder.toString());
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertTrue(run.err().contains("is in no git repository"), run.err());
  }

  private void commitAll() throws Exception {
    Path top = folder.resolve("repository");
    List<String> who = List.of(
        "-C", top.toString(), "-c", "user.name=Bench", "-c", "user.email=bench@example.org");
    if (!Files.exists(top.resolve(".git"))) {
      assertTrue(git("-C", top.toString(), "init", "-q"));
    }
    assertTrue(git("-C", top.toString(), "add", "-A"));
    List<String> commit = new ArrayList<>(who);
    commit.addAll(List.of("-c", "commit.gpgsign=false", "commit", "-q", "-m", "State"));
    assertTrue(git(commit.toArray(String[]::new)));
  }

  private static boolean git(String... arguments) throws InterruptedException {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(arguments));
    try {
      return new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start()
              .waitFor()
          == 0;
    } catch (IOException missing) {
      return false;
    }
  }
}
