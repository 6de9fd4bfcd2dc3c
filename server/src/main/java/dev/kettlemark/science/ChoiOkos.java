package dev.kettlemark.science;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import java.util.function.ToDoubleFunction;

/**
 * Gives density, specific heat, heat content and conductivity of each food component, by polynomials in temperature.
 *
 * <p>Equations: cp = a + b·t + c·t²; ρ = a + b·t + c·t²; k = a + b·t + c·t²; mixtures cp = Σ wᵢ·cpᵢ and 1/ρ = Σ wᵢ/ρᵢ.
 *
 * <p>Symbols: t temperature in °C; cp specific heat in kJ/(kg·K); ρ density in kg/m³; k conductivity in W/(m·K); wᵢ mass
 * fractions.
 *
 * <p>Range: −40 to 150 °C, water 0–150 °C; the callers keep it.
 *
 * <p>Expected error: 2 % for moist food; specific heat of sugar syrup falls 20 % short at 95 % solids and 140 °C.
 *
 * <p>Source: [1] Y. Choi and M. R. Okos (1986), in Food Engineering and Process Applications, vol. 1, 93–101; three digits
 * from memory. Ethanol is no part of it: constants of the pure liquid, from memory.
 */
// A polynomial is a record of three numbers, but the annotation that would say so belongs to no
// dependency here.
@SuppressWarnings("ImmutableEnumChecker")
public enum ChoiOkos {
  WATER(
      new Polynomial(4.1762, -9.0864e-5, 5.4731e-6),
      new Polynomial(997.18, 3.1439e-3, -3.7574e-3),
      new Polynomial(0.57109, 1.7625e-3, -6.7036e-6)),
  PROTEIN(
      new Polynomial(2.0082, 1.2089e-3, -1.3129e-6),
      new Polynomial(1329.9, -0.51840, 0),
      new Polynomial(0.17881, 1.1958e-3, -2.7178e-6)),
  FAT(
      new Polynomial(1.9842, 1.4733e-3, -4.8008e-6),
      new Polynomial(925.59, -0.41757, 0),
      new Polynomial(0.18071, -2.7604e-4, -1.7749e-7)),
  CARBOHYDRATE(
      new Polynomial(1.5488, 1.9625e-3, -5.9399e-6),
      new Polynomial(1599.1, -0.31046, 0),
      new Polynomial(0.20141, 1.3874e-3, -4.3312e-6)),
  FIBRE(
      new Polynomial(1.8459, 1.8306e-3, -4.6509e-6),
      new Polynomial(1311.5, -0.36589, 0),
      new Polynomial(0.18331, 1.2497e-3, -3.1683e-6)),
  ASH(
      new Polynomial(1.0926, 1.8896e-3, -3.6817e-6),
      new Polynomial(2423.8, -0.28063, 0),
      new Polynomial(0.32962, 1.4011e-3, -2.9069e-6)),
  ETHANOL(new Polynomial(2.44, 0, 0), new Polynomial(806.5, -0.86, 0), new Polynomial(0.167, 0, 0));

  /** A quadratic in °C. */
  private record Polynomial(double a, double b, double c) {

    double at(double t) {
      return a + t * (b + t * c);
    }

    double integralFromZero(double t) {
      return t * (a + t * (b / 2 + t * c / 3));
    }
  }

  private final Polynomial specificHeat;
  private final Polynomial density;
  private final Polynomial conductivity;

  ChoiOkos(Polynomial specificHeat, Polynomial density, Polynomial conductivity) {
    this.specificHeat = specificHeat;
    this.density = density;
    this.conductivity = conductivity;
  }

  /** Returns the group whose polynomials serve a component. */
  public static ChoiOkos of(Component component) {
    return switch (component.family()) {
      case WATER -> WATER;
      case PROTEIN -> PROTEIN;
      case FAT -> FAT;
      case FIBRE -> FIBRE;
      case MINERAL -> ASH;
      case ETHANOL -> ETHANOL;
      case SUGAR, OLIGOSACCHARIDE, STARCH, POLYOL, ACID, OTHER -> CARBOHYDRATE;
    };
  }

  /** Returns the specific heat in kJ/(kg·K). */
  double specificHeat(double celsius) {
    return specificHeat.at(celsius);
  }

  /** Returns the density in kg/m³. */
  double density(double celsius) {
    return density.at(celsius);
  }

  /** Returns the thermal conductivity in W/(m·K). */
  double conductivity(double celsius) {
    return conductivity.at(celsius);
  }

  /** Returns the heat content above 0 °C in kJ/kg. */
  double heatContent(double celsius) {
    return specificHeat.integralFromZero(celsius);
  }

  /** Returns Σ wᵢ·f(group of i). */
  static double mean(Composition composition, ToDoubleFunction<ChoiOkos> property) {
    return composition.weighted(component -> property.applyAsDouble(of(component)));
  }
}
