package dev.kettlemark.features;

import dev.kettlemark.analysis.Boiling;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.science.SyrupBoiling;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A temperature in the other scale, and what it does to the mass of this very step. */
final class TemperatureHover implements HoverAnswer {

  /** A smaller difference than a probe and the weather make is not told. */
  private static final double ALTITUDE_MATTERS = 0.5;

  /** Sugar sticks and burns through the skin at any cooking temperature. */
  private static final String BURNS =
      "Hot sugar sticks to the skin and burns deeply: have cold water at hand, and never test with a bare finger.";

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .figure()
        .filter(figure -> pointed
            .line()
            .filter(line -> Pointed.temperatures(line).anyMatch(figure::equals))
            .isPresent())
        .flatMap(figure -> figure.quantity().map(written -> text(pointed, figure, written)));
  }

  private static HoverText text(Pointed pointed, Atom.QuantityAtom figure, Quantity written) {
    Markdown markdown = new Markdown();
    String asWritten = figure.span().of(pointed.entry().section().text());
    markdown.paragraph(
        "**" + asWritten + " = " + OtherScale.exact(written).orElse(asWritten) + "**");
    Optional<WrittenFormula> formula = WrittenFormula.of(pointed.snapshot(), pointed.entry());
    Optional<StepResult> step = pointed
        .statement()
        .map(Line::span)
        .flatMap(line -> formula.flatMap(whole -> whole.stepAt(line)));
    if (step.isPresent() && isCookedTo(step.get(), written)) {
      cooked(markdown, step.get(), middle(written), formula.orElseThrow());
    } else if (step.isPresent()) {
      predicted(markdown, step.get());
    }
    return pointed.text(markdown, figure.span());
  }

  /** Whether water boils off up to this temperature. */
  private static boolean isCookedTo(StepResult result, Quantity written) {
    Optional<Verb.Effect> effect = Verb.of(result.step().word().value()).map(Verb::effect);
    boolean boils =
        effect.filter(e -> e == Verb.Effect.COOK || e == Verb.Effect.BOIL).isPresent();
    return boils
        && Boiling.target(result.step()).filter(Boiling.band(written)::equals).isPresent();
  }

  private static void cooked(
      Markdown markdown, StepResult result, Temperature target, WrittenFormula formula) {
    Kitchen kitchen = formula.computed().kitchen();
    Outcome<Composition> charge = charge(result.before());
    markdown.paragraph(stages(charge, target, kitchen));
    markdown.paragraph(left(result, formula));
    markdown.paragraph(charge
        .flatMap(c -> SyrupBoiling.boilingPoint(c, kitchen.pressure()))
        .map(point -> "The charge as weighed boils at " + bothScales(point) + ".")
        .orElse(""));
    markdown.paragraph(charge
        .flatMap(c -> SyrupBoiling.sameSolids(c, target, Kitchen.SEA_LEVEL, kitchen.pressure()))
        .toOptional()
        .filter(local -> isFarFrom(target, local))
        .map(local -> "At " + Display.fixed(kitchen.altitudeMetres(), 0) + " m cook to "
            + bothScales(local) + " for the solids that " + Display.celsius(target)
            + " leaves at sea level.")
        .orElse(""));
    markdown.paragraph(BURNS);
    result
        .derivation()
        .ifPresent(derivation ->
            markdown.paragraph("How it is worked out:\n\n" + DerivationText.of(derivation)));
  }

  /** The sugar stage by the solids: handbooks give their names for the sea. */
  private static String stages(Outcome<Composition> charge, Temperature target, Kitchen kitchen) {
    Temperature atSea = charge
        .flatMap(c -> SyrupBoiling.sameSolids(c, target, kitchen.pressure(), Kitchen.SEA_LEVEL))
        .toOptional()
        .filter(there -> isFarFrom(target, there))
        .orElse(target);
    List<SugarStage> stages = SugarStage.at(atSea);
    if (stages.isEmpty()) {
      return "Handbooks have no sugar stage for this temperature.";
    }
    List<String> told = new ArrayList<>();
    for (SugarStage stage : stages) {
      told.add("**" + stage.word() + "** (" + Display.celsius(stage.range()) + " at sea level): "
          + stage.look() + ".");
    }
    return "Sugar stage " + String.join(" Also ", told);
  }

  private static String left(StepResult result, WrittenFormula formula) {
    if (result.after().size() != 1) {
      return "";
    }
    FinishedMass after =
        new FinishedMass(result.after().get(0), formula.computed().kitchen());
    Optional<String> water = after.water();
    if (water.isEmpty()) {
      return result
          .derivation()
          .map(d -> "Water left: unknown, " + d.source() + ".")
          .orElse("");
    }
    String share = result.evaporated().grams() > 0
        ? "Left: water " + water.get() + " ± 1, solids "
            + result
                .after()
                .get(0)
                .composition()
                .map(c -> Display.estimate(c.solids()))
                .orElse("")
            + " by the boiling model"
        : "It reaches this temperature without boiling: water stays at " + water.get();
    String weights = formula.hasWeights() && result.evaporated().grams() > 0
        ? "; " + Display.mass(result.evaporated()) + " of water boil away and "
            + after.weight().orElse("an unknown weight") + " stay"
        : "";
    return share + weights + ".";
  }

  /** Where a step gives a limit, what the model expects of the mass then. */
  private static void predicted(Markdown markdown, StepResult result) {
    Optional<Band<Temperature>> mass = result
        .merged()
        .or(() -> result.before().stream()
            .filter(parcel -> parcel.mass().isKnown())
            .map(StageParcel::temperature)
            .reduce(Band::spanning));
    mass.ifPresent(band -> markdown.paragraph((result.merged().isPresent()
            ? "By the heat balance the masses meet at "
            : "By the model the mass comes to this step at ")
        + Display.celsius(band) + "."));
  }

  private static Outcome<Composition> charge(List<StageParcel> parcels) {
    Outcome<List<Portion>> portions = Outcome.known(List.of());
    for (StageParcel parcel : parcels) {
      portions = Outcome.both(portions, parcel.portion(), (sum, one) -> {
        List<Portion> more = new ArrayList<>(sum);
        more.add(one);
        return more;
      });
    }
    return portions.flatMap(list -> list.stream().anyMatch(p -> p.mass().grams() > 0)
        ? Outcome.known(Composition.mix(list))
        : Outcome.unknown(Reason.MISSING_COMPOSITION, "nothing is weighed in"));
  }

  private static boolean isFarFrom(Temperature target, Temperature other) {
    return Math.abs(other.minus(target).celsius()) > ALTITUDE_MATTERS;
  }

  private static Temperature middle(Quantity written) {
    return Temperature.ofCelsius(written.middleInBase().doubleValue());
  }

  private static String bothScales(Temperature temperature) {
    return Display.celsius(temperature) + " (" + Display.fahrenheit(temperature) + ")";
  }
}
