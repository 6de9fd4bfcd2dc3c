package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.labelling.ClaimAnswer.Ground;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether claims hold; conditions from the laws that the table names, from memory. */
class ClaimsTest {

  private static ClaimAnswer answer(Market market, String claim, String lines) {
    return answer(market, claim, "", lines);
  }

  private static ClaimAnswer answer(Market market, String claim, String before, String lines) {
    Label label = LabelFixture.of(before + "formula f\n  percent of charge\n  claim " + claim
            + "\nstage pan\n" + lines + "  mix\n")
        .label("f");
    return label.claims().stream()
        .filter(found -> found.market() == market)
        .findFirst()
        .orElseThrow();
  }

  private static List<String> grounds(ClaimAnswer answer) {
    return answer.grounds().stream().map(Ground::text).toList();
  }

  @Test
  void veganIsBrokenByHoneyEggMilkGelatineAndCarmine() {
    ClaimAnswer answer = answer(Market.EU, "vegan", """
          20 % honey
          20 % egg-white-powder
          20 % couverture-milk-38
          20 % gelatine-200
          20 % carmine
        """);
    assertEquals(Standing.BROKEN, answer.standing());
    assertEquals(5, answer.grounds().size());
  }

  /** Vegan speaks of what was meant to go in; "free from" promises that nothing is there. */
  @Test
  void veganStandsBesideTracesAndFreeFromDoesNot() {
    String coat = "  100 % couverture-dark-62\n";
    assertEquals(Standing.HOLDS, answer(Market.EU, "vegan", coat).standing());
    ClaimAnswer free = answer(Market.EU, "milk-free", coat);
    assertEquals(Standing.BROKEN, free.standing());
    assertEquals(List.of("`couverture-dark-62` may contain milk"), grounds(free));
  }

  @Test
  void vegetarianAllowsEggAndHoneyAndNoGelatine() {
    assertEquals(
        Standing.HOLDS,
        answer(Market.EU, "vegetarian", "  50 % honey\n  50 % egg-white-powder\n")
            .standing());
    assertEquals(
        List.of("`gelatine-200` is not vegetarian"),
        grounds(answer(Market.EU, "vegetarian", "  50 % honey\n  50 % gelatine-200\n")));
  }

  @Test
  void veganIsNotFreeOfAllergens() {
    String soy = "  100 % soy-whipping-protein\n";
    assertEquals(Standing.HOLDS, answer(Market.EU, "vegan", soy).standing());
    assertEquals(Standing.BROKEN, answer(Market.EU, "soy-free", soy).standing());
  }

  @Test
  void glutenIsBrokenByWheatAndUnknownWithoutAWord() {
    assertEquals(
        Standing.BROKEN,
        answer(Market.EU, "gluten-free", "  100 % wafer-sheet\n").standing());
    assertEquals(
        List.of("the gluten of `brown-rice-syrup` is not known"),
        grounds(answer(Market.US, "gluten-free", "  100 % brown-rice-syrup\n")));
    assertEquals(
        Standing.UNKNOWN,
        answer(Market.US, "gluten-free", "  100 % brown-rice-syrup\n").standing());
    assertEquals(
        Standing.HOLDS, answer(Market.EU, "gluten-free", "  100 % rice-flour\n").standing());
  }

  @Test
  void anythingThatNobodyDescribedLeavesAClaimUnknown() {
    for (String claim : List.of("vegan", "egg-free", "gluten-free")) {
      assertEquals(
          Standing.UNKNOWN, answer(Market.EU, claim, "  100 % moon-dust\n").standing(), claim);
    }
  }

  @Test
  void theHouseMakesAbsenceUncertain() {
    ClaimAnswer answer = answer(
        Market.EU, "nut-free", "house pier\n  allergens-on-site almond\n", "  100 % oat-flake\n");
    assertEquals(Standing.UNKNOWN, answer.standing());
    assertEquals(List.of("the house handles almond"), grounds(answer));
  }

  @Test
  void nutFreeMeansPeanutsToo() {
    assertEquals(
        List.of("`peanut-paste` holds peanut"),
        grounds(answer(Market.EU, "nut-free", "  100 % peanut-paste\n")));
  }

  /** Any food used for its sweetening properties is added sugar; the sugar of a puree is not. */
  @Test
  void noAddedSugarIsBrokenByDateSyrup() {
    assertEquals(
        Standing.BROKEN,
        answer(Market.EU, "no-added-sugar", "  100 % date-syrup\n").standing());
    assertEquals(
        Standing.HOLDS,
        answer(Market.EU, "no-added-sugar", "  100 % apple-puree\n").standing());
    assertEquals(
        Standing.HOLDS, answer(Market.EU, "no-added-sugar", "  100 % isomalt\n").standing());
  }

  private static final String REFERENCE = """
      ingredient plain-starch
        contains 100 % starch
        gluten no
        suits vegan, vegetarian
      ingredient plain-sugar
        contains 100 % sucrose
        gluten no
        suits vegan, vegetarian
      formula like
        percent of charge
      stage pan
        50 % plain-sugar
        50 % plain-starch
        mix
      """;

  /** By hand: 36 % and 34 % of sugar are 28 % and 32 % less than 50 %; the Union asks for 30 %, the States for 25 %. */
  @Test
  void comparesSugarWithTheReference() {
    String lines = "  36 % plain-sugar\n  64 % plain-starch\n";
    ClaimAnswer union = answer(Market.EU, "less-sugar of like", REFERENCE, lines);
    assertEquals(
        List.of("it has 28.0 % less sugar than `like`, and 30 % less is asked for"),
        grounds(union));
    assertEquals(
        Standing.HOLDS,
        answer(Market.US, "less-sugar of like", REFERENCE, lines).standing());
    assertEquals(
        Standing.HOLDS,
        answer(
                Market.EU,
                "less-sugar of like",
                REFERENCE,
                "  34 % plain-sugar\n  66 % plain-starch\n")
            .standing());
  }

  /** Annex of Regulation (EC) No 1924/2006 as amended in 2012: less sugar must not mean more energy. */
  @Test
  void lessSugarMustNotMeanMoreEnergy() {
    ClaimAnswer answer = answer(
        Market.EU,
        "less-sugar of like",
        REFERENCE,
        "  30 % plain-sugar\n  50 % plain-starch\n  20 % cocoa-butter\n");
    // 80 g × 4 kcal + 20 g × 9 kcal = 500 kcal against 400 kcal.
    assertEquals(
        List.of("it has more energy than `like`: 500 and 400 kcal in 100 g"), grounds(answer));
  }

  @Test
  void lessSugarNeedsAReference() {
    assertEquals(
        ClaimAnswer.Kind.NO_REFERENCE,
        answer(Market.EU, "less-sugar", "  100 % water\n").grounds().get(0).kind());
    assertEquals(
        List.of("nobody has described `moon-cake`"),
        grounds(answer(Market.EU, "less-sugar of moon-cake", "  100 % water\n")));
  }

  /** At most 0.5 g and 5 g of sugars in 100 g. */
  @Test
  void judgesSugarFreeAndLowSugarByTheAmount() {
    String lines = "  1 % plain-sugar\n  99 % plain-starch\n";
    assertEquals(
        List.of("1.0 g sugar in 100 g, and at most 0.5 g is asked for"),
        grounds(answer(Market.EU, "sugar-free", REFERENCE, lines)));
    assertEquals(
        Standing.HOLDS, answer(Market.EU, "low-sugar", REFERENCE, lines).standing());
    assertEquals(
        Standing.UNKNOWN, answer(Market.US, "sugar-free", REFERENCE, lines).standing());
  }

  /** By hand: 5 g protein × 4 of 400 kcal is 5 %; pure protein is 100 %. */
  @Test
  void judgesHighProteinByTheEnergy() {
    String protein = REFERENCE + "ingredient plain-protein\n  contains 100 % protein\n";
    assertEquals(
        List.of("protein gives 5.0 % of the energy, and 20 % is asked for"),
        grounds(answer(
            Market.EU, "high-protein", protein, "  5 % plain-protein\n  95 % plain-starch\n")));
    assertEquals(
        Standing.HOLDS,
        answer(Market.EU, "high-protein", protein, "  20 % plain-protein\n  80 % plain-starch\n")
            .standing());
  }

  @Test
  void halalAndKosherAreNeverChecked() {
    ClaimAnswer answer = answer(Market.EU, "halal", "  50 % water\n  50 % rum\n");
    assertEquals(Standing.UNKNOWN, answer.standing());
    assertEquals(
        List.of(
            "only a certifying body can say so; nothing here checks it", "`rum` brings alcohol"),
        grounds(answer));
  }

  @Test
  void alcoholFreeIsBrokenByAnExtract() {
    assertEquals(
        List.of("`vanilla-extract` brings alcohol"),
        grounds(answer(Market.EU, "alcohol-free", "  99 % water\n  1 % vanilla-extract\n")));
  }
}
