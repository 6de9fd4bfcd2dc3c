package dev.kettlemark.cards;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.cards.Exchange.Amount;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.SheetUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/** What a dose is on other bases than the charge. */
final class Dose {

  private Dose() {}

  /** A basis that both sides are asked about. */
  sealed interface Of {

    /** What is left after the cook. */
    record Finished() implements Of {}

    /** All that is weighed into the stage that it is weighed into. */
    record OwnStage() implements Of {}

    /** A basis that a formula declares. */
    record Declared(String name) implements Of {}

    default Phrase phrase() {
      if (this instanceof Declared declared) {
        return Phrase.words("basis.of.declared", Phrase.given(declared.name()));
      }
      return Phrase.words(this instanceof Finished ? "basis.of.finished" : "basis.of.stage");
    }
  }

  /** The finished weight, the stage, and what either formula declares. */
  static List<Of> bases(SideBySide both) {
    Set<String> declared = new LinkedHashSet<>();
    for (Side side : List.of(both.first(), both.second())) {
      side.formula()
          .formula()
          .bases()
          .forEach(basis -> declared.add(basis.name().value()));
    }
    List<Of> bases = new ArrayList<>(List.of(new Of.Finished(), new Of.OwnStage()));
    declared.stream().sorted().forEach(name -> bases.add(new Of.Declared(name)));
    return bases;
  }

  static SheetFigure of(Side side, Optional<Amount> amount, Of of) {
    String material = amount.map(Amount::material).orElse("");
    Outcome<Reach> share = amount
        .map(a -> a.share()
            .flatMap(known -> of instanceof Of.Finished
                ? ofFinished(side, known.doubleValue())
                : basis(side, material, of)
                    .map(base -> Reach.of(100 * known.divide(base).doubleValue()))))
        .orElseGet(() -> Outcome.known(Reach.of(0)));
    boolean isModel = of instanceof Of.Finished;
    return new SheetFigure(
        side.name() + "." + material + ".of." + of.getClass().getSimpleName(),
        SheetUnit.PERCENT,
        share,
        isModel ? Spread.BAND : Spread.NONE,
        2,
        isModel ? Basis.MODEL : Basis.EXACT);
  }

  private static Outcome<Reach> ofFinished(Side side, double share) {
    double grams = share * side.process().charge().mass().grams();
    return side.process()
        .cooked()
        .flatMap(cooked -> cooked.mass().grams() > cooked.slack().grams()
            ? Outcome.known(new Reach(
                100 * grams / (cooked.mass().grams() + cooked.slack().grams()),
                100 * grams / cooked.mass().grams(),
                100 * grams / (cooked.mass().grams() - cooked.slack().grams())))
            : Outcome.unknown(Reason.OUTSIDE_VALID_RANGE, "nothing surely remains of it"));
  }

  /** What a basis weighs as a share of the charge. */
  private static Outcome<BigFraction> basis(Side side, String material, Of of) {
    BigFraction base = of instanceof Of.Declared declared
        ? declared(side, declared.name())
        : side.formula().amounts().totalOf(stage(side, material));
    return base.signum() > 0
        ? Outcome.known(base)
        : Outcome.unknown(Reason.MISSING_FIGURE, "the formula has no such basis");
  }

  private static BigFraction declared(Side side, String name) {
    return side.formula().formula().basis(name).isPresent()
        ? BasisWeights.of(side.formula().formula(), name)
            .map(side.formula().amounts()::weighted)
            .orElse(BigFraction.ZERO)
        : BigFraction.ZERO;
  }

  private static int stage(Side side, String material) {
    return side.formula().amounts().lines().stream()
        .filter(line -> line.line().ingredient().value().equals(material))
        .mapToInt(LineAmount::stage)
        .findFirst()
        .orElse(0);
  }
}
