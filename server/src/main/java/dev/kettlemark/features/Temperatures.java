package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SugarStage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Temperatures to cook, warm or cool to. */
final class Temperatures {

  private static final String BURNS =
      "Hot sugar sticks to the skin and burns deeply: gloves on, cold water at hand, children away.";

  /** Facts of an ingredient that tie something to a temperature. */
  private static final List<String> FACTS =
      List.of("hydrates", "melts", "activates", "coagulates", "sets", "tempers");

  private Temperatures() {}

  /** The stages of a sugar syrup, mildest first; nobody aims at burnt sugar. */
  static List<Offer> ofSugarStages() {
    return Arrays.stream(SugarStage.values())
        .filter(stage -> stage != SugarStage.BURNT)
        .map(stage -> stage.range().low())
        .distinct()
        .map(Temperatures::startingAt)
        .toList();
  }

  private static Offer startingAt(Temperature low) {
    List<SugarStage> stages = Arrays.stream(SugarStage.values())
        .filter(stage -> stage.range().low().equals(low))
        .toList();
    String names = stages.stream()
        .map(stage -> stage.word().replace('-', ' '))
        .collect(Collectors.joining(", "));
    Temperature printed = stages.get(0).rangePrintedInFahrenheit().low();
    String looks = stages.stream()
        .map(stage -> "**"
            + stage.word()
            + "**, "
            + Display.celsius(stage.range())
            + ": "
            + stage.look()
            + ".")
        .collect(Collectors.joining("\n\n"));
    return Offer.of(
            Display.celsius(low), Kind.TEMPERATURE, names + " · " + Display.fahrenheit(printed))
        .withDocumentation(looks + "\n\n" + BURNS);
  }

  /** What the pantry says of the ingredients at hand, such as where gelatine melts. */
  static List<Offer> ofIngredients(Snapshot snapshot, Set<String> names) {
    List<Offer> offers = new ArrayList<>();
    for (String name : names) {
      snapshot
          .library()
          .find(dev.kettlemark.library.Kind.MATERIAL, name)
          .flatMap(entry -> entry.declaration())
          .filter(Ingredient.class::isInstance)
          .ifPresent(ingredient -> addFacts((Ingredient) ingredient, offers));
    }
    return offers;
  }

  private static void addFacts(Ingredient ingredient, List<Offer> offers) {
    for (String word : FACTS) {
      ingredient
          .facts()
          .all(word)
          .flatMap(fact -> temperatures(fact).stream())
          .map(temperature -> Offer.of(
              Display.celsius(temperature),
              Kind.TEMPERATURE,
              ingredient.name().value() + " " + word + " · " + Display.fahrenheit(temperature)))
          .forEach(offers::add);
    }
  }

  private static List<Temperature> temperatures(Statement fact) {
    return fact.figure(Unit.Dimension.TEMPERATURE).stream()
        .map(figure -> figure.value().lowInBase().doubleValue())
        .filter(celsius -> celsius > -100)
        .map(Temperature::ofCelsius)
        .toList();
  }
}
