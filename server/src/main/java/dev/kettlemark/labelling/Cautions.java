package dev.kettlemark.labelling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Origin;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Which cautions a formula or product ought to carry. */
final class Cautions {

  /** A sum of figures is off by this much at most. */
  private static final double EXACT = 1e-9;

  private final Entry entry;
  private final Optional<ComputedFormula> formula;
  private final Makeup makeup;
  private final Facts facts;
  private final BiPredicate<String, String> carries;

  /** @param carries whether a material, by its name, states a caution itself; ingredients never do */
  Cautions(
      Entry entry,
      Optional<ComputedFormula> formula,
      Makeup makeup,
      Facts facts,
      BiPredicate<String, String> carries) {
    this.entry = entry;
    this.formula = formula;
    this.makeup = makeup;
    this.facts = facts;
    this.carries = carries;
  }

  List<CautionNeed> needs(List<Market> markets) {
    return CautionRule.all().stream()
        .filter(rule -> rule.holdsIn(markets))
        .flatMap(rule -> need(rule).stream())
        .toList();
  }

  private Optional<CautionNeed> need(CautionRule rule) {
    return switch (rule.test()) {
      case "hotter-than" -> hotterThan(rule);
      case "warned" -> ofUse(rule, use -> use.says("caution", rule.values().get(0)), "");
      case "raw-egg" -> rawEgg(rule);
      case "more-than" -> moreThan(rule);
      case "named" -> ofUse(rule, use -> Phrase.isAnyIn(use.plainNames(), rule.phrases()), "");
      default -> throw new IllegalStateException("no test is named " + rule.test());
    };
  }

  /** The making is hot, so only what is made here counts, and no part that was made before. */
  private Optional<CautionNeed> hotterThan(CautionRule rule) {
    double limit = Double.parseDouble(rule.values().get(0));
    List<StepResult> steps = formula.stream()
        .flatMap(f -> f.process().stages().stream())
        .map(StageResult::steps)
        .flatMap(List::stream)
        .filter(Cautions::heats)
        .filter(step -> hottest(step).filter(t -> t.celsius() > limit).isPresent())
        .toList();
    return steps.stream()
        .max(Comparator.comparing(step -> hottest(step).orElseThrow()))
        .map(step -> need(
            rule,
            "`" + step.step().word().value() + "` brings it to "
                + hottest(step).map(Display::celsius).orElse(""),
            Optional.of(entry.origin(step.step().word().span())),
            states(rule)));
  }

  /** A boil without a target only dissolves. */
  private static boolean heats(StepResult step) {
    return Verb.of(step.step().word().value())
        .map(Verb::effect)
        .filter(effect -> effect == Verb.Effect.COOK
            || effect == Verb.Effect.HEAT
            || (effect == Verb.Effect.BOIL && step.step().has(Connective.TO)))
        .isPresent();
  }

  private static Optional<Temperature> hottest(StepResult step) {
    return step.after().stream()
        .map(parcel -> parcel.temperature().high())
        .reduce((one, other) -> one.compareTo(other) >= 0 ? one : other);
  }

  /** Told where the section itself names what calls for it; a part is told on its own page. */
  private Optional<CautionNeed> ofUse(
      CautionRule rule, Predicate<IngredientUse> test, String suffix) {
    return ofUse(rule, test, suffix, Way::isDirect);
  }

  private Optional<CautionNeed> ofUse(
      CautionRule rule, Predicate<IngredientUse> test, String suffix, Predicate<Way> isToldHere) {
    List<IngredientUse> found = makeup.uses().stream().filter(test).toList();
    boolean isOpen =
        found.stream().anyMatch(use -> uncarried(use, rule).findAny().isPresent());
    Optional<IngredientUse> told =
        found.stream().filter(use -> uncarried(use, rule).anyMatch(isToldHere)).findFirst();
    return told.or(() -> found.stream().findFirst())
        .map(use -> need(
            rule,
            "it holds `" + use.name() + "`" + suffix,
            told.flatMap(
                one -> uncarried(one, rule).filter(isToldHere).map(Way::here).findFirst()),
            states(rule) || !isOpen));
  }

  /** The ways on which no part carries the caution. */
  private Stream<Way> uncarried(IngredientUse use, CautionRule rule) {
    return use.ways().stream()
        .filter(way -> way.isDirect() || !carries.test(way.steps().get(0).name(), rule.caution()));
  }

  private Optional<CautionNeed> rawEgg(CautionRule rule) {
    double safe = Double.parseDouble(rule.values().get(0));
    return ofUse(
        rule,
        use -> isRawEgg(use)
            && warmest(use).filter(band -> band.low().celsius() >= safe).isEmpty(),
        makeup.uses().stream()
            .filter(Cautions::isRawEgg)
            .flatMap(use -> warmest(use).stream())
            .findFirst()
            .map(band -> ", which gets no warmer than " + Display.celsius(band))
            .orElse(", which is raw"));
  }

  private static boolean isRawEgg(IngredientUse use) {
    return use.says("traits", "raw-animal") && use.says("allergen", "egg");
  }

  /** Known only for what is weighed in here; a part has its own page. */
  private Optional<Band<Temperature>> warmest(IngredientUse use) {
    return use.isDirect()
        ? formula.flatMap(f -> HighestTemperature.of(f, use.name()))
        : Optional.empty();
  }

  /** {@code polyol 10}: a family and its percent of the finished food. */
  private Optional<CautionNeed> moreThan(CautionRule rule) {
    String[] parts = rule.values().get(0).split(" ");
    Component.Family family = Component.Family.valueOf(parts[0].toUpperCase(Locale.ROOT));
    double limit = Double.parseDouble(parts[1]);
    Optional<Ratio> share =
        makeup.composition().toOptional().map(composition -> composition.share(family));
    return share
        .filter(found -> found.percent() > limit + EXACT)
        .flatMap(found -> ofUse(
            rule,
            use -> use.composition()
                .map(composition -> composition.share(family).fraction() > 0)
                .orElse(false),
            ": " + Display.percent(found) + " " + parts[0] + " in all",
            way -> true));
  }

  private boolean states(CautionRule rule) {
    return facts.says("caution", rule.caution());
  }

  private static CautionNeed need(
      CautionRule rule, String reason, Optional<Origin> place, boolean isStated) {
    return new CautionNeed(
        rule.caution(),
        rule.market(),
        reason,
        place,
        isStated,
        rule.isGrave(),
        rule.statement(),
        rule.law());
  }
}
