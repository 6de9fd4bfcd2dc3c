package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Heat ends the enzymes of pineapple: common practice, no source. */
class RawFruitOnProteinTest {

  private final RuleFixture rawFruitOnProtein = RuleFixture.of(new RawFruitOnProtein());

  @Test
  void marksTheMistake() {
    rawFruitOnProtein.check("""
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
          warm to 60 °C for 5 min until dissolved
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
               ^^^^^^^^^^^^^^^^^^^ raw-fruit-on-protein: `pineapple-puree-raw` is never heated to 80 °C, and digests `gelatine-200`
          all of soak
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    rawFruitOnProtein.check("""
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
          warm to 60 °C for 5 min until dissolved
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
          all of soak
          warm pineapple-puree-raw to 85 °C for 2 min
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """);
  }

  @Test
  void asksForEightyDegrees() {
    rawFruitOnProtein.check("""
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
          warm to 60 °C for 5 min until dissolved
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
               ^^^^^^^^^^^^^^^^^^^ raw-fruit-on-protein: `pineapple-puree-raw` is never heated to 80 °C, and digests `gelatine-200`
          all of soak
          warm pineapple-puree-raw to 79 °C
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """);
  }

  @Test
  void leavesAPlantGelAlone() {
    rawFruitOnProtein.check("""
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          1.00 % agar
          11.00 % water
          sprinkle agar into water
          boil for 3 min
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
          all of soak
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """);
  }

  @Test
  void mendsIt() {
    rawFruitOnProtein.checkFix("Warm `pineapple-puree-raw` to 85 °C first", """
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
          warm to 60 °C for 5 min until dissolved
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
          all of soak
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """, """
        formula pineapple-jelly
          percent of charge
          batch 1000 g
          texture gelled
        stage soak
          2.00 % gelatine-200
          10.00 % water
          sprinkle gelatine-200 into water
          soak for 10 min until bloomed
          warm to 60 °C for 5 min until dissolved
        stage jelly
          20.00 % caster-sugar
          q.s. pineapple-puree-raw
          all of soak
          warm      pineapple-puree-raw to 85 °C for 2 min
          mix caster-sugar, pineapple-puree-raw
          mix soak
          deposit
        """);
  }
}
