package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Change;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.answers.CookTemperature;
import dev.kettlemark.answers.DoctorExchange;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.Wish;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Formula;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** An answer that is put into the text of a sample gives, read anew, what was asked for. */
class AnswerRoundTripTest {

  /** With room for the last digit of the search. */
  private static final double HALF_A_TENTH = 0.0501;

  private final List<Document> samples = FeatureFixture.samples("gannet-slip");
  private final Snapshot snapshot = FeatureFixture.snapshot(samples);

  /** A formula of the samples with the section that writes it. */
  private record Written(Document document, Entry entry, ComputedFormula formula) {}

  private List<Written> formulas() {
    List<Written> found = new ArrayList<>();
    for (Document document : samples) {
      for (Entry entry : document.entries()) {
        if (entry.declaration().filter(Formula.class::isInstance).isPresent()) {
          Formulas.computed(snapshot, entry)
              .ifPresent(formula -> found.add(new Written(document, entry, formula)));
        }
      }
    }
    return found;
  }

  private ComputedFormula reread(Written written, Answer answer) {
    List<TextEdit> edits = new AnswerEdits(snapshot, written.entry(), written.formula())
        .of(answer.changes())
        .orElseThrow();
    Document changed = Document.of(
        written.document().uri(),
        TextEdit.applyAll(written.document().text().source().text(), edits));
    List<Document> all = new ArrayList<>(samples);
    all.replaceAll(one -> one.uri().equals(changed.uri()) ? changed : one);
    String name = written.formula().formula().name().value();
    return Formulas.computed(name).ask(FeatureFixture.snapshot(all)).orElseThrow();
  }

  private static double figure(Wish wish, ComputedFormula formula, StepPlace place) {
    return wish.figure(formula, place.stage()).toOptional().orElseThrow();
  }

  /** Temperatures are told to a tenth of a degree; what is wanted lies within what the half of it changes. */
  @Test
  void cooksToTheWaterAndTheActivityAskedFor() {
    AtomicInteger answers = new AtomicInteger();
    int rounds = Chance.rounds(3, random -> {
      for (Written written : formulas()) {
        for (StepPlace place : CookPlaces.of(written.formula())) {
          double change = 1 + (random.nextDouble() - 0.5) * 0.3;
          double water =
              figure(new Wish.FinishedMoisture(Ratio.ONE), written.formula(), place) * change;
          double activity = figure(new Wish.Activity(Ratio.ONE), written.formula(), place) * change;
          answers.addAndGet(
              check(written, place, new Wish.FinishedMoisture(Ratio.ofFraction(water))));
          answers.addAndGet(check(written, place, new Wish.Activity(Ratio.ofFraction(activity))));
        }
      }
    });
    assertTrue(answers.get() >= 10 * rounds, "only " + answers + " answers");
  }

  private int check(Written written, StepPlace place, Wish wish) {
    Optional<Answer> answer = CookTemperature.of(written.formula(), place, wish).toOptional();
    answer.ifPresent(known -> {
      String told = written.document().uri() + ": " + known.instruction();
      Change.Cook cook = (Change.Cook) known.changes().get(0);
      double after = figure(wish, reread(written, known), place);
      assertEquals(figureAt(written, cook, wish, 0).orElseThrow(), after, 1e-9, told);
      double wet = figureAt(written, cook, wish, -HALF_A_TENTH).orElse(after + 1e-3);
      double dry = figureAt(written, cook, wish, HALF_A_TENTH).orElse(after - 1e-3);
      assertTrue(
          dry <= wish.wanted() && wish.wanted() <= wet,
          () -> told + " for " + wish.wanted() + ", not " + after);
    });
    return answer.isPresent() ? 1 : 0;
  }

  /** The figure somewhat hotter than told; empty beyond the end of the boiling model. */
  private static Optional<Double> figureAt(
      Written written, Change.Cook cook, Wish wish, double kelvin) {
    Temperature target = Temperature.ofKelvin(cook.target().kelvin() + kelvin);
    ComputedFormula cooked =
        written.formula().experiment().cooking(cook.place(), target).compute();
    return wish.figure(cooked, cook.place().stage()).toOptional();
  }

  @Test
  void exchangesToTheDoctorShareAskedFor() {
    AtomicInteger answers = new AtomicInteger();
    int rounds = Chance.rounds(
        1,
        random -> formulas().forEach(written -> {
          List<StageResult> stages = written.formula().process().stages();
          for (int stage = 0; stage < stages.size(); stage++) {
            Ratio wanted = Ratio.ofPercent(10 + random.nextInt(50));
            Optional<Answer> answer = DoctorExchange.of(
                    written.formula(), new Shelf(snapshot), stage, wanted, Optional.empty())
                .toOptional();
            if (answer.isPresent()) {
              ComputedFormula after = reread(written, answer.get());
              String told = written.document().uri() + ": " + answer.get().instruction();
              assertEquals(
                  wanted.percent(),
                  DoctorExchange.shareNow(after, stage)
                      .toOptional()
                      .orElseThrow()
                      .percent(),
                  0.3,
                  told);
              assertEquals(written.formula().amounts().total(), after.amounts().total(), told);
              answers.incrementAndGet();
            }
          }
        }));
    assertTrue(answers.get() >= 8 * rounds, "only " + answers + " answers");
  }
}
