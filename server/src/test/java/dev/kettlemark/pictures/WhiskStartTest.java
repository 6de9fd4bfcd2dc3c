package dev.kettlemark.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.quantity.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

class WhiskStartTest {

  private static final String MERINGUE = """
      formula meringue
        percent of charge
        batch 1000 g

      stage foam
        200 g egg-white-pasteurised
        whip on medium for WHISK until soft-peak

      stage syrup
        500 g white-sugar
        250 g water
        cook to 119 °C for COOK

      stage body
        all of foam
        all of syrup
        stream syrup into foam over 60 s
      """;

  private static List<Outcome<WhiskStart>> starts(String text) {
    ComputedFormula computed = Drawn.computed(Drawn.text(text), "meringue");
    return WhiskStart.of(computed, computed.process().stage("syrup").orElseThrow());
  }

  /**
   * Sucrose of 80 % by mass boils at 109.4 °C: from memory, as handbooks of sugar boiling print it. By hand: 500 g of
   * sugar in 750 g leave 125 g of water at 80 %, and at 119 °C some 65 g, so a third of the 185 g of vapour is still to
   * go: 200 s of ten minutes.
   */
  @Test
  void theSyrupPassesWhatItsWaterBoilsAt() {
    WhiskStart start = starts(MERINGUE.replace("WHISK", "200 s").replace("COOK", "10 min"))
        .get(0)
        .toOptional()
        .orElseThrow();
    assertEquals(109.4, start.passes().celsius(), 2.0);
    assertTrue(start.words().contains("start the whisk for foam when the syrup passes about 1"));
  }

  @Test
  void aLongerWhiskStartsCooler() {
    double late = passes("60 s");
    double early = passes("7 min");
    assertTrue(early < late && late < 119, early + " and " + late);
  }

  @Test
  void aTimeThatIsNotSaidIsNotMadeUp() {
    assertEquals(
        List.of(false), known(MERINGUE.replace("for WHISK ", "").replace("COOK", "9 min")));
    assertEquals(List.of(false), known(MERINGUE.replace("WHISK", "60 s").replace(" for COOK", "")));
    assertEquals(
        List.of(false), known(MERINGUE.replace("WHISK", "10 min").replace("COOK", "9 min")));
  }

  @Test
  void theMarkIsDrawn() {
    String text = MERINGUE.replace("WHISK", "200 s").replace("COOK", "10 min");
    Picture picture = Drawn.picture(Drawn.text(text), "meringue", PictureKind.TIME);
    assertTrue(picture.svg().contains("line dotted thick"), picture.svg());
    assertTrue(picture.words().contains("when the syrup passes about"), picture.words());
  }

  private static double passes(String whisk) {
    return starts(MERINGUE.replace("WHISK", whisk).replace("COOK", "10 min"))
        .get(0)
        .toOptional()
        .orElseThrow()
        .passes()
        .celsius();
  }

  private static List<Boolean> known(String text) {
    return starts(text).stream().map(Outcome::isKnown).toList();
  }
}
