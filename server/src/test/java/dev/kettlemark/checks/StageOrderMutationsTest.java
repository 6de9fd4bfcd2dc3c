package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A right formula with one line changed shows that one mistake, and no other of its kind. */
class StageOrderMutationsTest {

  static Stream<Arguments> mutations() {
    return Stream.of(
        of(
            "fat-in-foam",
            "italian-meringue",
            "   6.00 %             caster-sugar\n",
            "   5.00 %             caster-sugar\n   1.00 %             cocoa-powder\n",
            "  blend     caster-sugar, cream-of-tartar",
            "  blend     caster-sugar, cream-of-tartar, cocoa-powder"),
        of(
            "lumping-gum",
            "raspberry-jelly",
            "  blend     pectin-hm-slow, caster-sugar, trisodium-citrate until lump-free\n",
            "",
            "  boil      for 2 min until hydrated",
            "  mix       caster-sugar, trisodium-citrate, water\n  boil      for 2 min until hydrated"),
        of(
            "hydration-in-syrup",
            "raspberry-jelly",
            "  34.00 %             raspberry-puree\n",
            "  34.00 %             invert-syrup\n",
            "raspberry-puree",
            "invert-syrup"),
        of(
            "early-acid",
            "raspberry-jelly",
            "   0.15 %             trisodium-citrate\n",
            "   0.15 %             citric-acid\n",
            "trisodium-citrate",
            "citric-acid"),
        of("off-speed-stream", "italian-meringue", "over 75 s", "over 5 s"),
        of(
            "over-whipped-foam",
            "italian-meringue",
            "  whip      on medium until soft-peak",
            "  whip      on high for 15 min until stiff-peak"),
        of(
            "boiled-foam",
            "egg-honey-nougat",
            "  whip      on medium for 6 min until firm-peak",
            "  whip      on medium for 6 min until firm-peak\n  warm      to 101 °C"),
        of(
            "boiled-aroma",
            "chewy-caramel",
            "   0.20 %             soy-lecithin\n",
            "   0.20 %             soy-lecithin\n   0.10 %             almond-extract\n",
            "  mix       butter, soy-lecithin",
            "  mix       butter, soy-lecithin, almond-extract"),
        of("undissolved-cook", "white-fondant", "under lid for 3 min until dissolved", "for 3 min"),
        of("cold-inclusions", "peanut-brittle", "roasted-peanut       at 80 °C", "roasted-peanut"),
        of(
            "fast-fold",
            "egg-honey-nougat",
            "  18.80 %             roasted-almond",
            "  48.80 %             roasted-almond",
            "  29.50 %             white-sugar",
            "   0.00 %             white-sugar",
            "roasted-pistachio while whisking on low",
            "roasted-pistachio while whisking on high"),
        of(
            "foam-left-standing",
            "egg-honey-nougat",
            "  keep      whisking until deposit",
            "  stand     for 20 min"),
        of("deposit-below-setting", "raspberry-jelly", "above 88 °C", "above 55 °C"),
        of("cut-before-set", "gelatine-marshmallow", "set       for 14 h", "set       for 30 min"),
        of(
            "reheated-foam",
            "egg-honey-nougat",
            "  cut       40 x 20 mm",
            "  warm      to 80 °C\n  cut       40 x 20 mm"),
        of(
            "untempered-coat",
            "orchard-bar",
            "  cut       100 x 23 mm",
            "  cut       100 x 23 mm\n  enrobe    dough with couverture-dark-62",
            "  all of              dough",
            "  10.00 %             couverture-dark-62\n  all of              dough",
            "36.00 %             date-paste",
            "26.00 %             date-paste"),
        of(
            "centre-off-temperature",
            "orchard-bar",
            "  cut       100 x 23 mm",
            "  temper    couverture-dark-62 to 31.5 °C\n  enrobe    dough with couverture-dark-62",
            "  all of              dough",
            "  10.00 %             couverture-dark-62\n  all of              dough",
            "36.00 %             date-paste",
            "26.00 %             date-paste",
            "for 10 h at 16-20 °C",
            "for 10 h at 4-6 °C",
            "rest ",
            "rest dough "),
        of(
            "waiting-syrup",
            "gelatine-marshmallow",
            "  cook      to 127 °C ± 1\n",
            "  cook      to 127 °C ± 1\n\nstage bloom-more\n   0.00 %             water\n"
                + "  stand     for 20 min\n",
            "  all of              gelatine-soak",
            "  all of              gelatine-soak\n  all of              bloom-more"),
        of(
            "untaken-stage",
            "chewy-caramel",
            "  all of              base\n  mix       smoked-salt, vanilla-extract, base",
            "  mix       smoked-salt, vanilla-extract, base"));
  }

  private static Arguments of(String rule, String sample, String... changes) {
    return Arguments.of(rule, sample, List.of(changes));
  }

  @ParameterizedTest
  @MethodSource("mutations")
  void showsTheMistake(String rule, String sample, List<String> changes) {
    Document sound = SampleTexts.library().stream()
        .filter(document -> document.uri().endsWith("/" + sample + ".kettle"))
        .findFirst()
        .orElseThrow();
    String text = sound.text().source().text();
    for (int i = 0; i < changes.size(); i += 2) {
      String changed = text.replace(changes.get(i), changes.get(i + 1));
      assertNotEquals(text, changed, changes.get(i));
      text = changed;
    }
    assertEquals(List.of(), ofTheStages(sound), "before");
    assertEquals(List.of(rule), ofTheStages(Document.of(sound.uri(), text)), text);
  }

  /** The rules of this kind that find something, each once. */
  private static List<String> ofTheStages(Document document) {
    return Listing.findings(List.of(document)).stream()
        .map(Listing.Shown::rule)
        .filter(RULES::contains)
        .distinct()
        .toList();
  }

  private static final List<String> RULES = Stream.of(
          new UntakenStage(),
          new FatInFoam(),
          new LumpingGum(),
          new HydrationInSyrup(),
          new EarlyAcid(),
          new LowSyrupFirst(),
          new OffSpeedStream(),
          new WaitingSyrup(),
          new OverWhippedFoam(),
          new BoiledFoam(),
          new BoiledAroma(),
          new UndissolvedCook(),
          new ColdInclusions(),
          new FastFold(),
          new FoamLeftStanding(),
          new DepositBelowSetting(),
          new CutBeforeSet(),
          new ReheatedFoam(),
          new UntemperedCoat(),
          new CentreOffTemperature())
      .map(rule -> rule.info().id())
      .toList();
}
