package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class WaterBetweenLayersTest {

  private final RuleFixture waterBetweenLayers = RuleFixture.of(new WaterBetweenLayers());

  @Test
  void marksACrispWaferOnAMoistCentre() {
    waterBetweenLayers.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          wafer 1 g wafer-sheet
                    ^^^^^^^^^^^ water-between-layers: `wafer-sheet` has a water activity of 0.20–0.30, and `sweet` beside it 0.68–0.72
        """);
  }

  @Test
  void allowsWaferPaper() {
    waterBetweenLayers.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          wafer 1 g wafer-paper
        """);
  }

  @Test
  void allowsWhatIsAlike() {
    waterBetweenLayers.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 140 °C
        product bonbon
          centre 10 g sweet
          wafer 1 g wafer-sheet
        """);
  }

  @Test
  void allowsACoatAndABarrier() {
    waterBetweenLayers.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          layer 1 g cocoa-butter
          wafer 1 g wafer-sheet
          coat 20 % of finished couverture-dark-62
        """);
  }

  @Test
  void putsFatBetween() {
    waterBetweenLayers.checkFix("Put a layer of cocoa butter between them", """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          wafer 1 g wafer-sheet
        """, """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 109 °C
        product bonbon
          centre 10 g sweet
          layer     3 % of centre        cocoa-butter
          wafer 1 g wafer-sheet
        """);
  }
}
