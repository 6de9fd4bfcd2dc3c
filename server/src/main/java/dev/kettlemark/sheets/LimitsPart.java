package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.answers.CookPlaces;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Limit.Range;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a line decides by, and what it does when a limit is missed; the amounts are those of its batch. */
final class LimitsPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.LIMITS;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() != SheetReader.PRODUCTION) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      List<Row> rows = new ArrayList<>();
      for (int i = 0; i < made.process().stages().size(); i++) {
        steps(made, i).forEach(limit -> rows.addAll(limit.rows()));
      }
      finished(made).forEach(limit -> rows.addAll(limit.rows()));
      if (!rows.isEmpty()) {
        blocks.add(grid(made, rows));
      }
      List<Phrase> below = new ArrayList<>();
      if (!CookPlaces.of(made.formula()).isEmpty()) {
        below.add(Phrase.sentence("limits.browned"));
      }
      below.addAll(undeclared(made));
      if (!below.isEmpty()) {
        blocks.add(new Block.Lines(below));
      }
    }
    return blocks;
  }

  private static Block grid(Made made, List<Row> rows) {
    return new Block.Grid(
        Phrase.words("limits.caption", made.title(), Phrase.value(YieldPart.charge(made))),
        List.of(
            Column.text("column.point"),
            Column.figure("column.target"),
            Column.figure("column.lower"),
            Column.figure("column.upper"),
            Column.text("column.with")),
        rows);
  }

  private static List<Limit> steps(Made made, int index) {
    StageResult stage = made.process().stages().get(index);
    int ready = MethodPart.isWarmed(stage.stage()) ? 1 : 0;
    List<Limit> limits = new ArrayList<>();
    for (int i = 0; i < stage.steps().size(); i++) {
      StepResult step = stage.steps().get(i);
      String id = made.name() + "." + stage.name() + "." + (i + 1);
      Phrase name = Phrase.words(
          "control.step",
          Phrase.given((index + 1) + "." + (i + 1 + ready)),
          Phrase.words("step." + step.step().word().value()));
      limits.addAll(CookLimits.of(made, step, name, id));
      warmth(made, step.step(), name, id).ifPresent(limits::add);
      checked(made, step, name, id).ifPresent(limits::add);
    }
    return limits;
  }

  /** Steps that only warm, cool, temper or fill: too cold and too warm are mended by heat alone. */
  private static Optional<Limit> warmth(Made made, Statement step, Phrase name, String id) {
    Optional<Verb> verb = Verb.of(step.word().value());
    Optional<String> key = verb.flatMap(LimitsPart::warmthKey);
    Stream<Connective> words = Stream.of(Connective.TO, Connective.AT, Connective.ABOVE);
    Optional<Located<Quantity>> written = words
        .flatMap(word -> step.figure(word, Unit.Dimension.TEMPERATURE).stream())
        .findFirst();
    boolean isLeast = step.figure(Connective.ABOVE, Unit.Dimension.TEMPERATURE).isPresent();
    return key.flatMap(word -> written
        .flatMap(figure -> SheetFigure.of(id + ".limit", figure.value()))
        .map(figure -> new Limit(
            Phrase.words("limits.point", name, Phrase.words("limits.figure.temperature")),
            isLeast ? least(figure, id) : Range.of(figure, id + ".limit"),
            LimitTools.thermometer(made),
            List.of(Phrase.sentence("limits." + word + ".below")),
            isLeast ? List.of() : List.of(Phrase.sentence("limits." + word + ".above")))));
  }

  private static Range least(SheetFigure figure, String id) {
    Range range = Range.of(figure, id + ".limit");
    SheetFigure lowest = range.low().or(range::target).orElse(figure);
    return new Range(Optional.empty(), Optional.of(lowest), Optional.empty());
  }

  private static Optional<String> warmthKey(Verb verb) {
    return switch (verb) {
      case TEMPER -> Optional.of("temper");
      case WARM, COOL, HOLD -> Optional.of("warmth");
      case DEPOSIT, SPREAD, PIPE -> Optional.of("fill");
      default -> Optional.empty();
    };
  }

  /** {@code check density 0.45 g/mL ± 0.03} and its like. */
  private static Optional<Limit> checked(Made made, StepResult step, Phrase name, String id) {
    if (!step.step().is(Verb.CHECK.word()) || step.before().size() != 1) {
      return Optional.empty();
    }
    MassLimits limits = new MassLimits(made, step.before().get(0), name, id);
    List<String> words = step.step().objectNames().stream().map(Located::value).toList();
    Optional<SheetFigure> density = figure(step, Unit.Dimension.DENSITY, id);
    Optional<SheetFigure> acidity = figure(step, Unit.Dimension.ACIDITY, id);
    if (density.isPresent()) {
      return limits.density(density);
    }
    if (acidity.isPresent()) {
      return acidity.map(written -> limits.acidity(written, acids(made)));
    }
    return step.step()
        .figure(Unit.Dimension.SHARE)
        .filter(figure -> words.contains("solids") || words.contains("brix"))
        .map(figure -> limits.solids(figure.value()));
  }

  private static Optional<SheetFigure> figure(
      StepResult step, Unit.Dimension dimension, String id) {
    return step.step()
        .figure(dimension)
        .flatMap(figure -> SheetFigure.of(id + ".checked", figure.value()));
  }

  private static List<Limit> finished(Made made) {
    List<Limit> limits = new ArrayList<>();
    finishedMass(made.process()).ifPresent(mass -> {
      MassLimits of = new MassLimits(made, mass, Phrase.words("limits.finished"), made.name());
      of.yieldShare(FiguresPart.wanted(made, "yield")).ifPresent(limits::add);
      of.moisture(FiguresPart.wanted(made, "moisture")).ifPresent(limits::add);
      of.density(FiguresPart.wanted(made, "density")).ifPresent(limits::add);
      of.overrun(FiguresPart.wanted(made, "overrun")).ifPresent(limits::add);
      FiguresPart.wanted(made, "acidity")
          .ifPresent(written -> limits.add(of.acidity(written, acids(made))));
      FiguresPart.wanted(made, "water-activity")
          .ifPresent(written ->
              limits.add(of.activity(written, FiguresPart.activity(made.name(), made.figures()))));
    });
    return limits;
  }

  private static Optional<StageParcel> finishedMass(ProcessResult process) {
    return process.last().map(StageResult::left);
  }

  private static List<Phrase> acids(Made made) {
    return made.formula().formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .distinct()
        .filter(name -> made.formula()
            .material(name)
            .flatMap(Material::ingredient)
            .filter(one -> one.hasRole("acidulant"))
            .isPresent())
        .map(name -> Names.material(name, made))
        .toList();
  }

  /** What nobody has declared must be measured all the same. */
  private static List<Phrase> undeclared(Made made) {
    List<Phrase> lines = new ArrayList<>();
    boolean isAciditySaid = FiguresPart.wanted(made, "acidity").isPresent()
        || made.formula()
            .formula()
            .steps()
            .anyMatch(step -> step.is(Verb.CHECK.word())
                && step.figure(Unit.Dimension.ACIDITY).isPresent());
    if (!isAciditySaid) {
      lines.add(Phrase.sentence("limits.undeclared.acidity"));
    }
    if (FiguresPart.wanted(made, "water-activity").isEmpty()) {
      lines.add(Phrase.sentence(
          "limits.undeclared.activity",
          Phrase.value(FiguresPart.activity(made.name(), made.figures()))));
    }
    return lines;
  }
}
