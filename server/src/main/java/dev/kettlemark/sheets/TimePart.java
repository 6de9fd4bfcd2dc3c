package dev.kettlemark.sheets;

import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How long it takes, as far as the steps say, and when the whisk is started. */
final class TimePart implements SheetPart {

  /** From here on a wait is best begun in the evening before; common practice, no source. */
  private static final double OVERNIGHT = 8 * 3600.0;

  @Override
  public Part.Kind kind() {
    return Part.Kind.TIME;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    double active = 0;
    double passive = 0;
    for (Made made : shown.made()) {
      for (int i = 0; i < made.process().stages().size(); i++) {
        StageResult stage = made.process().stages().get(i);
        int ready = MethodPart.isWarmed(stage.stage()) ? 1 : 0;
        for (int j = 0; j < stage.steps().size(); j++) {
          Statement step = stage.steps().get(j).step();
          Optional<Double> seconds = seconds(step);
          active += isWait(step) ? 0 : seconds.orElse(0.0);
          passive += isWait(step) ? seconds.orElse(0.0) : 0;
          String id = made.name() + "." + stage.name() + "." + (j + 1) + ".time";
          row(step, (i + 1) + "." + (j + 1 + ready), id, seconds).ifPresent(rows::add);
        }
      }
    }
    if (shown.reader() != SheetReader.HOME) {
      blocks.add(new Block.Grid(
          Phrase.words("time.caption"),
          List.of(
              Column.text("column.step"),
              Column.text("column.hands"),
              Column.figure("column.duration")),
          rows));
    }
    blocks.add(new Block.Lines(lines(shown, active, passive)));
    blocks.addAll(SheetPictures.of(shown, PictureKind.TIME));
    return blocks;
  }

  private static List<Phrase> lines(Shown shown, double active, double passive) {
    List<Phrase> lines = new ArrayList<>();
    Phrase waiting = seconds("time.passive", passive);
    lines.add(
        active > 0
            ? Phrase.sentence("time.stated", seconds("time.active", active), waiting)
            : Phrase.sentence("time.stated.waiting", waiting));
    if (passive >= OVERNIGHT && shown.reader() != SheetReader.PRODUCTION) {
      lines.add(Phrase.sentence("time.overnight"));
    }
    shown.made().forEach(made -> whisk(made).ifPresent(lines::add));
    return lines;
  }

  private static Phrase seconds(String id, double seconds) {
    return Phrase.value(SheetFigure.exact(id, SheetUnit.SECOND, seconds, 0));
  }

  private static Optional<Double> seconds(Statement step) {
    return step.figure(Connective.FOR, Unit.Dimension.TIME)
        .or(() -> step.figure(Connective.OVER, Unit.Dimension.TIME))
        .map(time -> time.value().middleInBase().doubleValue());
  }

  static boolean isWait(Statement step) {
    return step.is(Verb.SOAK.word())
        || step.is(Verb.HYDRATE.word())
        || Verb.of(step.word().value())
            .filter(verb -> verb.effect() == Verb.Effect.WAIT)
            .isPresent();
  }

  /** A step that says how long it takes, or a cook, of which nobody can say it. */
  private static Optional<Row> row(
      Statement step, String number, String id, Optional<Double> seconds) {
    boolean isOpen = MethodPart.isCook(step) || step.is(Verb.WHIP.word());
    if (seconds.isEmpty() && !isOpen) {
      return Optional.empty();
    }
    Phrase time = seconds
        .map(s -> Phrase.value(SheetFigure.written(id, SheetUnit.SECOND, s, 0)))
        .orElseGet(() ->
            Phrase.words(MethodPart.isCook(step) ? "time.unknown.heat" : "time.unknown.look"));
    return Optional.of(Row.of(
        Phrase.words(
            "control.step",
            Phrase.given(number),
            Phrase.words("step." + step.word().value())),
        Phrase.words(isWait(step) ? "time.wait" : "time.work"),
        time));
  }

  /** When the foam is started, so that it is ready as the syrup that is poured into it is. */
  static Optional<Phrase> whisk(Made made) {
    for (StageResult stage : made.process().stages()) {
      for (var result : stage.steps()) {
        Statement step = result.step();
        Optional<StageResult> syrup = step.is(Verb.STREAM.word())
            ? step.objectNames().stream()
                .map(Located::value)
                .flatMap(name -> made.process().stage(name).stream())
                .filter(one -> one.steps().stream().anyMatch(s -> MethodPart.isCook(s.step())))
                .findFirst()
            : Optional.empty();
        Optional<StageResult> foam = step.names(Connective.INTO).stream()
            .map(Located::value)
            .flatMap(name -> made.process().stage(name).stream())
            .filter(one -> one.steps().stream().anyMatch(s -> s.step().is(Verb.WHIP.word())))
            .findFirst();
        if (syrup.isPresent() && foam.isPresent()) {
          return Optional.of(whisk(made, syrup.get(), foam.get()));
        }
      }
    }
    return Optional.empty();
  }

  private static Phrase whisk(Made made, StageResult syrup, StageResult foam) {
    List<Double> whips = new ArrayList<>();
    for (var step : foam.steps()) {
      if (step.step().is(Verb.WHIP.word())) {
        whips.add(seconds(step.step()).orElse(Double.NaN));
      }
    }
    double seconds = whips.stream().mapToDouble(Double::doubleValue).sum();
    Phrase name = Names.of(syrup.name(), made, SheetReader.CHEF);
    return Double.isNaN(seconds)
        ? Phrase.sentence("time.whisk.unknown", name)
        : Phrase.sentence("time.whisk", seconds(made.name() + ".whisk-before", seconds), name);
  }
}
