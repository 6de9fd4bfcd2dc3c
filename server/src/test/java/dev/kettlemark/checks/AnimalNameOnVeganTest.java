package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnimalNameOnVeganTest {

  private final RuleFixture animalName = RuleFixture.of(new AnimalNameOnVegan());

  @Test
  void findsGelatineThatIsNone() {
    animalName.check("""
        formula leaf "Vegan gelatine leaves"
                            ^^^^^^^^ animal-name-on-vegan: the name says gelatine, and the claim says vegan
          percent of charge
          claim vegan
        stage pan
          100 % agar
          mix
        """);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Nougat without egg or honey",
        "Egg-free marshmallow",
        "Coconut milk caramel",
        "Cocoa butter melts",
        "Peanut butter bar",
        "Meringue with cream of tartar",
        "Honeycomb of agave",
        "Creamy fondant"
      })
  void understandsWhatIsNotMeant(String title) {
    animalName.check("formula f \"" + title
        + "\"\n  percent of charge\n  claim vegan\nstage pan\n  100 % agar\n  mix\n");
  }

  @Test
  void staysQuietWithoutTheClaim() {
    animalName.check("""
        formula f "Honey nougat"
          percent of charge
        stage pan
          100 % honey
          mix
        """);
  }
}
