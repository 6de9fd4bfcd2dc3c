package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What goes in comes out: charge = what is left + what evaporated + what nobody took. */
class MassBalanceTest {

  private static final List<Document> PANTRY = Pantry.documents();
  private static final double RELATIVE = 1e-9;

  private static final List<String> MATERIALS = List.of(
      "white-sugar",
      "glucose-syrup-42",
      "water",
      "honey",
      "sea-salt",
      "butter",
      "egg-white-powder",
      "roasted-almond",
      "gelatine-200",
      "agar",
      "guar-gum",
      "nobody-knows");

  private static final List<String> STEPS = List.of(
      "mix",
      "cook to 121 °C +- 1",
      "cook to 145 °C",
      "cook to 160 °C",
      "boil for 2 min",
      "boil to 108 °C",
      "warm to 95 °C",
      "cool to 40 °C",
      "whip until soft-peak",
      "rest for 12 h",
      "set for 12 h",
      "cut",
      "mix water, white-sugar",
      "fold honey",
      "pour water into honey",
      "stream s0 into s1 over 60 s",
      "whip honey",
      "fold s0",
      "temper to 31 °C",
      "soak for 20 min",
      "hold at 85 °C for 3 min",
      "stand for 30 min",
      "check density 0.50 g/mL",
      "check density 9 g/mL",
      "whip for 5 min until stiff-peak");

  @Test
  void closesForEverySample() {
    Snapshot snapshot = Snapshot.of(Library.of(SampleTexts.libraryWithPantry()));
    int formulas = 0;
    for (Document document : SampleTexts.library()) {
      for (Entry entry : document.entries()) {
        var formula = Formulas.computed(snapshot, entry);
        if (formula.isPresent()) {
          assertCloses(formula.get(), document.uri());
          assertTrue(formula.get().process().cooked().isKnown(), document.uri());
          formulas++;
        }
      }
    }
    assertTrue(formulas >= 12, "only " + formulas + " formulas");
  }

  /** Hot parcels, drying out, parts taken, parcels that no step joins, two stages of one name. */
  @Test
  void closesForRandomFormulas() {
    AtomicInteger known = new AtomicInteger();
    AtomicInteger boiled = new AtomicInteger();
    int rounds = Chance.rounds(2500, random -> {
      String text = randomFormula(random);
      ComputedFormula formula = computed(text);
      assertTellsEveryFigure(formula, text);
      if (assertCloses(formula, text)) {
        known.incrementAndGet();
        boiled.addAndGet(formula.process().evaporated().grams() > 0 ? 1 : 0);
      }
    });
    assertTrue(
        known.get() > 0.28 * rounds, "only " + known + " formulas could be followed to the end");
    assertTrue(boiled.get() > 0.12 * rounds, "only " + boiled + " formulas boiled");
  }

  /** Steam that leaves where two hot masses meet is vapour as well. */
  @Test
  void countsTheSteamOfAMeetingThatNoStepBringsAbout() {
    ComputedFormula formula = computed("""
        formula bench
          batch 1000 g
        stage s0
          80 % white-sugar
          10 % water
          cook to 160 °C
        stage s1
          10 % water at 99 °C
          all of s0
        """);
    assertTrue(assertCloses(formula, "a hot meeting"));
    assertTrue(formula.process().stages().get(1).evaporated().grams() > 0);
  }

  /** Every figure of every mass is told, or unknown for a reason; none is no number, and no share lies off. */
  private static void assertTellsEveryFigure(ComputedFormula formula, String what) {
    for (StageResult stage : formula.process().stages()) {
      MassFigures figures = MassFigures.of(stage.left(), formula.kitchen());
      for (Figure figure : Figure.values()) {
        String told =
            FigureDerivations.of(figures, figure).fold(Derivation::value, Outcome.Unknown::because);
        assertFalse(told.isBlank() || told.contains("NaN"), what + figure + told);
      }
      figures.moisture().ifKnown(band -> assertShares(band, what));
      figures.waterActivity().ifKnown(band -> assertShares(band, what));
      figures.overrun().ifKnown(band -> assertTrue(band.low().fraction() >= 0, what));
    }
  }

  private static void assertShares(Band<Ratio> band, String what) {
    assertTrue(band.low().isShare() && band.high().isShare(), what + band);
  }

  /** Returns whether all masses are known; what is unknown cannot be added up. */
  private static boolean assertCloses(ComputedFormula formula, String what) {
    ProcessResult process = formula.process();
    Outcome<Mass> out = process.cooked().map(CookedWeight::mass);
    for (Outcome<Mass> left : process.leftOver().values()) {
      out = Outcome.both(out, left, Mass::plus);
    }
    double charge = process.charge().mass().grams();
    out.map(mass -> mass.plus(process.evaporated()))
        .ifKnown(mass -> assertEquals(charge, mass.grams(), RELATIVE * Math.max(1, charge), what));
    return out.isKnown();
  }

  private static String randomFormula(Random random) {
    StringBuilder text = new StringBuilder("formula bench\n  batch 1 kg\n");
    int stages = 1 + random.nextInt(4);
    for (int s = 0; s < stages; s++) {
      text.append("stage s").append(random.nextInt(12) == 0 ? 0 : s).append('\n');
      for (int a = random.nextInt(4); a >= 0; a--) {
        String heat = random.nextInt(3) == 0 ? " at " + (5 + random.nextInt(110)) + " °C" : "";
        text.append(
            "  " + (1 + random.nextInt(20)) + " % " + pick(MATERIALS, random) + heat + "\n");
      }
      for (int taken = 0; taken < s; taken++) {
        String share = random.nextInt(3) == 0 ? "part 1/3 of s" : "all of s";
        text.append(random.nextInt(4) == 0 ? "" : "  " + share + taken + "\n");
      }
      for (int step = random.nextInt(4); step > 0; step--) {
        text.append("  " + pick(STEPS, random) + "\n");
      }
    }
    return text.toString();
  }

  private static String pick(List<String> words, Random random) {
    return words.get(random.nextInt(words.size()));
  }

  private static ComputedFormula computed(String text) {
    Document document = Document.of("bench.kettle", text);
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    return Formulas.computed(Snapshot.of(Library.of(all)), document.entries().get(0))
        .orElseThrow();
  }
}
