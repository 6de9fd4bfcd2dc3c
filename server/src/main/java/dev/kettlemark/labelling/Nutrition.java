package dev.kettlemark.labelling;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Component.Family;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.AmericanRounding;
import dev.kettlemark.science.EuropeanRounding;
import dev.kettlemark.science.FoodEnergy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The nutrition declaration of a market, estimated from the compositions of the pantry and what the model
 * boils away.
 *
 * @param rows in the order of the law
 * @param piece what one piece weighs, where that is said
 */
public record Nutrition(Market market, List<Row> rows, Optional<Mass> piece) {

  /** One gram of sodium is two and a half grams of salt: Regulation (EU) No 1169/2011, annex I, point 11. */
  private static final double SALT_PER_SODIUM = 2.5;

  private static final double MILLIGRAMS = 1000;

  public Nutrition {
    rows = List.copyOf(rows);
  }

  /**
   * One figure.
   *
   * @param name as the law names it
   * @param unit {@code kJ}, {@code kcal}, {@code g} or {@code mg}
   * @param per100 in 100 g, not rounded
   * @param perPiece in one piece, not rounded; empty where no piece is known
   * @param rounding as the market rounds it
   * @param isPart whether it is an "of which" of the figure above
   */
  public record Row(
      String name,
      String unit,
      Outcome<Double> per100,
      Optional<Outcome<Double>> perPiece,
      DoubleFunction<String> rounding,
      boolean isPart) {

    /** A figure as the label may print it. */
    public String rounded(double amount) {
      return rounding.apply(amount);
    }
  }

  /** Computes the declaration. */
  public static Nutrition of(Label label, Market market) {
    Builder builder = new Builder(label.makeup());
    if (market == Market.EU) {
      builder.european();
    } else {
      builder.american();
    }
    return new Nutrition(market, builder.rows, label.makeup().piece());
  }

  private static final class Builder {

    private final Makeup makeup;
    private final Outcome<Composition> composition;
    private final List<Row> rows = new ArrayList<>();

    Builder(Makeup makeup) {
      this.makeup = makeup;
      this.composition = makeup.composition();
    }

    /** Regulation (EU) No 1169/2011, article 30 and annex XV. */
    void european() {
      DoubleFunction<String> grams = EuropeanRounding.MACRONUTRIENT::of;
      add(
          "energy",
          "kJ",
          composition.map(FoodEnergy::europeanKilojoules),
          EuropeanRounding.ENERGY::of);
      add(
          "energy",
          "kcal",
          composition.map(FoodEnergy::europeanKilocalories),
          EuropeanRounding.ENERGY::of);
      add("fat", "g", family(Family.FAT), grams);
      addSaturates("saturates", EuropeanRounding.FATTY_ACIDS::of);
      add("carbohydrate", "g", european(composition), grams);
      addPart("sugars", "g", family(Family.SUGAR), grams);
      if (family(Family.POLYOL).map(polyols -> polyols > 0).orElse(false)) {
        addPart("polyols", "g", family(Family.POLYOL), grams);
      }
      add("fibre", "g", family(Family.FIBRE), grams);
      add("protein", "g", family(Family.PROTEIN), grams);
      add("salt", "g", component(Component.SALT), EuropeanRounding.SALT::of);
    }

    /** 21 CFR 101.9(c); the order of its format. */
    void american() {
      DoubleFunction<String> grams = AmericanRounding.CARBOHYDRATE_OR_PROTEIN::of;
      add(
          "calories",
          "kcal",
          composition.map(FoodEnergy::americanKilocalories),
          AmericanRounding.CALORIES::of);
      add("total fat", "g", family(Family.FAT), AmericanRounding.FAT::of);
      addSaturates("saturated fat", AmericanRounding.FAT::of);
      add(
          "sodium",
          "mg",
          component(Component.SALT).map(salt -> MILLIGRAMS * salt / SALT_PER_SODIUM),
          AmericanRounding.SODIUM::of);
      add("total carbohydrate", "g", american(composition), grams);
      addPart("dietary fiber", "g", family(Family.FIBRE), grams);
      addPart("total sugars", "g", family(Family.SUGAR), grams);
      addPart("added sugars", "g", addedSugars(), grams);
      if (family(Family.POLYOL).map(polyols -> polyols > 0).orElse(false)) {
        addPart("sugar alcohol", "g", family(Family.POLYOL), grams);
      }
      add("protein", "g", family(Family.PROTEIN), grams);
    }

    private void add(
        String name, String unit, Outcome<Double> per100, DoubleFunction<String> rounding) {
      rows.add(new Row(name, unit, per100, perPiece(per100), rounding, false));
    }

    private void addPart(
        String name, String unit, Outcome<Double> per100, DoubleFunction<String> rounding) {
      rows.add(new Row(name, unit, per100, perPiece(per100), rounding, true));
    }

    /** Of what is not stated only so much is left open as the market's rounding shows. */
    private void addSaturates(String name, DoubleFunction<String> rounding) {
      Outcome<Saturates> all = Saturates.in(makeup);
      rows.add(new Row(
          name,
          "g",
          all.flatMap(one -> one.times(100, rounding)),
          makeup.piece().map(piece -> all.flatMap(one -> one.times(piece.grams(), rounding))),
          rounding,
          true));
    }

    private Optional<Outcome<Double>> perPiece(Outcome<Double> per100) {
      return makeup.piece().map(piece -> per100.map(amount -> amount * piece.grams() / 100));
    }

    private Outcome<Double> family(Family family) {
      return composition.map(all -> all.share(family).percent());
    }

    private Outcome<Double> component(Component component) {
      return composition.map(all -> 100 * all.fraction(component));
    }

    /** Available carbohydrate with polyols, without fibre: annex I, point 7. */
    private static Outcome<Double> european(Outcome<Composition> composition) {
      return composition.map(all -> 100
          * all.weighted(component -> switch (component.family()) {
            case SUGAR, OLIGOSACCHARIDE, STARCH, POLYOL, OTHER -> 1;
            default -> 0;
          }));
    }

    /** By difference, fibre and organic acids included: 21 CFR 101.9(c)(6). */
    private static Outcome<Double> american(Outcome<Composition> composition) {
      return composition.map(all -> 100
          * all.weighted(component -> switch (component.family()) {
            case WATER, PROTEIN, FAT, MINERAL, ETHANOL -> 0;
            default -> 1;
          }));
    }

    /** The sugars of every ingredient that counts as added sugar; no cook takes any away. */
    private Outcome<Double> addedSugars() {
      Outcome<Ratio> sum = Outcome.known(Ratio.ZERO);
      for (IngredientUse use : makeup.uses()) {
        if (use.says("traits", "added-sugar")) {
          Outcome<Ratio> sugars =
              Outcome.both(use.share(), use.composition(), (share, all) -> share.times(added(all)));
          sum = Outcome.both(sum, sugars, Ratio::plus);
        }
      }
      return sum.map(Ratio::percent);
    }

    /** The milk sugar of milk is not added; pure milk sugar is. */
    private static Ratio added(Composition all) {
      boolean isMilk = all.fraction(Component.PROTEIN) > 0;
      return isMilk
          ? all.sugars().minus(Ratio.ofFraction(all.fraction(Component.LACTOSE)))
          : all.sugars();
    }
  }
}
