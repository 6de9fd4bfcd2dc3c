package dev.kettlemark.scaling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Worked by hand; all prices are invented. */
class CostsTest {

  private static final String HOUSE = """
      house quay "Quay"
        altitude  0 m
        scale     fine  reads 0.01 g  to 5000 g
        currency  EUR
        price     white-sugar  1.20 per kg
        price     vanilla-extract  88.00 per L
        price     plain-syrup  9.00 per kg
      """;

  private static final String FORMULAS = """
      formula plain-syrup "Plain syrup"
        percent   of charge
        batch     1000 g

      stage pan
        60.00 %   white-sugar
        40.00 %   water
        boil      under lid until dissolved

      formula sweet-water "Sweet water"
        percent   of charge
        batch     1000 g

      stage pan
        50.00 %   plain-syrup
        10.00 %   harbour-paste
        40.00 %   water
        mix       plain-syrup, harbour-paste, water

      ingredient harbour-paste "Harbour paste"
        form      paste
        contains  20.00 % water, 80.00 % sucrose
        price     4.00-6.00 per kg

      ingredient quiet-paste "Quiet paste"
        form      paste
        contains  20.00 % water, 80.00 % sucrose
      """;

  private static Snapshot snapshot(String... texts) {
    List<Document> documents = new ArrayList<>(Pantry.documents());
    for (int i = 0; i < texts.length; i++) {
      documents.add(Document.of("file-" + i + ".kettle", texts[i]));
    }
    return Snapshot.of(Library.of(documents), Today.DAY);
  }

  private static Costs costs(Snapshot snapshot) {
    Optional<House> house = snapshot
        .library()
        .find(Kind.HOUSE, "quay")
        .flatMap(entry -> entry.declaration())
        .map(House.class::cast);
    return new Costs(snapshot, house);
  }

  private static Scaling scaling(Snapshot snapshot, String name, int grams) {
    ComputedFormula formula = Formulas.computed(name).ask(snapshot).orElseThrow();
    return Scaling.of(formula, new Target.Charge(new BigFraction(grams)))
        .toOptional()
        .orElseThrow();
  }

  /** 600 g of sugar at 1.20 per kg; water is free. */
  @Test
  void sumsWhatIsWeighed() {
    Snapshot snapshot = snapshot(HOUSE, FORMULAS);
    Cost cost = costs(snapshot).ofBatch(scaling(snapshot, "plain-syrup", 1000));
    assertTrue(cost.isComplete());
    assertEquals(0.72, cost.low(), 1e-9);
    assertEquals(0.72, cost.high(), 1e-9);
    assertEquals(Optional.of("EUR"), costs(snapshot).currency());
  }

  /** What the house pays for a made thing counts: 500 g at 9.00; 100 g of paste at 4.00 to 6.00 per kg. */
  @Test
  void takesTheHousesPriceFirstAndKeepsARange() {
    Snapshot snapshot = snapshot(HOUSE, FORMULAS);
    Cost cost = costs(snapshot).ofBatch(scaling(snapshot, "sweet-water", 1000));
    assertEquals(4.50 + 0.40, cost.low(), 1e-9);
    assertEquals(4.50 + 0.60, cost.high(), 1e-9);
  }

  /** Without a price of its own a formula costs what its materials do, over what is left of them. */
  @Test
  void followsAFormulaToItsMaterials() {
    Snapshot snapshot =
        snapshot(HOUSE.replace("  price     plain-syrup  9.00 per kg\n", ""), FORMULAS);
    double left = scaling(snapshot, "plain-syrup", 1000).cooked().mass().grams();
    Cost cost = costs(snapshot).of("plain-syrup", Mass.ofGrams(left));
    assertEquals(0.72, cost.low(), 1e-9);
  }

  /** A litre of the extract weighs what its density says. */
  @Test
  void turnsALitreIntoGramsByTheDensity() {
    Snapshot snapshot = snapshot(HOUSE, FORMULAS);
    double litre = 1000 * density(snapshot);
    assertEquals(88, costs(snapshot).of("vanilla-extract", Mass.ofGrams(litre)).low(), 1e-9);
  }

  private static double density(Snapshot snapshot) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, "vanilla-extract")
        .flatMap(entry -> entry.declaration())
        .map(Ingredient.class::cast)
        .flatMap(one -> one.density())
        .orElseThrow()
        .gramsPerMillilitre();
  }

  @Test
  void saysWhatHasNoPrice() {
    Snapshot snapshot = snapshot(
        HOUSE,
        FORMULAS
            .replace("10.00 %   harbour-paste", "10.00 %   quiet-paste")
            .replace("mix       plain-syrup, harbour-paste", "mix       plain-syrup, quiet-paste"));
    Cost cost = costs(snapshot).ofBatch(scaling(snapshot, "sweet-water", 1000));
    assertFalse(cost.isComplete());
    assertEquals(Set.of("quiet-paste"), cost.missing());
    assertEquals(4.50, cost.low(), 1e-9);
  }

  /** Two formulas that hold each other are a mistake that a rule tells; here they cost nothing known. */
  @Test
  void endsInACircle() {
    Snapshot snapshot = snapshot(HOUSE, """
        formula one "One"
          percent of charge
          batch   100 g

        stage pan
          100.00 % other

        formula other "Other"
          percent of charge
          batch   100 g

        stage pan
          100.00 % one
        """);
    assertFalse(costs(snapshot).of("one", Mass.ofGrams(100)).isComplete());
  }
}
