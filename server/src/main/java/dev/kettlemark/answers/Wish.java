package dev.kettlemark.answers;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.GlassTransition;
import dev.kettlemark.science.WaterActivity;
import java.util.Optional;

/** What a cook is to give. Every figure of a wish falls as the cook gets hotter. */
public sealed interface Wish {

  /** The usual temperature at which a water activity is measured; common practice, no source. */
  Temperature MEASURED_AT = Temperature.ofCelsius(25);

  /** So much water in what the stage of the cook leaves. */
  record StageMoisture(Ratio water) implements Wish {}

  /** So much water in what the formula makes. */
  record FinishedMoisture(Ratio water) implements Wish {}

  /** Such a bite of what the formula makes, at the temperature of the room. */
  record Texture(Bite bite) implements Wish {}

  /** Such a water activity of what the formula makes, at 25 °C. */
  record Activity(Ratio activity) implements Wish {}

  /**
   * A bite by how far the room lies above the glass transition, in °C.
   *
   * <p>The limits are those of {@link dev.kettlemark.science.Texture}; the aim keeps a margin to both.
   */
  enum Bite {
    /** A glass that keeps on the shelf: its transition lies 10 °C above the room. */
    BRITTLE(-10, Double.NEGATIVE_INFINITY, 0),
    /** The middle between leathery and soft. */
    CHEWY(25, 10, 40),
    /** Soft by the error of the glass transition, 5 °C. */
    SOFT(45, 40, Double.POSITIVE_INFINITY);

    private final double aim;
    private final double least;
    private final double most;

    Bite(double aim, double least, double most) {
      this.aim = aim;
      this.least = least;
      this.most = most;
    }

    /** The bite that a word of {@code texture} asks of the sugar phase; empty where grain or gel make it. */
    public static Optional<Bite> ofWord(String word) {
      return switch (word) {
        case "brittle", "hard" -> Optional.of(BRITTLE);
        case "chewy" -> Optional.of(CHEWY);
        case "soft" -> Optional.of(SOFT);
        default -> Optional.empty();
      };
    }

    public String word() {
      return switch (this) {
        case BRITTLE -> "brittle";
        case CHEWY -> "chewy";
        case SOFT -> "soft";
      };
    }

    /** How far the room should lie above the glass transition, in °C. */
    double aim() {
      return aim;
    }

    /** Whether the room lies so far above the glass transition, in °C, that this is the bite. */
    public boolean allows(double roomAboveGlass) {
      return roomAboveGlass >= least && roomAboveGlass <= most;
    }
  }

  /** The figure that is wanted, in the terms of {@link #figure}. */
  default double wanted() {
    if (this instanceof StageMoisture stage) {
      return stage.water().fraction();
    }
    if (this instanceof FinishedMoisture finished) {
      return finished.water().fraction();
    }
    return this instanceof Activity activity
        ? activity.activity().fraction()
        : ((Texture) this).bite().aim();
  }

  /**
   * What a formula gives of it.
   *
   * @param stage index of the stage of the cook
   */
  default Outcome<Double> figure(ComputedFormula formula, int stage) {
    if (this instanceof StageMoisture) {
      StageResult left = formula.process().stages().get(stage);
      return left.left().composition().map(composition -> composition.water().fraction());
    }
    return formula.composition().flatMap(composition -> {
      if (this instanceof FinishedMoisture) {
        return Outcome.known(composition.water().fraction());
      }
      return this instanceof Activity
          ? WaterActivity.of(composition, MEASURED_AT).map(Ratio::fraction)
          : roomAboveGlass(composition, formula.kitchen().room());
    });
  }

  /** A figure of {@link #figure} alone, such as {@code 5.0 %}. */
  default String shown(double figure) {
    if (this instanceof StageMoisture || this instanceof FinishedMoisture) {
      return Display.estimate(Ratio.ofFraction(figure));
    }
    return this instanceof Activity ? Display.fixed(figure, 2) : Display.fixed(-figure, 0) + " °C";
  }

  /** What the figures are of, such as {@code water in the finished mass}. */
  default String of() {
    if (this instanceof StageMoisture) {
      return "water in what the stage leaves";
    }
    if (this instanceof FinishedMoisture) {
      return "water in the finished mass";
    }
    return this instanceof Activity ? "water activity" : "from the room up to the glass transition";
  }

  /** A figure in words, such as {@code 5.0 % water in the finished mass}. */
  default String words(double figure) {
    return shown(figure) + " " + of();
  }

  /** What is wanted, as a title says it, such as {@code a chewy bite}. */
  default String words() {
    return this instanceof Texture texture
        ? "a " + texture.bite().word() + " bite"
        : words(wanted());
  }

  /** How far the room lies above the middle of the glass transition's band, in °C. */
  static Outcome<Double> roomAboveGlass(Composition composition, Temperature room) {
    return GlassTransition.of(composition)
        .map(band -> room.kelvin() - Temperature.middleOf(band).kelvin());
  }

  /** A share is wanted of something that holds water at all. */
  default Outcome<Wish> checked() {
    double wanted = wanted();
    boolean fits = this instanceof Texture || (wanted > 0 && wanted < 1);
    return fits
        ? Outcome.known(this)
        : Outcome.unknown(
            Reason.CONTRADICTION, "%s does not lie between nothing and all", words(wanted));
  }
}
