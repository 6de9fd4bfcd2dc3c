package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.fraction.BigFraction;
import org.hipparchus.fraction.BigFractionField;
import org.hipparchus.linear.Array2DRowFieldMatrix;
import org.hipparchus.linear.ArrayFieldVector;
import org.hipparchus.linear.FieldLUDecomposition;
import org.hipparchus.linear.FieldMatrix;

/**
 * The amounts of a formula as one linear system over the rationals.
 *
 * <p>Each line has a share x of the charge. A line of c percent of the charge reads x = c; a weight of
 * g grams reads x = g / charge; a line of c percent of a basis reads x = c·B; a {@code q.s.} line is
 * the rest. So the unknowns are the bases' own shares B and the rest: each basis reads B = Σ wⱼxⱼ
 * with its weights w, and the rest closes Σ xⱼ = 1. The system is solved once and exactly; nothing is
 * rounded.
 *
 * <p>A formula whose percentages are of some of its own ingredients ({@code percent of white-sugar},
 * that line being 100 %) leaves the scale open; the whole then closes it: Σ xⱼ = 1.
 */
final class AmountSystem {

  /** No bench formula has so many bases; exact elimination grows with the cube of their number. */
  private static final int MOST_UNKNOWNS = 40;

  /** No line is so many times the charge; beyond it the figure is a slip of the keyboard. */
  private static final BigFraction MOST_SHARE = new BigFraction(1_000_000_000);

  private final Formula formula;
  private final List<AmountLine> lines;
  private final Function<AmountLine, Outcome<BigFraction>> gramsByVolume;
  private final BigFraction finishedPerCharge;

  /** What a share can be of besides charge and finished. */
  private final Set<String> basisNames;

  /** The weights of each basis that a line names; empty where the formula knows none such. */
  private final Map<String, Optional<List<BigFraction>>> bases = new HashMap<>();

  /** The unknown that stands for each basis. */
  private final Map<String, Integer> columns = new LinkedHashMap<>();

  private AmountSystem(
      Formula formula,
      Function<AmountLine, Outcome<BigFraction>> gramsByVolume,
      BigFraction finishedPerCharge) {
    this.formula = formula;
    this.lines = formula.amounts();
    this.gramsByVolume = gramsByVolume;
    this.finishedPerCharge = finishedPerCharge;
    this.basisNames = BasisWeights.names(formula);
  }

  /**
   * Solves a formula.
   *
   * @param gramsByVolume what a volume of a line's ingredient weighs, by its density
   * @param finishedPerCharge what the formula yields, for percentages of the finished weight
   */
  static Amounts solve(
      Formula formula,
      Function<AmountLine, Outcome<BigFraction>> gramsByVolume,
      BigFraction finishedPerCharge) {
    return new AmountSystem(formula, gramsByVolume, finishedPerCharge).solve();
  }

  /** A line in the system: its own value, or a row of coefficients. */
  private sealed interface Row {
    record Value(BigFraction share) implements Row {}

    record OfBasis(BigFraction factor, String basis) implements Row {}

    record Rest() implements Row {}

    record Unusable(Reason reason, Remark why) implements Row {}
  }

  private Amounts solve() {
    Optional<BigFraction> charge = charge();
    // A formula by weight is scaled to its batch; weights among percentages are taken as they are.
    Optional<BigFraction> scale = formula.isByWeight() ? sumOfWeights() : charge;
    List<Row> rows = lines.stream().map(line -> row(line, scale)).toList();
    Optional<BigFraction[]> solution = unknowns(rows) == 0
        ? Optional.of(new BigFraction[0])
        : unknowns(rows) > MOST_UNKNOWNS ? Optional.empty() : solveOpen(rows);
    List<Amounts.LineAmount> amounts = new ArrayList<>();
    int index = 0;
    for (int s = 0; s < formula.stages().size(); s++) {
      for (AmountLine line : formula.stages().get(s).amounts()) {
        amounts.add(new Amounts.LineAmount(s, line, share(rows.get(index), solution)));
        index++;
      }
    }
    return new Amounts(amounts, charge, solution.isPresent());
  }

  private Outcome<BigFraction> share(Row row, Optional<BigFraction[]> solution) {
    if (row instanceof Row.Value value) {
      return within(value.share());
    }
    if (row instanceof Row.Unusable unusable) {
      return Outcome.unknown(unusable.reason(), unusable.why());
    }
    if (solution.isEmpty()) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "the amounts that hang on each other have no single solution");
    }
    BigFraction[] values = solution.get();
    return row instanceof Row.OfBasis share
        ? within(values[column(share)].multiply(share.factor()))
        : within(values[values.length - 1]);
  }

  private static Outcome<BigFraction> within(BigFraction share) {
    return share.abs().compareTo(MOST_SHARE) <= 0
        ? Outcome.known(share)
        : Outcome.unknown(
            Reason.OUTSIDE_VALID_RANGE, "the amount is more than a billion times the charge");
  }

  /** The batch as written, or for a formula by weight the sum of its weights. */
  private Optional<BigFraction> charge() {
    return formula.batch().map(Located::value).or(this::sumOfWeights);
  }

  private Optional<BigFraction> sumOfWeights() {
    BigFraction sum = BigFraction.ZERO;
    for (AmountLine line : lines) {
      if (line.measure().value() instanceof Measure.Share
          || line.measure().value() instanceof Measure.Sufficient) {
        return Optional.empty();
      }
      sum = sum.add(grams(line).orElse(BigFraction.ZERO));
    }
    return sum.signum() > 0 ? Optional.of(sum) : Optional.empty();
  }

  private Outcome<BigFraction> grams(AmountLine line) {
    Measure measure = line.measure().value();
    if (measure instanceof Measure.Weight weight) {
      return Outcome.known(weight.grams());
    }
    return gramsByVolume.apply(line);
  }

  private Row row(AmountLine line, Optional<BigFraction> scale) {
    Measure measure = line.measure().value();
    if (measure instanceof Measure.Sufficient) {
      return new Row.Rest();
    }
    if (measure instanceof Measure.Share share) {
      return ofBasis(share);
    }
    if (measure instanceof Measure.Unreadable) {
      return new Row.Unusable(Reason.MISSING_FIGURE, Remark.of("the amount cannot be read"));
    }
    return grams(line)
        .fold(
            grams -> scale
                .<Row>map(whole -> new Row.Value(grams.divide(whole)))
                .orElseGet(() -> new Row.Unusable(
                    Reason.MISSING_FIGURE,
                    Remark.of("a weight among percentages needs a batch weight"))),
            unknown -> new Row.Unusable(unknown.reason(), unknown.why()));
  }

  private Row ofBasis(Measure.Share share) {
    Basis basis = formula.basisOf(share);
    if (basis instanceof Basis.Charge) {
      return new Row.Value(share.fraction());
    }
    if (basis instanceof Basis.Finished) {
      return new Row.Value(share.fraction().multiply(finishedPerCharge));
    }
    String name = ((Basis.Named) basis).name().value();
    if (!basisNames.contains(name)) {
      return new Row.Unusable(
          Reason.MISSING_FIGURE, Remark.of("the formula knows no basis `%s`", name));
    }
    columns.computeIfAbsent(name, n -> columns.size());
    if (columns.size() <= MOST_UNKNOWNS) {
      bases.computeIfAbsent(name, n -> BasisWeights.of(formula, n));
    }
    return new Row.OfBasis(share.fraction(), name);
  }

  private int column(Row.OfBasis row) {
    return columns.getOrDefault(row.basis(), 0);
  }

  private static long rests(List<Row> rows) {
    return rows.stream().filter(Row.Rest.class::isInstance).count();
  }

  private long unknowns(List<Row> rows) {
    return columns.size() + rests(rows);
  }

  /** The bases' shares in the order of their columns, and the share of a rest behind them. */
  private Optional<BigFraction[]> solveOpen(List<Row> rows) {
    boolean closed = rests(rows) > 0;
    if (rests(rows) > 1) {
      return Optional.empty();
    }
    int size = columns.size() + (closed ? 1 : 0);
    FieldMatrix<BigFraction> matrix =
        new Array2DRowFieldMatrix<>(BigFractionField.getInstance(), size, size);
    BigFraction[] right = new BigFraction[size];
    Arrays.fill(right, BigFraction.ZERO);
    for (Map.Entry<String, Integer> basis : columns.entrySet()) {
      int r = basis.getValue();
      List<BigFraction> weights =
          bases.getOrDefault(basis.getKey(), Optional.empty()).orElseThrow();
      fill(matrix, right, r, rows, weights::get);
      matrix.addToEntry(r, r, BigFraction.ONE);
      if (!closed && saysNothing(matrix.getRow(r), right[r])) {
        closed = true;
        right[r] = BigFraction.ONE.negate();
        fill(matrix, right, r, rows, line -> BigFraction.ONE);
      }
    }
    if (size > columns.size()) {
      right[size - 1] = BigFraction.ONE.negate();
      fill(matrix, right, size - 1, rows, line -> BigFraction.ONE);
    }
    try {
      return Optional.of(new FieldLUDecomposition<>(matrix)
          .getSolver()
          .solve(new ArrayFieldVector<>(right))
          .toArray());
    } catch (MathIllegalArgumentException singular) {
      return Optional.empty();
    }
  }

  /** Whether a basis whose own lines make up 100 % of it says no more than that. */
  private static boolean saysNothing(BigFraction[] coefficients, BigFraction right) {
    return right.signum() == 0
        && Arrays.stream(coefficients).allMatch(coefficient -> coefficient.signum() == 0);
  }

  /** Brings a weighted sum of all lines to the left side, and what is known of it to the right. */
  private void fill(
      FieldMatrix<BigFraction> matrix,
      BigFraction[] right,
      int row,
      List<Row> rows,
      IntFunction<BigFraction> weights) {
    for (int i = 0; i < rows.size(); i++) {
      BigFraction weight = weights.apply(i);
      if (weight.signum() == 0) {
        continue;
      }
      if (rows.get(i) instanceof Row.Value value) {
        right[row] = right[row].add(weight.multiply(value.share()));
      } else if (rows.get(i) instanceof Row.OfBasis share) {
        matrix.addToEntry(row, column(share), weight.multiply(share.factor()).negate());
      } else if (rows.get(i) instanceof Row.Rest) {
        matrix.addToEntry(row, matrix.getColumnDimension() - 1, weight.negate());
      }
    }
  }
}
