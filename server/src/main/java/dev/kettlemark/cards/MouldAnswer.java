package dev.kettlemark.cards;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Value;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import dev.kettlemark.science.Equation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Takes a formula from one mould or frame of the house to another.
 *
 * <p>Equation: the mass stays m, so the other takes n = m/(V·ρ) fillings, with V what it holds and ρ the
 * density of the mass.
 *
 * <p>How long the pieces take to set is not computed; heat leaves a shape of the same kind in a time that
 * goes with the square of its size, V^(2/3) (conduction, Fourier number; from memory), which is told as a
 * ratio.
 */
public final class MouldAnswer {

  private static final Equation EQUATION = new Equation(
      "one mould for another",
      "n = m/(V·ρ)",
      "geometry; density as the formula expects it or as its composition gives it",
      Confidence.EXACT);

  /** Within this of a whole filling it is whole: nobody fills a cavity to a hundredth. */
  private static final double NEAR = 0.005;

  private MouldAnswer() {}

  /** A mould or a frame, as one filling. */
  private record Form(String name, double millilitres, Optional<Integer> pieces) {

    static Optional<Form> of(House house, String name) {
      return house
          .mould(name)
          .map(mould -> new Form(
              name, mould.cavity().millilitres() * mould.pieces(), Optional.of(mould.pieces())))
          .or(() -> house
              .frame(name)
              .map(frame -> new Form(name, frame.volume().millilitres(), Optional.empty())));
    }

    Target filled(int count, BigFraction loss) {
      return pieces.isPresent()
          ? new Target.Moulds(name, count, loss)
          : new Target.Frames(name, count, loss);
    }

    double pieceMillilitres() {
      return millilitres / pieces.orElse(1);
    }
  }

  /**
   * The answer.
   *
   * @param count how many of the first are filled now
   * @param loss the share lost in handling
   */
  public static Outcome<Answer> of(
      ComputedFormula formula, String from, int count, String to, BigFraction loss) {
    Optional<House> house = formula.kitchen().house();
    Optional<Form> one = house.flatMap(h -> Form.of(h, from));
    Optional<Form> other = house.flatMap(h -> Form.of(h, to));
    if (one.isEmpty() || other.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE, "the house has no mould or frame `%s`", one.isEmpty() ? from : to);
    }
    return Scaling.of(formula, one.get().filled(count, loss)).flatMap(now -> {
      double fillings = count * one.get().millilitres() / other.get().millilitres();
      int whole = (int) Math.ceil(fillings - NEAR);
      return Scaling.of(formula, other.get().filled(Math.max(1, whole), loss))
          .map(full -> answer(one.get(), count, now, other.get(), fillings, whole, full));
    });
  }

  private static Answer answer(
      Form one, int count, Scaling now, Form other, double fillings, int whole, Scaling full) {
    double mass = now.finished().mass().grams();
    double density = mass / (count * one.millilitres());
    List<Value> values = new ArrayList<>();
    values.add(value("fillings", fillings, "", 2));
    values.add(value("charge-now", now.batch().doubleValue(), "g", 1));
    values.add(value("charge-for-full", full.batch().doubleValue(), "g", 1));
    values.add(value("finished-mass", mass, "g", 1));
    one.pieces().ifPresent(pieces -> {
      values.add(value("pieces-now", (double) pieces * count, "pieces", 0));
      values.add(value("piece-now", one.pieceMillilitres() * density, "g", 2));
    });
    other.pieces().ifPresent(pieces -> {
      values.add(value("pieces-then", Math.floor(pieces * fillings + NEAR), "pieces", 0));
      values.add(value("piece-then", other.pieceMillilitres() * density, "g", 2));
    });
    List<Remark> notes = new ArrayList<>();
    double last = fillings - Math.floor(fillings + NEAR);
    if (last > NEAR) {
      notes.add(Remark.of(
          "of %s fillings the last is %s %% full; a charge of %s fills it",
          whole, Display.fixed(100 * last, 0), full.batchText()));
    }
    one.pieces()
        .flatMap(pieces -> other.pieces())
        .ifPresent(pieces -> notes.add(Remark.of(
            "a piece of the same shape needs about %s times as long to cool and set",
            Display.fixed(
                Math.cbrt(square(other.pieceMillilitres() / one.pieceMillilitres())), 2))));
    return new Answer(
        "Fill " + Display.fixed(fillings, 2) + " of " + other.name() + " with the mass of " + count
            + " of " + one.name(),
        values,
        List.of(),
        notes,
        EQUATION.derive(
            Display.fixed(fillings, 2),
            List.of(
                Derivation.given("mass", Display.fixed(mass, 1) + " g", "the scaling"),
                Derivation.given("density", Display.fixed(density, 2) + " g/mL", "the formula"),
                Derivation.given(
                    "one filling", Display.fixed(other.millilitres(), 1) + " mL", "the house"))));
  }

  private static double square(double value) {
    return value * value;
  }

  private static Value value(String word, double figure, String unit, int decimals) {
    String shown = Display.fixed(figure, decimals) + (unit.isEmpty() ? "" : " " + unit);
    return new Value(word, figure, figure, figure, unit, shown);
  }
}
