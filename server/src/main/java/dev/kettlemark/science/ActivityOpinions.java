package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Gives second opinions on the water activity of moist goods at 25 °C, by five older equations.
 *
 * <p>Equations: Raoult a = x_w; Norrish a = x_w·exp(−(Σ √Kᵢ·xᵢ)²); Ross a = Π aᵢ, each solute alone in all the water;
 * Money and Born a = 1/(1 + 0.27·n); Grover a = 1.04 − 0.1·E + 0.0045·E².
 *
 * <p>Symbols: a water activity; x_w, xᵢ mole fractions of water and solute i; Kᵢ a number per solute; n mol of sugar per
 * 100 g of water; E = Σ Eᵢ·(g of i per g of water), Eᵢ a number per component.
 *
 * <p>Range: each speaks only above its own limit and is unknown below; none of them may be used for cooking.
 *
 * <p>Expected error: 0.025 within the limits.
 *
 * <p>Source: [1] R. S. Norrish (1966), J. Food Technol. 1, 25. [2] K. D. Ross (1975), Food Technol. 29(3), 26. [3] R. W.
 * Money and R. Born (1951), J. Sci. Food Agric. 2, 180. [4] D. W. Grover (1947), J. Soc. Chem. Ind. 66, 201. [5] J.
 * Chirife, G. Favetto and C. Ferro Fontán (1980, 1982) for the K of polyols. Sugar K and all E are from memory.
 */
public final class ActivityOpinions {

  private static final double RAOULT_LIMIT = 0.95;
  private static final double NORRISH_LIMIT = 0.75;
  private static final double ROSS_LIMIT = 0.80;

  /** Money and Born measured jams and fondant syrups; below this nothing supports their line. Common practice. */
  private static final double MONEY_BORN_LIMIT = 0.75;

  private static final double GROVER_LOWEST = 0.55;
  private static final double GROVER_HIGHEST = 0.98;

  /** Past this sum Grover's parabola climbs again. */
  private static final double GROVER_TURNING_SUM = 11;

  private static final Map<Component, Double> NORRISH_K = norrishK();
  private static final Map<Component, Double> GROVER_E = groverE();

  private ActivityOpinions() {}

  /** Returns the ideal water activity, good above 0.95. */
  public static Outcome<Ratio> raoult(Composition composition) {
    return within("Raoult", idealActivity(composition), RAOULT_LIMIT, 1);
  }

  /** Returns Norrish's water activity, good above 0.75; unknown if a solute has no K. */
  public static Outcome<Ratio> norrish(Composition composition) {
    return solutesHaveK(composition)
        ? within("Norrish", norrishActivity(composition), NORRISH_LIMIT, 1)
        : soluteWithoutK();
  }

  /** Returns Ross's product over the solutes, each by Norrish alone in all the water; good above 0.80. */
  public static Outcome<Ratio> ross(Composition composition) {
    if (!solutesHaveK(composition)) {
      return soluteWithoutK();
    }
    return within("Ross", rossActivity(composition), ROSS_LIMIT, 1);
  }

  /** Returns Money and Born's water activity of sugars, good above 0.75. */
  public static Outcome<Ratio> moneyBorn(Composition composition) {
    return within("Money and Born", moneyBornActivity(composition), MONEY_BORN_LIMIT, 1);
  }

  /** Returns Grover's water activity, good from 0.55 to 0.98. */
  public static Outcome<Ratio> grover(Composition composition) {
    double water = composition.water().fraction();
    if (water * GROVER_TURNING_SUM < groverSum(composition)) {
      return Outcome.unknown(
          Reason.OUTSIDE_VALID_RANGE, "Grover's equation has no meaning with so little water");
    }
    return within("Grover", groverActivity(composition), GROVER_LOWEST, GROVER_HIGHEST);
  }

  private static Outcome<Ratio> within(
      String author, double activity, double lowest, double highest) {
    return activity >= lowest && activity <= highest
        ? Outcome.known(Ratio.ofFraction(activity))
        : Outcome.unknown(
            Reason.OUTSIDE_VALID_RANGE,
            "%s does not speak for %.2f, only for %.2f to %.2f",
            author,
            activity,
            lowest,
            highest);
  }

  // The equations themselves; the callers keep their limits.

  static double idealActivity(Composition composition) {
    double water = composition.water().fraction() / Solutes.WATER_GRAMS_PER_MOLE;
    double solutes = composition.weighted(ActivityOpinions::molesPerGram);
    return water == 0 ? 0 : water / (water + solutes);
  }

  static double norrishActivity(Composition composition) {
    double water = composition.water().fraction() / Solutes.WATER_GRAMS_PER_MOLE;
    double moles = water + composition.weighted(ActivityOpinions::molesPerGram);
    ToDoubleFunction<Component> weight =
        component -> Math.sqrt(NORRISH_K.getOrDefault(component, 0.0)) * molesPerGram(component);
    double exponent = composition.weighted(weight) / moles;
    return water / moles * Math.exp(-exponent * exponent);
  }

  static double rossActivity(Composition composition) {
    double product = 1;
    for (Component solute : composition.present()) {
      if (solute != Component.WATER && Solutes.of(solute).isPresent()) {
        Composition alone = composition
            .only(component -> component == solute || component == Component.WATER)
            .orElseThrow();
        product *= norrishActivity(alone);
      }
    }
    return product;
  }

  static double moneyBornActivity(Composition composition) {
    double molesOfSugar =
        composition.weighted(component -> isSugar(component) ? molesPerGram(component) : 0);
    double water = composition.water().fraction();
    double molesPerHundredGrams = water == 0 ? Double.MAX_VALUE : 100 * molesOfSugar / water;
    return 1 / (1 + 0.27 * molesPerHundredGrams);
  }

  static double groverActivity(Composition composition) {
    double e = groverSum(composition) / composition.water().fraction();
    return 1.04 - 0.1 * e + 0.0045 * e * e;
  }

  private static double groverSum(Composition composition) {
    return composition.weighted(component -> GROVER_E.getOrDefault(component, 0.0));
  }

  private static boolean solutesHaveK(Composition composition) {
    return composition.present().stream()
        .allMatch(component -> Solutes.of(component).isEmpty() || NORRISH_K.containsKey(component));
  }

  private static Outcome<Ratio> soluteWithoutK() {
    return Outcome.unknown(Reason.NOT_MODELLED, "a solute has no constant of Norrish");
  }

  private static boolean isSugar(Component component) {
    return component.family() == Component.Family.SUGAR
        || component.family() == Component.Family.OLIGOSACCHARIDE;
  }

  private static double molesPerGram(Component component) {
    return Solutes.molesPerGram(component).orElse(0);
  }

  private static Map<Component, Double> norrishK() {
    Map<Component, Double> k = new EnumMap<>(Component.class);
    k.put(Component.SUCROSE, 6.47);
    k.put(Component.MALTOSE, 4.54);
    k.put(Component.GLUCOSE, 2.25);
    k.put(Component.FRUCTOSE, 2.25);
    // No figure is printed for galactose; its kin serves, an own estimate.
    k.put(Component.GALACTOSE, 2.25);
    k.put(Component.LACTOSE, 10.2);
    k.put(Component.SORBITOL, 1.65);
    k.put(Component.GLYCEROL, 1.16);
    k.put(Component.ERYTHRITOL, 1.34);
    k.put(Component.XYLITOL, 1.66);
    k.put(Component.MANNITOL, 0.91);
    k.put(Component.ACID, 6.2);
    return k;
  }

  private static Map<Component, Double> groverE() {
    Map<Component, Double> e = new EnumMap<>(Component.class);
    e.put(Component.SUCROSE, 1.0);
    e.put(Component.LACTOSE, 1.0);
    e.put(Component.MALTOSE, 1.0);
    e.put(Component.TREHALOSE, 1.0);
    e.put(Component.GLUCOSE, 1.3);
    e.put(Component.FRUCTOSE, 1.3);
    e.put(Component.GALACTOSE, 1.3);
    // The syrup of 42 DE counts 0.8 as a whole; its longer chains carry what its glucose does not.
    e.put(Component.MALTOTRIOSE, 0.6);
    e.put(Component.HIGHER_SACCHARIDES, 0.6);
    e.put(Component.PROTEIN, 1.3);
    e.put(Component.STARCH, 0.8);
    e.put(Component.FIBRE, 0.8);
    e.put(Component.SORBITOL, 2.0);
    e.put(Component.GLYCEROL, 4.0);
    e.put(Component.ACID, 2.5);
    e.put(Component.SALT, 9.0);
    return e;
  }
}
