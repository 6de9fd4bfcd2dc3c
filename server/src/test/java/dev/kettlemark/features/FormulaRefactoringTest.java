package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Today;
import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What makes another batch, variant, composition or trial of a formula. */
class FormulaRefactoringTest {

  private static final String FOAM = """
      house bench "Bench"
        altitude  0 m
        frame     tray    measures 300 x 200 x 10 mm
        mould     dome    has 24 pieces of 10 mL

      formula meringue "Meringue"
        percent   of charge
        batch     1000 g
        texture   soft
        expect    density 0.50 g/mL
        makes     40 pieces of 20 g with 4 % loss

      stage foam
         3.00 %             egg-white-powder
        70.00 %             caster-sugar
         q.s.               water
        blend     egg-white-powder, caster-sugar until lump-free
        sprinkle  egg-white-powder into water while whisking on low
        stand     for 30 min until hydrated
        whip      on high until stiff-peak

      stage slab
        all of              foam
        spread    foam into tray
      """;

  private static final String SYRUP = """
      formula syrup "Syrup"
        percent   of charge
        batch     1000 g

      stage pot
        50.00 %             white-sugar
        20.00 %             glucose-syrup-42
        30.00 %             water
        boil      under lid until dissolved
      """;

  private static double solids(String text) {
    ComputedFormula formula = RefactoringFixture.formula(text, "syrup");
    double solids = 0;
    for (LineAmount line : formula.amounts().lines()) {
      Composition composition = formula
          .material(line.line().ingredient().value())
          .flatMap(material -> material.composition().toOptional())
          .orElseThrow();
      solids += line.share().orElse(BigFraction.ZERO).doubleValue()
          * composition.solids().fraction();
    }
    return solids;
  }

  @Test
  void scalesToPiecesFramesAndWhatIsAtHand() {
    RefactoringFixture fixture = RefactoringFixture.at(FOAM, "   3.00 %");
    List<Refactoring> found = ScaleRefactoring.at(fixture.site());
    List<String> titles = RefactoringFixture.titles(found);
    // 40 × 20 g / 0.96 = 833.33 g; a frame of 600 mL at 0.50 g/mL holds 300 g; nothing boils away.
    assertTrue(
        titles.contains("Scale to 40 × 20 g: weigh in 833.4 g, 800.1 g finished"), "" + titles);
    assertTrue(
        titles.contains("Scale to 1 frame tray: weigh in 300 g, 300.0 g finished"), "" + titles);
    // The batch holds 30 g of powder; the next round weight is 50 g.
    String after = fixture.applied(found, "Scale to 50 g egg-white-powder: weigh in 1666.7 g");
    assertTrue(after.contains("  batch     1666.7 g\n"), after);
    assertTrue(titles.stream().noneMatch(title -> title.contains("dome")), "" + titles);
  }

  @Test
  void offersNoBatchThatItHasAlready() {
    String text = FOAM.replace("1000 g", "300 g");
    assertTrue(
        RefactoringFixture.titles(
                ScaleRefactoring.at(RefactoringFixture.at(text, "percent").site()))
            .stream()
            .noneMatch(title -> title.contains("frame")));
  }

  /** The pantry says: soya whipping protein stands in for egg white powder at 75 %. */
  @Test
  void makesAVariantWithoutEggAndOneWithEgg() {
    RefactoringFixture fixture = RefactoringFixture.at(FOAM, "formula meringue");
    List<Refactoring> found = VariantRefactoring.at(fixture.site());
    assertEquals(
        "Make a variant without egg: 2.25 % soy-whipping-protein", found.get(0).title());
    String after = fixture.applied(found, "Make a variant without egg");
    assertTrue(after.startsWith(FOAM.stripTrailing()), after);
    assertTrue(
        after.contains("variant meringue-without-egg \"Meringue, without egg\" of meringue\n"
            + "  status    draft\n"
            + "  replace   egg-white-powder  by 2.25 % soy-whipping-protein in foam\n"
            + "  note      \"Beside meringue with egg: "),
        after);
    ComputedFormula variant = RefactoringFixture.formula(after, "meringue-without-egg");
    assertEquals(BigFraction.ONE, variant.amounts().total());
    String plant = FOAM.replace("egg-white-powder", "soy-whipping-protein");
    RefactoringFixture other = RefactoringFixture.at(plant, "formula meringue");
    assertTrue(other
        .applied(VariantRefactoring.at(other.site()), "Make a variant with egg: 4.00 %")
        .contains("replace   soy-whipping-protein  by 4.00 % egg-white-powder in foam\n"));
  }

  @Test
  void makesNoVariantOfAVariantOrOfWhatHoldsNoEgg() {
    assertEquals(
        List.of(), VariantRefactoring.at(RefactoringFixture.at(SYRUP, "percent").site()));
    String text = FOAM + "\nvariant second of meringue\n  batch 900 g\n";
    assertEquals(
        List.of(),
        VariantRefactoring.at(RefactoringFixture.at(text, "variant second").site()));
  }

  @Test
  void exchangesSugarsAtEqualSolids() {
    RefactoringFixture fixture = RefactoringFixture.at(SYRUP, "  50.00 %");
    String after =
        fixture.applied(SugarRefactoring.at(fixture.site()), "Exchange 5.00 % white-sugar for ");
    assertTrue(after.contains("  45.00 %             white-sugar\n"), after);
    assertEquals(solids(SYRUP), solids(after), 1e-4);
    assertEquals(
        BigFraction.ONE, RefactoringFixture.formula(after, "syrup").amounts().total());
    RefactoringFixture glucose = RefactoringFixture.at(SYRUP, "  20.00 %");
    List<Refactoring> found = SugarRefactoring.at(glucose.site());
    String back = glucose.applied(found, "Exchange 2.00 % glucose-syrup-42 for ");
    assertEquals(solids(SYRUP), solids(back), 1e-4);
    String all = glucose.applied(found, "Exchange 20.00 % glucose-syrup-42 for ");
    assertFalse(all.contains("glucose-syrup-42"), all);
    assertEquals(solids(SYRUP), solids(all), 1e-4);
    RefactoringFixture water = RefactoringFixture.at(SYRUP, "  30.00 %");
    assertEquals(List.of(), SugarRefactoring.at(water.site()));
  }

  @Test
  void beginsTheNextTrialWithWhatIsPredicted() {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(FeatureFixture.samples("gannet-slip"));
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    NextTrial trial = NextTrial.of(snapshot, "heather-nougat").orElseThrow();
    assertEquals("T-022", trial.name());
    assertTrue(
        trial
            .text()
            .startsWith("trial T-022 of heather-nougat on 2026-11-25 at gannet-slip\n"
                + "  version   6\n  batch     1800 g\n"),
        trial.text());
    assertTrue(trial.text().contains("# measured  ? °C        end of first-syrup"), trial.text());
    assertTrue(trial.text().contains("predicted 139.0–141.0 °C"), trial.text());
    assertTrue(trial.text().contains("? g/mL      density of slab"), trial.text());
    assertEquals("", NextTrial.of(snapshot, "nothing").map(NextTrial::name).orElse(""));
    // A comment is no reading: nothing that was predicted counts as measured.
    Document document = Document.of("trial.kettle", trial.text());
    Snapshot with = snapshot.with(snapshot.library().with(document), Today.DAY);
    assertEquals(
        0,
        TrialReport.of(with, Optional.of("heather-nougat")).trials().stream()
            .filter(item -> item.trial().name().value().equals("T-022"))
            .flatMap(item -> item.compared().stream())
            .mapToInt(compared -> compared.readings().size())
            .sum());
  }

  @Test
  void everyPredictionOfANextTrialCanBeMeasured() {
    List<Document> samples = FeatureFixture.samples("gannet-slip");
    Snapshot snapshot = FeatureFixture.snapshot(samples);
    for (String name : List.of("heather-nougat", "chewy-caramel", "heather-nougat-plant")) {
      String text = NextTrial.of(snapshot, name)
          .orElseThrow()
          .text()
          .replaceAll("# measured  \\?", "measured 1")
          .replaceAll("predicted.*", "");
      Document document = Document.of("trial.kettle", text);
      Snapshot with = Snapshot.of(snapshot.library().with(document));
      String trial = text.substring(6, text.indexOf(" of "));
      TrialReport.of(with, Optional.of(name)).trials().stream()
          .filter(item -> item.trial().name().value().equals(trial))
          .flatMap(item -> item.compared().stream())
          .flatMap(compared -> compared.readings().stream())
          .forEach(reading -> assertTrue(
              reading.predicted().isKnown(), name + ": " + reading.measurement().subject()));
    }
  }

  @Test
  void showsWhatAnotherMaterialWouldChange() {
    FeatureFixture fixture = FeatureFixture.of(FOAM);
    Outcome<WhatIf> answer =
        WhatIf.of(fixture.snapshot(), "meringue", "egg-white-powder", "soy-whipping-protein");
    String page = answer.map(WhatIf::markdown).orElse("");
    assertTrue(
        page.contains("# What if egg-white-powder of meringue were soy-whipping-protein"), page);
    assertTrue(page.contains("soy-whipping-protein | "), page);
    assertTrue(page.contains("2.25 %"), page);
    assertTrue(page.contains("| egg | yes |") || page.contains("egg"), page);
    String own = WhatIf.of(
            fixture.snapshot(), "meringue", "egg-white-powder", "4.00 % soy-whipping-protein")
        .map(WhatIf::markdown)
        .orElse("");
    assertTrue(own.contains("4.00 %"), own);
    String variant = WhatIf.of(
            FeatureFixture.of(FOAM + "\nvariant second of meringue\n  batch 900 g\n")
                .snapshot(),
            "second",
            "caster-sugar",
            "60.00 % trehalose")
        .map(WhatIf::markdown)
        .orElse("");
    assertTrue(variant.contains("60.00 %"), variant);
  }

  @Test
  void saysWhyItCannotTell() {
    Snapshot snapshot = FeatureFixture.of(FOAM).snapshot();
    assertEquals(
        "`meringue` weighs no `honey`", because(WhatIf.of(snapshot, "meringue", "honey", "water")));
    assertEquals(
        "nobody has described `moon-dust`",
        because(WhatIf.of(snapshot, "meringue", "caster-sugar", "moon-dust")));
    assertEquals(
        "the library has no formula `nothing`",
        because(WhatIf.of(snapshot, "nothing", "caster-sugar", "water")));
  }

  private static String because(Outcome<WhatIf> outcome) {
    return outcome.fold(known -> "", unknown -> unknown.because());
  }

  @Test
  void opensThePageForWhatThePantryOffers() {
    RefactoringFixture fixture = RefactoringFixture.at(FOAM, "   3.00 %");
    Refactoring offer = WhatIf.at(fixture.site()).get(0);
    assertEquals(
        "What if egg-white-powder were soy-whipping-protein: show what changes", offer.title());
    assertEquals("kettlemark.whatIf.open", offer.opens().orElseThrow().command());
    assertTrue(offer.edits().isEmpty());
  }

  @Test
  void cutsTitlesThatAreTooLong() {
    assertEquals("short, and more", ActionTitle.of("short", ", and more", ", " + "x".repeat(80)));
    assertEquals(72, ActionTitle.of("y".repeat(90)).length());
  }
}
