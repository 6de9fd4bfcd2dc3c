package dev.kettlemark.features;

import dev.kettlemark.analysis.Figure;
import dev.kettlemark.analysis.FigureWords;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is told of a mass: weight, water, how it keeps and how it eats. */
final class FinishedMass {

  /** Wetter than this, nothing grains or turns to glass, and to tell so would only distract. */
  private static final Ratio WETTEST = Ratio.ofPercent(30);

  private static final List<Figure> OF_A_CONFECTION = List.of(
      Figure.DOCTOR_SHARE,
      Figure.SUCROSE_PER_WATER,
      Figure.SUPERSATURATION,
      Figure.GLASS_TRANSITION,
      Figure.TEXTURE);

  private final StageParcel parcel;
  private final MassFigures figures;

  FinishedMass(StageParcel parcel, Kitchen kitchen) {
    this.parcel = parcel;
    this.figures = MassFigures.of(parcel, kitchen);
  }

  /** The weight, with its slack where a model gave it; empty where unknown. */
  Optional<String> weight() {
    String slack =
        parcel.slack().grams() > 0 ? " ± " + Display.trimmed(parcel.slack().grams(), 1) + " g" : "";
    return parcel.mass().toOptional().map(mass -> Display.mass(mass) + slack);
  }

  /** The share of water, one decimal; empty where unknown. */
  Optional<String> water() {
    return parcel.composition().toOptional().map(c -> Display.estimate(c.water()));
  }

  /** The band of the share of water that the slack of the boiling model leaves. */
  Outcome<Band<Ratio>> waterBand() {
    return figures.moisture();
  }

  /** The water activity in storage, such as {@code 0.55–0.59}; empty where unknown. */
  Optional<String> activity() {
    return figures.waterActivity().toOptional().map(Display::activity);
  }

  /** How it keeps, eats and weighs by volume, as a list; figures that nobody can know are left out. */
  String figures() {
    List<Figure> told = new ArrayList<>(List.of(Figure.WATER_ACTIVITY));
    if (isConfection()) {
      told.addAll(OF_A_CONFECTION);
    }
    told.add(Figure.DENSITY);
    if (parcel.isAerated()) {
      told.add(Figure.OVERRUN);
    }
    List<String> lines = new ArrayList<>();
    for (Figure figure : told) {
      FigureWords.of(figures, figure)
          .ifKnown(words -> lines.add("- " + figure.title() + ": " + words));
    }
    return String.join("\n", lines);
  }

  private boolean isConfection() {
    return figures.moisture().map(band -> band.low().compareTo(WETTEST) <= 0).orElse(false);
  }
}
