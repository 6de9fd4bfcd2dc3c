package dev.kettlemark.analysis;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.Equation;
import dev.kettlemark.science.Foam;
import dev.kettlemark.science.FoodDensity;
import dev.kettlemark.science.FoodEnergy;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.SucroseSolubility;
import dev.kettlemark.science.Sweetness;
import dev.kettlemark.science.Texture;
import dev.kettlemark.science.WaterActivity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How each figure of a mass came about, as the tree that hover, terminal and sheets render. */
public final class FigureDerivations {

  private static final Equation MOISTURE =
      new Equation("moisture", "water left / all that is left", "mass balance", Confidence.EXACT);

  private static final Equation DOCTOR = new Equation(
      "doctor share", "1 − sucrose / all saccharides", "mass balance", Confidence.EXACT);

  private static final Equation PER_WATER =
      new Equation("sucrose per water", "sucrose / water", "mass balance", Confidence.EXACT);

  private static final Equation VOLUME =
      new Equation("volume", "mass / density", "definition", Confidence.EXACT);

  private static final Equation FOAM = new Equation(
      "density",
      "mass / (mass / density without air + air)",
      "usual densities of what is whipped, less the air that folding in presses out; or as the formula checks for",
      Confidence.RULE_OF_THUMB);

  private static final String PARTS = "the composition of the ingredients";

  /** A longer list of parts hides what matters. */
  private static final int MOST_PARTS = 6;

  private final MassFigures figures;

  private FigureDerivations(MassFigures figures) {
    this.figures = figures;
  }

  /** The tree of one figure; unknown for the reason for which the figure is. */
  public static Outcome<Derivation> of(MassFigures figures, Figure figure) {
    return new FigureDerivations(figures).of(figure);
  }

  private Outcome<Derivation> of(Figure figure) {
    return FigureWords.of(figures, figure).flatMap(value -> derived(figure, value));
  }

  private Outcome<Derivation> derived(Figure figure, String value) {
    return switch (figure) {
      case MOISTURE -> known(MOISTURE, value, weight(), water());
      case GRAINED_WATER_ACTIVITY ->
        of(Figure.SUPERSATURATION)
            .map(beyond -> WaterActivity.EQUATION.derive(
                value, List.of(beyond, wetness(), sweetSolids(), store())));
      case WATER_ACTIVITY ->
        known(WaterActivity.EQUATION, value, wetness(), sweetSolids(), store());
      case DOCTOR_SHARE -> Outcome.known(DOCTOR.derive(value, saccharides()));
      case SUCROSE_PER_WATER -> known(PER_WATER, value, sucrose(), wetness());
      case SUPERSATURATION ->
        known(SucroseSolubility.EQUATION, value, sucrose(), wetness(), store());
      case DRY_GLASS_TRANSITION ->
        Outcome.known(GlassTransition.DRY_EQUATION.derive(value, saccharides()));
      case GLASS_TRANSITION ->
        of(Figure.DRY_GLASS_TRANSITION)
            .map(dry -> GlassTransition.EQUATION.derive(value, List.of(dry, wetness())));
      case TEXTURE ->
        of(Figure.GLASS_TRANSITION)
            .map(glass -> Texture.EQUATION.derive(value, List.of(glass, room())));
      case SWEETNESS -> Outcome.known(Sweetness.EQUATION.derive(value, saccharides()));
      case ENERGY -> known(FoodEnergy.EUROPEAN, value, american());
      case DENSITY -> density(value);
      case OVERRUN ->
        of(Figure.DENSITY).map(density -> Foam.EQUATION.derive(value, List.of(density)));
      case VOLUME ->
        of(Figure.DENSITY).map(density -> VOLUME.derive(value, List.of(weight(), density)));
    };
  }

  private static Outcome<Derivation> known(Equation equation, String value, Derivation... inputs) {
    return Outcome.known(equation.derive(value, List.of(inputs)));
  }

  private Outcome<Derivation> density(String value) {
    return figures.densityWithoutAir().map(dense -> {
      Derivation without =
          FoodDensity.EQUATION.derive(Display.density(Band.of(dense)), List.of(wetness()));
      return figures.overrun().map(air -> air.high().fraction() > 0).orElse(false)
          ? FOAM.derive(value, List.of(without))
          : without;
    });
  }

  private Derivation american() {
    return FoodEnergy.AMERICAN.derive(
        figures.americanKilocalories().map(kcal -> Display.fixed(kcal, 0)).orElse("unknown")
            + " kcal per 100 g",
        List.of());
  }

  private Derivation room() {
    return Derivation.given("room", Display.celsius(figures.room()), "the house");
  }

  private Derivation sweetSolids() {
    return Derivation.given(
        "sugars and polyols",
        figures
            .parcel()
            .composition()
            .map(made -> Display.estimate(made.sweetSolids()))
            .orElse("unknown"),
        PARTS);
  }

  private Derivation weight() {
    return Derivation.given(
        "weight", figures.parcel().mass().map(Display::mass).orElse("unknown"), "the steps before");
  }

  private Derivation water() {
    return Derivation.given(
        "water in it",
        figures
            .parcel()
            .portion()
            .map(portion -> Display.mass(portion.massOf(Component.WATER)))
            .orElse("unknown"),
        "the steps before");
  }

  private Derivation wetness() {
    return Derivation.given(
        "moisture",
        figures.moisture().map(Display::estimate).orElse("unknown"),
        "the steps before");
  }

  private Derivation sucrose() {
    return Derivation.given(
        "sucrose",
        figures
            .parcel()
            .composition()
            .map(made -> Display.estimate(Ratio.ofFraction(made.fraction(Component.SUCROSE))))
            .orElse("unknown"),
        PARTS);
  }

  private Derivation store() {
    return Derivation.given("stored at", Display.celsius(MassFigures.STORED_AT), "usual rooms");
  }

  /** The saccharides and polyols, largest first. */
  private List<Derivation> saccharides() {
    List<Derivation> parts = new ArrayList<>();
    figures
        .parcel()
        .composition()
        .ifKnown(made -> made.present().stream()
            .filter(Component::isSweet)
            .sorted(Comparator.comparingDouble((Component c) -> -made.fraction(c)))
            .limit(MOST_PARTS)
            .forEach(component -> parts.add(part(made, component))));
    return parts;
  }

  private static Derivation part(Composition made, Component component) {
    return Derivation.given(
        component.word(), Display.estimate(Ratio.ofFraction(made.fraction(component))), PARTS);
  }
}
