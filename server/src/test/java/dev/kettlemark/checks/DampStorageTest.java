package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class DampStorageTest {

  private final RuleFixture dampStorage = RuleFixture.of(new DampStorage());

  @Test
  void tellsOfDampAir() {
    dampStorage.check("""
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          50.00 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        product bonbon
          centre 10 g sweet
          shelf 6 months below 60 %RH
                               ^^^^^^ damp-storage: `sweet` has a water activity of 0.09–0.19, and the air may have 60 %RH
        """);
  }

  @Test
  void staysQuietInDryAir() {
    dampStorage.check("""
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 112 °C
        product bonbon
          centre 10 g sweet
          shelf 2 weeks below 55 %RH
        """);
  }

  @Test
  void staysQuietWhereItIsPackedOrCoated() {
    dampStorage.check("""
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          50.00 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        product bonbon
          centre 10 g sweet
          shelf 6 months below 60 %RH
          pack "tin"
        product coated
          centre 5 g sweet
          coat 20 % of finished couverture-dark-62
          shelf 6 months below 60 %RH
        """);
  }

  @Test
  void keepsItDrier() {
    dampStorage.checkFix("Keep it below 60 %RH", """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 112 °C
        product bonbon
          centre 10 g sweet
          shelf 2 weeks below 75 %RH
        """, """
        formula sweet
          batch   1000 g
          texture soft
        stage pan
          35.00 % white-sugar
          40.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 112 °C
        product bonbon
          centre 10 g sweet
          shelf 2 weeks below 60 %RH
        """);
  }

  @Test
  void packsIt() {
    dampStorage.checkFix("Pack it in a tight film", """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          50.00 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        product bonbon
          centre 10 g sweet
          shelf 6 months below 60 %RH
        """, """
        formula sweet
          batch   1000 g
          texture hard
        stage pan
          50.00 % white-sugar
          25.00 % glucose-syrup-42
          25.00 % water
          boil under lid for 2 min until dissolved
          cook to 150 °C
        product bonbon
          centre 10 g sweet
          shelf 6 months below 60 %RH
          pack  "tight film"
        """);
  }
}
