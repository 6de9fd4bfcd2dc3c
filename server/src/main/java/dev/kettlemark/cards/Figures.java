package dev.kettlemark.cards;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.answers.AgentPower;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.Nutrition;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.SheetContent;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.SheetReader;
import dev.kettlemark.sheets.SheetRequest;
import dev.kettlemark.sheets.SheetUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.fraction.BigFraction;

/** Every figure of one side by its word, in the order in which they are told. */
final class Figures {

  private final Side side;
  private final Map<String, SheetFigure> figures = new LinkedHashMap<>();

  private Figures(Side side) {
    this.side = side;
  }

  static Map<String, SheetFigure> of(Side side) {
    Figures all = new Figures(side);
    all.agents();
    all.mass();
    all.eating();
    all.nutrition();
    all.cost();
    return all.figures;
  }

  private void agents() {
    AgentPower power = new AgentPower(side.snapshot(), side.formula());
    if (power.has(AgentPower.WHIPPING)) {
      practice("whipping-protein", power.whippingProtein());
      practice("as-egg-white", power.as(AgentPower.WHITE, AgentPower.WHIPPING));
    }
    if (power.has(AgentPower.GELLING)) {
      practice("as-gelatine", power.as(AgentPower.GELATINE, AgentPower.GELLING));
    }
  }

  private void practice(String word, Outcome<Double> fraction) {
    put(
        word,
        SheetUnit.PERCENT,
        fraction.map(f -> Reach.of(100 * f)),
        Spread.NONE,
        2,
        Basis.PRACTICE);
  }

  private void mass() {
    Outcome<Reach> cooked = side.process().cooked().map(weight -> {
      double slack = weight.slack().grams();
      double grams = weight.mass().grams();
      return new Reach(grams - slack, grams, grams + slack);
    });
    double charge = side.process().charge().mass().grams();
    model("yield", SheetUnit.PERCENT, cooked.map(reach -> share(reach, charge)), 1);
    model("cooked", SheetUnit.GRAM, cooked, 0);
  }

  private static Reach share(Reach grams, double charge) {
    double factor = 100 / charge;
    return new Reach(grams.low() * factor, grams.best() * factor, grams.high() * factor);
  }

  private void eating() {
    Outcome<MassFigures> made = side.figures();
    model("moisture", SheetUnit.PERCENT, percent(made.flatMap(MassFigures::moisture)), 1);
    model(
        "water-activity",
        SheetUnit.WATER_ACTIVITY,
        made.flatMap(MassFigures::waterActivity)
            .map(band -> SheetFigure.reach(band, Ratio::fraction)),
        2);
    model(
        "glass-transition",
        SheetUnit.CELSIUS,
        made.flatMap(MassFigures::glassTransition)
            .map(band -> SheetFigure.reach(band, t -> t.celsius())),
        0);
    put(
        "doctor-share",
        SheetUnit.PERCENT,
        made.flatMap(MassFigures::doctorShare).map(share -> Reach.of(share.percent())),
        Spread.NONE,
        1,
        Basis.EXACT);
    model(
        "sweetness",
        SheetUnit.NUMBER,
        made.flatMap(MassFigures::sweetness).map(band -> SheetFigure.reach(band, Ratio::fraction)),
        2);
    model(
        "density",
        SheetUnit.GRAM_PER_MILLILITRE,
        made.flatMap(MassFigures::density)
            .map((Band<Density> band) -> SheetFigure.reach(band, Density::gramsPerMillilitre)),
        2);
    model("overrun", SheetUnit.PERCENT, percent(made.flatMap(MassFigures::overrun)), 0);
  }

  private static Outcome<Reach> percent(Outcome<Band<Ratio>> band) {
    return band.map(b -> SheetFigure.reach(b, Ratio::percent));
  }

  /** In 100 g, by the European rows: they are the wider list of the two markets. */
  private void nutrition() {
    side.label()
        .ifPresent(label -> Nutrition.of(label, Market.EU)
            .rows()
            .forEach(row -> put(
                word(row),
                row.unit().equals("g") ? SheetUnit.GRAM : SheetUnit.NUMBER,
                row.per100().map(Reach::of),
                Spread.NONE,
                row.unit().equals("g") ? 1 : 0,
                Basis.EXACT)));
  }

  /** The word of a row of a declaration. */
  static String word(Nutrition.Row row) {
    return "nutrition."
        + (row.unit().equals("g") ? row.name() : row.unit().toLowerCase(Locale.ROOT));
  }

  /** Whatever the sheet of this batch says of its cost; nothing where the house has no prices. */
  private void cost() {
    SheetRequest request = SheetRequest.of(side.name(), SheetReader.PRODUCTION, Locale.UK)
        .making(new SheetRequest.Size.Charge(grams(side.batch())));
    String id = side.name() + ".cost";
    SheetContent.of(side.snapshot(), request).toOptional().stream()
        .flatMap(sheet -> sheet.figures().stream())
        .filter(figure -> figure.id().equals(id) || figure.id().equals(id + ".least"))
        .forEach(figure -> put(
            "cost",
            figure.unit(),
            figure.id().equals(id) ? figure.reach() : figure.reach().flatMap(Figures::atLeast),
            figure.spread(),
            figure.decimals(),
            figure.basis()));
  }

  private static Outcome<Reach> atLeast(Reach known) {
    return Outcome.unknown(
        Reason.MISSING_FIGURE,
        "a price is missing; without it %s",
        Display.trimmed(known.best(), 2));
  }

  private static BigFraction grams(Mass mass) {
    return new BigFraction(Math.round(mass.grams() * 1000), 1000);
  }

  private void model(String word, SheetUnit unit, Outcome<Reach> reach, int decimals) {
    put(word, unit, reach, Spread.BAND, decimals, Basis.MODEL);
  }

  private void put(
      String word, SheetUnit unit, Outcome<Reach> reach, Spread spread, int decimals, Basis basis) {
    figures.put(
        word, new SheetFigure(side.name() + "." + word, unit, reach, spread, decimals, basis));
  }
}
