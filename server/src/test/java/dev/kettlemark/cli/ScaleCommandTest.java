package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScaleCommandTest {

  private static Run scale(String name, String... options) {
    List<String> arguments = new ArrayList<>(List.of("scale", name, "--in", Run.SAMPLES));
    arguments.addAll(List.of(options));
    return Run.of(arguments.toArray(String[]::new));
  }

  /** 37 × 42 g = 1554 g, which is 96 % of 1618.75 g; by hand. */
  @Test
  void asksForPiecesAndLossExactlyWhereNothingBoils() {
    Run run = scale("orchard-bar", "--pieces", "37", "--piece-weight", "42g", "--loss", "4%");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Pinned.resource("cli/scale/orchard-bar.txt").check(run.out(), ScaleCommandTest.class);
    assertTrue(run.out().contains("batch     1618.75 g"), run.out());
  }

  @Test
  void goesBackThroughCookOff() {
    Pinned.resource("cli/scale/egg-honey-nougat.txt")
        .check(
            scale("egg-honey-nougat", "--finished", "1618.75g", "--explain").out(),
            ScaleCommandTest.class);
  }

  @Test
  void scalesAProductWithAllItNeeds() {
    Pinned.resource("cli/scale/caramel-dome.txt")
        .check(scale("caramel-dome", "--pieces", "240").out(), ScaleCommandTest.class);
  }

  /** 210 g at 15 % of the charge are 1400 g; by hand. */
  @Test
  void startsFromWhatIsAtHand() {
    Run run = scale("heather-nougat", "--have", "210 g roasted-cashew");
    assertTrue(run.out().contains("batch     1400 g"), run.out());
  }

  @Test
  void takesAPhraseInOneWordOrInSeveral() {
    String joined = scale("orchard-bar", "--charge", "2.5kg").out();
    assertEquals(joined, scale("orchard-bar", "--charge", "2.5", "kg").out());
    assertEquals(joined, scale("orchard-bar", "--charge=2500 g").out());
    String moulds = scale("chewy-caramel", "--moulds", "4x dome-24").out();
    assertEquals(moulds, scale("chewy-caramel", "--moulds", "4x", "dome-24").out());
    assertEquals(moulds, scale("chewy-caramel", "--moulds", "4", "x", "dome-24").out());
    assertEquals(
        moulds,
        Run.of("scale", "--moulds", "4x dome-24", "chewy-caramel", "--in", Run.SAMPLES)
            .out());
  }

  @Test
  void changesOnlyTheBatchLine(@TempDir Path folder) {
    Path file = Bench.write(folder, "a.kettle", "\uFEFF" + Bench.CLEAN.replace("\n", "\r\n"));
    String[] command = {"scale", "plain-syrup", "--in", folder.toString(), "--charge", "2.5kg"};
    Run dry = Run.of(command);
    assertTrue(dry.out().contains("a.kettle:3:13  becomes, with --write\n"), dry.out());
    assertTrue(Bench.read(file).contains("batch     1000 g\r\n"));
    Run.of("scale", "plain-syrup", "--in", folder.toString(), "--charge", "2.5kg", "--write");
    assertEquals(
        "\uFEFF" + Bench.CLEAN.replace("1000 g", "2500 g").replace("\n", "\r\n"), Bench.read(file));
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
          --charge=2 stone                | `2 stone` is not a weight, such as 2.5kg
          --charge=4%                     | `4%` is not a weight, such as 2.5kg
          --charge=-1g                    | `-1g` is not a weight, such as 2.5kg
          --charge=1,5kg                  | `1,5kg` is not a weight, such as 2.5kg
          --pieces=3.5 --piece-weight=2g  | `3.5` is not a whole number
          --pieces=3                      | a formula does not say what a piece weighs; add --piece-weight
          --charge=1kg --piece-weight=2g  | --piece-weight goes with --pieces
          --charge=1kg --loss=4%          | --loss goes with --finished, --pieces, --moulds or --frames
          --finished=1kg --loss=100%      | `orchard-bar` cannot be scaled so: a loss lies from 0 to less than 100 %
          --charge=0g                     | `orchard-bar` cannot be scaled so: a batch weighs more than nothing
          --bowl=bucket                   | `orchard-bar` cannot be scaled so: the house has no bowl `bucket`
          --moulds=dome-24                | `dome-24` is not a count and a name, such as 4x dome-24
          --have=5g                       | `5g` is not a weight and a name, such as 210 g roasted-hazelnut
          """)
  void saysWhyNot(String options, String message) {
    String[] split = options.split(" (?=--)");
    Run run = scale("orchard-bar", split);
    assertEquals(ExitCode.NOT_RUN, run.code());
    assertEquals("kettlemark: " + message + "\n", run.err());
    assertEquals("", run.out());
  }

  @Test
  void wantsExactlyOneTarget() {
    assertTrue(scale("orchard-bar").err().startsWith("kettlemark: say what is wanted: --charge"));
    assertTrue(scale("orchard-bar", "--charge=1kg", "--bowl=x")
        .err()
        .startsWith("kettlemark: say only one of --charge"));
  }

  @Test
  void aProductKnowsItsOwnWeights() {
    assertTrue(scale("caramel-dome", "--pieces", "3", "--piece-weight", "4g")
        .err()
        .startsWith("kettlemark: a product is scaled by --pieces alone"));
  }
}
