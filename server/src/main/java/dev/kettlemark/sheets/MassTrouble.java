package dev.kettlemark.sheets;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.AgentTraits;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Component.Family;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What goes wrong in the mass itself, by what it is made of. */
final class MassTrouble {

  /** From here on a mass that loses its fat feels greasy; common practice, no source. */
  private static final double MUCH_FAT = 0.06;

  /** Roasted nuts lose their crackle from about here on; common practice, no source. */
  private static final double CRISP = 0.40;

  private static final Set<String> GLASSES = Set.of("brittle", "hard");

  private MassTrouble() {}

  static void tell(Made made, List<Row> rows) {
    ingredients(made)
        .filter(one -> one.hasRole("gelling"))
        .forEach(one -> gel(made, one).ifPresent(rows::add));
    scorched(made).ifPresent(rows::add);
    greasy(made).ifPresent(rows::add);
    made.figures().ifKnown(figures -> {
      glass(made, figures).ifPresent(rows::add);
      limp(made, figures).ifPresent(rows::add);
    });
  }

  private static Stream<Ingredient> ingredients(Made made) {
    return made.formula().formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .distinct()
        .flatMap(name -> made.formula().material(name).flatMap(Material::ingredient).stream());
  }

  /** What an agent needs before it gels. */
  private static Optional<Row> gel(Made made, Ingredient ingredient) {
    AgentTraits agent = ingredient.agent();
    String id = made.name() + "." + ingredient.name().value();
    Phrase name = Names.material(ingredient.name().value(), made);
    Optional<Temperature> swells = agent
        .hydrates()
        .or(agent::activates)
        .filter(AgentTraits.Condition::above)
        .map(AgentTraits.Condition::limit);
    String act = agent.needs().contains("soak") && swells.isEmpty()
        ? "trouble.gel.act.soak"
        : "trouble.gel.act";
    return agent
        .sets()
        .map(sets -> Row.of(
            Phrase.sentence("trouble.gel"),
            Phrase.sentence(
                agent.needs().contains("acid") ? "trouble.gel.cause.acid" : "trouble.gel.cause",
                name,
                heat(id + ".sets", sets)),
            Phrase.together(
                swells
                    .map(limit ->
                        Phrase.sentence("trouble.gel.act.heat", name, heat(id + ".swells", limit)))
                    .orElse(Phrase.nothing()),
                Phrase.sentence(act, name))));
  }

  private static Phrase heat(String id, Temperature temperature) {
    return Phrase.value(SheetFigure.written(id, SheetUnit.CELSIUS, temperature.celsius(), 0));
  }

  /** Milk settles on the floor of a pan and burns there. */
  private static Optional<Row> scorched(Made made) {
    for (Stage stage : made.formula().formula().stages()) {
      Optional<Phrase> milk = stage.amounts().stream()
          .map(line -> line.ingredient().value())
          .filter(name -> made.formula()
              .material(name)
              .flatMap(Material::ingredient)
              .filter(one -> one.hasRole("dairy") && holds(one, Component.PROTEIN, 0.02))
              .isPresent())
          .map(name -> Names.material(name, made))
          .findFirst();
      if (milk.isPresent() && stage.steps().stream().anyMatch(MethodPart::isCook)) {
        return Optional.of(Row.of(
            Phrase.sentence("trouble.scorched"),
            Phrase.sentence("trouble.scorched.cause", milk.get()),
            Phrase.sentence("trouble.scorched.act")));
      }
    }
    return Optional.empty();
  }

  private static boolean holds(Ingredient ingredient, Component component, double share) {
    return ingredient.composition().map(all -> all.fraction(component) >= share).orElse(false);
  }

  private static Optional<Row> greasy(Made made) {
    return made.formula()
        .composition()
        .toOptional()
        .map(all -> all.share(Family.FAT))
        .filter(fat -> fat.fraction() >= MUCH_FAT)
        .map(fat -> Row.of(
            Phrase.sentence("trouble.greasy"),
            Phrase.sentence(
                "trouble.greasy.cause",
                Phrase.value(SheetFigure.model(
                    made.name() + ".fat",
                    SheetUnit.PERCENT,
                    Outcome.known(SheetFigure.Reach.of(fat.percent())),
                    0))),
            Phrase.sentence("trouble.greasy.act")));
  }

  /** A glass that is to snap softens where its transition nears the room. */
  private static Optional<Row> glass(Made made, MassFigures figures) {
    boolean isGlass = made.formula()
        .formula()
        .facts()
        .wordOf("texture")
        .filter(texture -> GLASSES.contains(texture.value()))
        .isPresent();
    return figures
        .glassTransition()
        .toOptional()
        .filter(band -> isGlass)
        .map(band -> Row.of(
            Phrase.sentence("trouble.glass"),
            Phrase.sentence(
                "trouble.glass.cause",
                Phrase.value(SheetFigure.heat(made.name() + ".glass", Outcome.known(band)))),
            Phrase.sentence("trouble.glass.act")));
  }

  /** What was roasted crisp takes up the water of the mass. */
  private static Optional<Row> limp(Made made, MassFigures figures) {
    Optional<Phrase> nut = ingredients(made)
        .filter(
            one -> one.hasTrait("heat-treated") && Stream.of("nut", "seed").anyMatch(one::hasRole))
        .findFirst()
        .map(one -> Names.material(one.name().value(), made));
    return figures
        .waterActivity()
        .toOptional()
        .filter(band -> band.low().fraction() > CRISP)
        .flatMap(band -> nut.map(name -> Row.of(
            Phrase.sentence("trouble.limp", name),
            Phrase.sentence(
                "trouble.limp.cause",
                Phrase.value(
                    SheetFigure.activity(made.name() + ".water-activity", Outcome.known(band)))),
            Phrase.sentence("trouble.limp.act", name))));
  }
}
