package dev.kettlemark.sheets;

import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;

/** The steps that have a limit, with what the model expects there and a place for what is measured. */
final class ControlPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.CONTROL;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (!shown.isFor(SheetReader.PRODUCTION, SheetReader.BENCH)) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      List<Row> rows = new ArrayList<>();
      for (int i = 0; i < made.process().stages().size(); i++) {
        rows(shown, made, i, rows);
      }
      if (!rows.isEmpty()) {
        blocks.add(new Block.Grid(
            Phrase.words("control.caption", made.title()),
            List.of(
                Column.text("column.step"),
                Column.text("column.limit"),
                Column.text("column.expected"),
                Column.blank("column.measured")),
            rows));
      }
    }
    return blocks;
  }

  private static void rows(Shown shown, Made made, int index, List<Row> rows) {
    StageResult stage = made.process().stages().get(index);
    int ready = MethodPart.isWarmed(stage.stage()) ? 1 : 0;
    for (int i = 0; i < stage.steps().size(); i++) {
      StepResult step = stage.steps().get(i);
      String id = made.name() + "." + stage.name() + "." + (i + 1);
      Phrase limit = StepSentence.limits(step.step(), made, shown.reader(), id);
      Phrase expected = expected(step, id);
      if (!limit.isNothing() || !expected.isNothing()) {
        Phrase name = Phrase.words(
            "control.step",
            Phrase.given((index + 1) + "." + (i + 1 + ready)),
            Phrase.words("step." + step.step().word().value()));
        rows.add(Row.of(name, limit, expected, Phrase.nothing()));
      }
    }
  }

  private static Phrase expected(StepResult step, String id) {
    List<Phrase> expected = new ArrayList<>();
    step.merged()
        .ifPresent(band ->
            expected.add(Phrase.value(SheetFigure.heat(id + ".merged", Outcome.known(band)))));
    boolean isCook = Verb.of(step.step().word().value())
        .filter(verb -> verb.effect() == Verb.Effect.COOK)
        .isPresent();
    if (isCook && step.after().size() == 1) {
      Outcome<Mass> mass = step.after().get(0).mass();
      Mass slack = step.after().get(0).slack();
      Outcome<Band<Ratio>> solids = Outcome.both(
          step.after().get(0).composition(), mass, (made, left) -> solids(made, left, slack));
      expected.add(Phrase.words(
          "control.solids", Phrase.value(SheetFigure.share(id + ".solids", solids, 1))));
      expected.add(Phrase.words(
          "control.left", Phrase.value(SheetFigure.estimate(id + ".left", mass, slack))));
    }
    return expected.isEmpty() ? Phrase.nothing() : new Phrase.Listing(expected);
  }

  private static Band<Ratio> solids(Composition made, Mass left, Mass slack) {
    double solids = made.solids().fraction() * left.grams();
    double off = Math.min(slack.grams(), left.grams() - solids);
    return new Band<>(
        Ratio.ofFraction(solids / (left.grams() + off)),
        Ratio.ofFraction(solids / (left.grams() - off)));
  }
}
