package dev.kettlemark.sheets;

import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is done, step by step, in the reader's words. */
final class MethodPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.METHOD;
  }

  @Override
  public List<Block> of(Shown shown) {
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      if (shown.made().size() > 1) {
        blocks.add(new Block.Heading(made.title()));
      }
      for (int i = 0; i < made.process().stages().size(); i++) {
        stage(shown, made, i, blocks);
      }
    }
    finish(shown, blocks);
    blocks.addAll(SheetPictures.of(shown, PictureKind.FLOW));
    return blocks;
  }

  private static void stage(Shown shown, Made made, int index, List<Block> blocks) {
    StageResult result = made.process().stages().get(index);
    Stage stage = result.stage();
    List<Block.Step> steps = new ArrayList<>();
    ready(stage, made).ifPresent(text -> steps.add(new Block.Step(text, List.of())));
    for (int i = 0; i < result.steps().size(); i++) {
      steps.add(step(shown, made, index, i));
    }
    if (steps.isEmpty()) {
      return;
    }
    Phrase vessel = stage
        .vessel()
        .map(v -> Phrase.words("method.in", Names.of(v.value(), made, shown.reader())))
        .orElse(Phrase.nothing());
    blocks.add(new Block.Heading(
        Phrase.words(
            "formula.stage",
            Phrase.given(Integer.toString(index + 1)),
            Phrase.together(Names.stage(stage, made), vessel)),
        Optional.of(new Mark(made.name(), Mark.Kind.STAGE, index, 0))));
    blocks.add(new Block.Steps(index + 1, steps));
  }

  /** Whether the stage's own first step is to have something warm. */
  static boolean isWarmed(Stage stage) {
    return stage.amounts().stream().anyMatch(line -> line.at().isPresent());
  }

  /** What must be warm before the stage begins. */
  private static Optional<Phrase> ready(Stage stage, Made made) {
    List<Phrase> warm = new ArrayList<>();
    for (AmountLine line : stage.amounts()) {
      line.at()
          .ifPresent(at -> warm.add(Phrase.words(
              "method.at",
              Names.material(line.ingredient().value(), made),
              Phrase.value(SheetFigure.written(
                  made.name() + "." + stage.name().value() + "."
                      + line.ingredient().value() + ".at",
                  SheetUnit.CELSIUS,
                  at.value().celsius(),
                  1)))));
    }
    return warm.isEmpty()
        ? Optional.empty()
        : Optional.of(Phrase.sentence("method.ready", new Phrase.Listing(warm)));
  }

  private static Block.Step step(Shown shown, Made made, int inStage, int index) {
    StageResult stage = made.process().stages().get(inStage);
    StepResult result = stage.steps().get(index);
    Statement step = result.step();
    String id = made.name() + "." + stage.name() + "." + (index + 1);
    List<Phrase> remarks = new ArrayList<>();
    step.text()
        .ifPresent(text -> remarks.add(Phrase.sentence(made.titles().written(text.value()))));
    looks(shown, step, remarks);
    rate(made, result, id).ifPresent(rate -> remarks.add(Phrase.sentence("method.rate", rate)));
    result.merged().ifPresent(band -> {
      if (shown.reader() != SheetReader.BENCH) {
        remarks.add(Phrase.sentence(
            "method.merged", Phrase.value(SheetFigure.heat(id + ".merged", Outcome.known(band)))));
      }
    });
    if (shown.reader() == SheetReader.HOME && isCook(step)) {
      remarks.add(Phrase.sentence("method.home.cook"));
    }
    if (shown.reader() == SheetReader.HOME && step.is(Verb.STREAM.word())) {
      remarks.add(Phrase.sentence("method.home.stream"));
    }
    return new Block.Step(
        StepSentence.of(step, made, shown.reader(), id),
        remarks,
        Optional.of(new Mark(made.name(), Mark.Kind.STEP, inStage, index)));
  }

  /** At home a state is told by its look. */
  private static void looks(Shown shown, Statement step, List<Phrase> remarks) {
    if (shown.reader() != SheetReader.HOME) {
      return;
    }
    Stream.concat(step.names(Connective.UNTIL).stream(), step.names(Connective.TO).stream())
        .map(Located::value)
        .flatMap(word -> State.of(word).stream())
        .distinct()
        .forEach(state -> remarks.add(Phrase.sentence(
            "method.looks", Names.state(state), Phrase.words("look." + state.word()))));
  }

  static boolean isCook(Statement step) {
    return step.is(Verb.COOK.word())
        && step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isPresent();
  }

  /** How fast something is poured: its mass over the time that the step gives. */
  private static Optional<Phrase> rate(Made made, StepResult result, String id) {
    Statement step = result.step();
    Optional<Double> seconds = step.figure(Connective.OVER, Unit.Dimension.TIME)
        .map(time -> time.value().middleInBase().doubleValue())
        .filter(time -> time > 0);
    List<String> poured = step.objects().stream()
        .flatMap(o -> o.value() instanceof Operand.Name n ? Stream.of(n.word()) : Stream.empty())
        .toList();
    if (seconds.isEmpty() || poured.size() != 1 || !made.isStage(poured.get(0))) {
      return Optional.empty();
    }
    Outcome<Mass> mass = made.process()
        .stage(poured.get(0))
        .map(stage -> stage.left().mass())
        .orElseGet(() -> Outcome.known(Mass.ZERO));
    return mass.toOptional()
        .filter(m -> m.grams() > 0)
        .map(m -> Phrase.value(new SheetFigure(
            id + ".rate",
            SheetUnit.GRAM_PER_SECOND,
            Outcome.known(SheetFigure.Reach.of(m.grams() / seconds.get())),
            SheetFigure.Spread.BAND,
            m.grams() / seconds.get() < 10 ? 1 : 0,
            SheetFigure.Basis.MODEL)));
  }

  /** What lies on and around the centre is put there at the end. */
  private static void finish(Shown shown, List<Block> blocks) {
    List<Block.Step> steps = new ArrayList<>();
    shown
        .product()
        .ifPresent(product -> product.product().parts().stream()
            .filter(part -> !part.role().equals("centre"))
            .forEach(part -> part.material()
                .ifPresent(name -> steps.add(new Block.Step(
                    Phrase.sentence("finish." + part.role(), shown.named(name.value())),
                    List.of())))));
    if (!steps.isEmpty()) {
      int number =
          shown.made().stream().mapToInt(m -> m.process().stages().size()).max().orElse(0);
      blocks.add(new Block.Heading(Phrase.words(
          "formula.stage",
          Phrase.given(Integer.toString(number + 1)),
          Phrase.words("method.finish"))));
      blocks.add(new Block.Steps(number + 1, steps));
    }
  }
}
