package dev.kettlemark.sheets;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the steps are done with. */
final class EquipmentPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.EQUIPMENT;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    Optional<House> house = shown.house();
    Set<String> tools = new LinkedHashSet<>();
    List<Statement> steps = new ArrayList<>();
    for (Made made : shown.made()) {
      for (Stage stage : made.formula().formula().stages()) {
        stage.vessel().map(Located::value).ifPresent(tools::add);
        steps.addAll(stage.steps());
      }
    }
    steps.stream().flatMap(EquipmentPart::names).forEach(tools::add);
    shown
        .product()
        .ifPresent(product -> product
            .product()
            .facts()
            .all("make")
            .flatMap(EquipmentPart::names)
            .forEach(tools::add));
    List<Phrase> points = new ArrayList<>();
    house.ifPresent(home -> tools.stream()
        .filter(name -> Tools.isTool(home, name))
        .map(name -> described(shown, home, name))
        .forEach(points::add));
    measuring(shown, house, steps, points);
    hands(shown, steps, points);
    return points.isEmpty() ? List.of() : List.of(new Block.Points(points));
  }

  private static Phrase described(Shown shown, House home, String name) {
    Phrase tool = Tools.described(home, name, shown.reader());
    return home.vessel(name)
        .filter(vessel -> shown.reader() == SheetReader.HOME)
        .flatMap(vessel -> HomeVessels.size(shown, vessel))
        .map(size -> Phrase.together(tool, size))
        .orElse(tool);
  }

  private static Stream<String> names(Statement step) {
    return Stream.of(Connective.INTO, Connective.IN)
        .flatMap(word -> step.names(word).stream())
        .map(Located::value);
  }

  private static void measuring(
      Shown shown, Optional<House> house, List<Statement> steps, List<Phrase> points) {
    boolean isHeated =
        steps.stream().anyMatch(step -> step.figure(Unit.Dimension.TEMPERATURE).isPresent());
    if (isHeated) {
      points.add(house
          .flatMap(home -> home.facts().first("thermometer"))
          .filter(line -> shown.reader() != SheetReader.HOME)
          .map(EquipmentPart::probe)
          .orElseGet(() -> Phrase.words("tool.thermometer")));
    }
    if (shown.reader() == SheetReader.HOME) {
      points.add(Phrase.words("tool.scale"));
      return;
    }
    house.ifPresent(home -> home.scales()
        .forEach(scale -> points.add(Phrase.words(
            "tool.scale.reads",
            Phrase.given(scale.name().value()),
            Phrase.value(SheetFigure.written(
                "equipment." + scale.name().value() + ".step",
                SheetUnit.GRAM,
                scale.step().doubleValue(),
                scale.step().doubleValue() < 1 ? 2 : 0)),
            Phrase.value(SheetFigure.written(
                "equipment." + scale.name().value() + ".capacity",
                SheetUnit.GRAM,
                scale.capacity().doubleValue(),
                0))))));
  }

  private static Phrase probe(Statement line) {
    String name = line.objects().stream()
        .flatMap(o -> o.value() instanceof Operand.Name n ? Stream.of(n.word()) : Stream.empty())
        .findFirst()
        .orElse("");
    return Phrase.words("tool.probe", Phrase.given(name));
  }

  /** What the verbs ask for besides. */
  private static void hands(Shown shown, List<Statement> steps, List<Phrase> points) {
    if (shown.reader() == SheetReader.PRODUCTION) {
      return;
    }
    if (steps.stream().anyMatch(step -> step.has(Connective.UNDER, "lid"))) {
      points.add(Phrase.words("tool.lid"));
    }
    Stream.of(Verb.SIFT, Verb.FOLD, Verb.PIPE, Verb.CUT, Verb.SPREAD)
        .filter(verb -> steps.stream().anyMatch(step -> step.is(verb.word())))
        .forEach(verb -> points.add(Phrase.words("tool.for." + verb.word())));
  }
}
