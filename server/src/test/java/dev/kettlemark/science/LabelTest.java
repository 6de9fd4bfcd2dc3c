package dev.kettlemark.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy by the factors of both laws, and their rounding. */
class LabelTest {

  @ParameterizedTest
  @CsvSource({
    "SUCROSE,1700,400,400",
    "FAT,3700,900,900",
    "PROTEIN,1700,400,400",
    "SORBITOL,1000,240,260",
    "XYLITOL,1000,240,240",
    "ERYTHRITOL,0,0,20",
    "FIBRE,800,200,400",
    "ACID,1300,300,400",
    "ETHANOL,2900,700,700",
    "WATER,0,0,0",
    "SALT,0,0,0",
    "ISOMALT,1000,240,200",
    "MALTITOL,1000,240,210",
    "MANNITOL,1000,240,160",
    "STARCH,1700,400,400"
  })
  void countsAsTheLawSays(
      Component component, double kilojoules, double european, double american) {
    // Regulation (EU) No 1169/2011, annex XIV; 21 CFR 101.9(c)(1)(i), polyols from memory.
    Composition pure = Composition.of(component);
    assertEquals(kilojoules, FoodEnergy.europeanKilojoules(pure), 1e-9);
    assertEquals(european, FoodEnergy.europeanKilocalories(pure), 1e-9);
    assertEquals(american, FoodEnergy.americanKilocalories(pure), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "CALORIES,4.9,0",
    "CALORIES,5,5",
    "CALORIES,47.4,45",
    "CALORIES,47.5,50",
    "CALORIES,50,50",
    "CALORIES,54.9,50",
    "CALORIES,55,60",
    "CALORIES,234,230",
    "FAT,0.49,0",
    "FAT,0.5,0.5",
    "FAT,2.25,2.5",
    "FAT,4.74,4.5",
    "FAT,5.4,5",
    "CHOLESTEROL,1.9,0",
    "CHOLESTEROL,2,less than 5",
    "CHOLESTEROL,5,less than 5",
    "CHOLESTEROL,7.5,10",
    "SODIUM,4.9,0",
    "SODIUM,7.4,5",
    "SODIUM,140,140",
    "SODIUM,144,140",
    "SODIUM,146,150",
    "CARBOHYDRATE_OR_PROTEIN,0.49,0",
    "CARBOHYDRATE_OR_PROTEIN,0.5,less than 1",
    "CARBOHYDRATE_OR_PROTEIN,1.49,1",
    "CARBOHYDRATE_OR_PROTEIN,12.5,13"
  })
  void roundsForTheAmericanLabel(AmericanRounding rule, double amount, String printed) {
    // FDA Food Labeling Guide, appendix H.
    assertEquals(printed, rule.of(amount));
  }

  @ParameterizedTest
  @CsvSource({
    "ENERGY,1523.4,1523", "ENERGY,0.5,1", "MACRONUTRIENT,10,10", "MACRONUTRIENT,12.5,13",
        "MACRONUTRIENT,9.96,10.0",
    "MACRONUTRIENT,0.55,0.6", "MACRONUTRIENT,0.5,0", "FATTY_ACIDS,0.1,0", "FATTY_ACIDS,0.14,0.1",
        "FATTY_ACIDS,11.4,11",
    "SALT,0.0125,0", "SALT,0.013,0.01", "SALT,0.555,0.56", "SALT,1.04,1.0"
  })
  void roundsForTheEuropeanLabel(EuropeanRounding rule, double amount, String printed) {
    // European Commission guidance of December 2012, table 4, from memory.
    assertEquals(printed, rule.of(amount));
  }

  @Test
  void refusesWhatNoLabelCanSay() {
    assertThrows(IllegalArgumentException.class, () -> EuropeanRounding.SALT.of(-1));
    assertThrows(IllegalArgumentException.class, () -> AmericanRounding.FAT.of(Double.NaN));
  }
}
