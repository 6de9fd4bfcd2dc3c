package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ChargeWeight;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.FinishedWeight;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.quantity.Volume;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A formula taken to a batch that gives what is wanted.
 *
 * <p>The way goes backwards: what is wanted, plus handling loss, is what must be cooked; that, plus
 * what boils away, is the charge. Percentages stay as they are.
 *
 * @param formula the formula's name
 * @param batch the charge in grams as a batch line can say it: exact, or rounded up to a tenth of a
 *     gram
 * @param charge all that is weighed in
 * @param cooked what is left of it after cooking
 * @param finished what is left after handling loss
 * @param weighing what to weigh on which scale
 * @param splits stages that must be made in several charges
 * @param derivation the way back from the target to the charge
 */
public record Scaling(
    String formula,
    BigFraction batch,
    ChargeWeight charge,
    CookedWeight cooked,
    FinishedWeight finished,
    WeighingList weighing,
    List<VesselSplit> splits,
    Derivation derivation) {

  /** The yield hardly depends on the charge; this many rounds settle it by far. */
  private static final int MOST_ROUNDS = 8;

  private static final double SETTLED = 1e-12;

  public Scaling {
    splits = List.copyOf(splits);
  }

  /** Takes a formula to a target; unknown, with the reason, where the target cannot be worked out. */
  public static Outcome<Scaling> of(ComputedFormula formula, Target target) {
    if (!formula.amounts().complete()) {
      return Outcome.unknown(
          Reason.DEPENDS_ON_UNKNOWN, "some amounts of the formula are not known");
    }
    BigFraction loss = target.lossShare().orElse(BigFraction.ZERO);
    if (loss.signum() < 0 || loss.compareTo(BigFraction.ONE) >= 0) {
      return Outcome.unknown(Reason.CONTRADICTION, "a loss lies from 0 to less than 100 %");
    }
    return charge(formula, target)
        .flatMap(grams -> grams.signum() > 0
            ? scaled(formula, target, writable(grams), loss)
            : Outcome.unknown(Reason.CONTRADICTION, "a batch weighs more than nothing"));
  }

  private static Outcome<Scaling> scaled(
      ComputedFormula formula, Target target, BigFraction batch, BigFraction loss) {
    Mass charge = Mass.ofGrams(batch.doubleValue());
    ProcessResult process = formula.processWith(charge);
    Ratio lost = Ratio.ofFraction(loss.doubleValue());
    return process.cooked().map(cooked -> {
      Mass left = cooked.mass().times(lost.complement());
      FinishedWeight finished = new FinishedWeight(left);
      return new Scaling(
          formula.formula().name().value(),
          batch,
          process.charge(),
          cooked,
          finished,
          WeighingList.of(formula, batch),
          VesselSplit.of(formula, process),
          ScalingDerivation.of(formula, target, process, cooked, finished, lost));
    });
  }

  private static Outcome<BigFraction> charge(ComputedFormula formula, Target target) {
    if (target instanceof Target.Charge charge) {
      return Outcome.known(charge.grams());
    }
    if (target instanceof Target.Finished finished) {
      return chargeFor(formula, finished.grams(), finished.loss());
    }
    if (target instanceof Target.Pieces pieces) {
      return chargeFor(formula, pieces.count().multiply(pieces.pieceGrams()), pieces.loss());
    }
    if (target instanceof Target.Moulds moulds) {
      return mould(formula, moulds)
          .flatMap(volume -> MassDensity.of(formula)
              .map(d -> exact(volume.millilitres() * d.gramsPerMillilitre())))
          .flatMap(grams -> chargeFor(formula, grams, moulds.loss()));
    }
    if (target instanceof Target.Frames frames) {
      return frame(formula, frames)
          .flatMap(volume -> MassDensity.of(formula)
              .map(d -> exact(volume.millilitres() * d.gramsPerMillilitre())))
          .flatMap(grams -> chargeFor(formula, grams, frames.loss()));
    }
    if (target instanceof Target.BowlLimit limit) {
      return bowlLimit(formula, limit.bowl());
    }
    return inHand(formula, (Target.InHand) target);
  }

  /** The charge that leaves so many grams after cook-off and loss; exact where nothing boils away. */
  private static Outcome<BigFraction> chargeFor(
      ComputedFormula formula, BigFraction finished, BigFraction loss) {
    BigFraction needed = finished.divide(BigFraction.ONE.subtract(loss));
    if (formula.process().yieldShare().map(share -> share.fraction() <= 0).orElse(false)) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "the last stage leaves nothing, whatever is weighed in");
    }
    if (formula.process().evaporated().grams() == 0) {
      return formula
          .process()
          .yieldShare()
          .map(share -> share.fraction() == 1 ? needed : needed.divide(exact(share.fraction())));
    }
    double cooked = needed.doubleValue();
    double charge = cooked;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Outcome<Ratio> share = formula.processWith(Mass.ofGrams(charge)).yieldShare();
      if (share instanceof Outcome.Unknown<Ratio> unknown) {
        return unknown.retyped();
      }
      double next = cooked / share.orElse(Ratio.ONE).fraction();
      boolean settled = Math.abs(next - charge) <= SETTLED * next;
      charge = next;
      if (settled) {
        break;
      }
    }
    return Outcome.known(exact(charge));
  }

  private static Outcome<Volume> mould(ComputedFormula formula, Target.Moulds target) {
    return formula
        .kitchen()
        .house()
        .flatMap(house -> house.mould(target.mould()))
        .map(mould -> Outcome.known(mould.cavity().times(mould.pieces() * (double) target.count())))
        .orElseGet(() -> unknownTool("mould", target.mould()));
  }

  private static Outcome<Volume> frame(ComputedFormula formula, Target.Frames target) {
    return formula
        .kitchen()
        .house()
        .flatMap(house -> house.frame(target.frame()))
        .map(frame -> Outcome.known(frame.volume().times(target.count())))
        .orElseGet(() -> unknownTool("frame", target.frame()));
  }

  /** The charge at which the fullest stage in a bowl is as much as its whisk can take. */
  private static Outcome<BigFraction> bowlLimit(ComputedFormula formula, String name) {
    Optional<House.Vessel> bowl = formula.kitchen().vessel(name);
    if (bowl.isEmpty()) {
      return unknownTool("bowl", name);
    }
    if (bowl.get().whips().isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE, "the house does not say how much `%s` whips", name);
    }
    double most = bowl.get().whips().get().high().grams();
    double fullest = formula.process().stages().stream()
        .filter(stage -> isIn(stage, name))
        .mapToDouble(Scaling::gramsIn)
        .max()
        .orElse(0);
    if (fullest <= 0) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE, "no stage of the formula is made in `%s`", name);
    }
    double charge = formula.process().charge().mass().grams() * most / fullest;
    return Outcome.known(roundedDown(charge));
  }

  static boolean isIn(StageResult stage, String vessel) {
    return stage.stage().vessel().filter(v -> v.value().equals(vessel)).isPresent();
  }

  /** What lies in a stage at its fullest: all that was weighed and taken. */
  static double gramsIn(StageResult stage) {
    return stage.weighed().plus(stage.taken().orElse(Mass.ZERO)).grams();
  }

  private static Outcome<BigFraction> inHand(ComputedFormula formula, Target.InHand target) {
    BigFraction share = formula.amounts().shareOf(target.ingredient());
    return share.signum() > 0
        ? Outcome.known(target.grams().divide(share))
        : Outcome.unknown(Reason.MISSING_FIGURE, "the formula weighs no `%s`", target.ingredient());
  }

  private static <T> Outcome<T> unknownTool(String kind, String name) {
    return Outcome.unknown(
        Reason.MISSING_FIGURE, "the house has no %s `%s`", Remark.of(kind), name);
  }

  /** A batch line's figure: as it is with up to two decimals, else rounded up to a tenth of a gram. */
  private static BigFraction writable(BigFraction grams) {
    BigFraction hundredths = grams.multiply(100);
    if (hundredths.getDenominator().equals(BigInteger.ONE)) {
      return grams;
    }
    BigDecimal up =
        grams.bigDecimalValue(6, RoundingMode.HALF_UP).setScale(1, RoundingMode.CEILING);
    return new BigFraction(up.unscaledValue()).divide(10);
  }

  private static BigFraction roundedDown(double grams) {
    return new BigFraction((long) Math.floor(grams * 10 + 1e-6)).divide(10);
  }

  static BigFraction exact(double value) {
    BigDecimal decimal = BigDecimal.valueOf(value);
    return decimal.scale() <= 0
        ? new BigFraction(decimal.toBigIntegerExact())
        : new BigFraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  /** The batch as a line of the text says it, such as {@code 1885.9 g}. */
  public String batchText() {
    return Display.trimmed(batch.doubleValue(), 2) + " g";
  }

  /** What in this scaling needs the reader's eye, in plain words. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    splits.forEach(split -> notes.add(split.words()));
    notes.addAll(weighing.notes());
    return notes;
  }
}
