package dev.kettlemark.reading;

import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.UseRange;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.text.Excerpt;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads an ingredient. */
final class IngredientReader {

  /** Compositions may miss a whole by this many percent, as printed tables do. */
  private static final double ROUNDING = 0.05;

  private static final List<String> COMPONENT_WORDS = Stream.concat(
          Arrays.stream(Component.values()).map(Component::word), Stream.of("solids"))
      .toList();

  private final Heading heading;
  private final Body body;

  IngredientReader(Heading heading, Body body) {
    this.heading = heading;
    this.body = body;
  }

  Ingredient read() {
    Facts facts = new Facts(body.facts(FactWord.INGREDIENT, "an ingredient"));
    List<String> roles = facts.wordsOf("role").stream().map(Located::value).toList();
    Ingredient ingredient = new Ingredient(
        heading.name(),
        heading.title(),
        roles,
        facts.wordOf("form").map(Located::value),
        composition(facts),
        density(facts),
        facts.all("use").flatMap(fact -> use(fact).stream()).toList(),
        facts);
    checkSaturates(ingredient);
    return ingredient;
  }

  /** They are a part of the fat, told beside the parts of the whole. */
  private void checkSaturates(Ingredient ingredient) {
    for (Statement fact : ingredient.facts().all(Ingredient.SATURATES).limit(1).toList()) {
      Optional<Ratio> saturates = ingredient.saturates();
      if (saturates.isEmpty()) {
        body.report(fact.span(), "`saturates` takes a share of the mass, such as `3.80 %`");
      }
      Outcome<Double> fat = ingredient
          .composition()
          .map(all -> 100 * all.share(Component.Family.FAT).fraction());
      saturates.ifPresent(share -> fat.ifKnown(all -> {
        if (share.percent() < 0 || share.percent() > all + ROUNDING) {
          body.report(
              fact.span(),
              String.format(
                  Locale.ROOT,
                  "of %.2f %% fat, %.2f %% cannot be saturates",
                  all,
                  share.percent()));
        }
      }));
    }
  }

  private Outcome<Composition> composition(Facts facts) {
    Map<Component, Double> percents = new EnumMap<>(Component.class);
    Optional<Double> solids = Optional.empty();
    List<Statement> lines = facts.all("contains").toList();
    if (lines.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_COMPOSITION,
          "`%s` does not say what it contains",
          heading.name().value());
    }
    for (Statement line : lines) {
      Optional<Quantity> share = Optional.empty();
      for (Located<Operand> operand : line.objects()) {
        if (operand.value() instanceof Operand.Figure figure) {
          share = Optional.of(figure.quantity());
        } else if (operand.value() instanceof Operand.Name name && share.isPresent()) {
          double percent = share.get().middleInBase().doubleValue() * 100;
          if (share.get().low().signum() < 0) {
            body.report(
                operand.span(), "nothing contains less than 0 % " + Excerpt.of(name.word()));
          } else if (name.word().equals("solids")) {
            solids = Optional.of(percent);
          } else {
            component(name.word(), operand)
                .ifPresent(component -> percents.merge(component, percent, Double::sum));
          }
          share = Optional.empty();
        }
      }
    }
    return complete(percents, solids, lines.get(0));
  }

  private Optional<Component> component(String word, Located<Operand> operand) {
    Optional<Component> component = Component.ofWord(word);
    if (component.isEmpty()) {
      body.reportWord(operand.span(), Excerpt.of(word) + " is no component", word, COMPONENT_WORDS);
    }
    return component;
  }

  /** Water follows from solids, and what is not itemised counts as other. */
  private Outcome<Composition> complete(
      Map<Component, Double> percents, Optional<Double> solids, Statement line) {
    if (solids.isPresent() && !percents.containsKey(Component.WATER)) {
      percents.put(Component.WATER, Math.max(0, 100 - solids.get()));
    }
    double sum = percents.values().stream().mapToDouble(Double::doubleValue).sum();
    if (sum > 100 + ROUNDING) {
      body.report(
          line.span(),
          String.format(Locale.ROOT, "the parts sum to %.2f %%, more than the whole", sum));
      return Outcome.unknown(
          Reason.CONTRADICTION, "`%s` contains more than 100 %%", heading.name().value());
    }
    if (sum < 100 - ROUNDING) {
      percents.merge(Component.OTHER, 100 - sum, Double::sum);
    }
    return Outcome.known(Composition.ofPercents(percents));
  }

  private static Optional<Density> density(Facts facts) {
    return facts
        .first("density")
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.DENSITY))
        .map(figure -> figure.value().middleInBase().doubleValue())
        .filter(value -> value > 0)
        .map(Density::ofGramsPerMillilitre);
  }

  private static Optional<UseRange> use(Statement fact) {
    Optional<Located<String>> basis = fact.names(Connective.OF).stream().findFirst();
    return fact.objectFigure(Unit.Dimension.SHARE)
        .flatMap(figure -> basis.map(name -> new UseRange(
            Ratio.ofFraction(figure.value().lowInBase().doubleValue()),
            Ratio.ofFraction(figure.value().highInBase().doubleValue()),
            Basis.of(name),
            fact.text().map(Located::value))));
  }
}
