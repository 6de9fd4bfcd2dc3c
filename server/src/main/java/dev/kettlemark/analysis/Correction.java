package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Band;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * By how much a kitchen differs from the model, as far as its trials tell.
 *
 * <p>Several readings of one batch are not independent of each other; they count as one, their mean.
 *
 * <p>Equations: mean m = Σ xᵢ/n; spread s = √(Σ (xᵢ − m)²/(n − 1)); band m ± t(0.975, n − 1)·s/√n,
 * in which the true mean lies with 95 % confidence if the scatter is normal.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.1, 1.3.5.2 and 1.3.5.6.
 *
 * @param quantity in what it differs
 * @param trials the names of the trials that tell, in the order of the library
 * @param readings how many measurements those are
 * @param mean over the trials
 * @param spread the standard deviation between trials; empty for a single one
 * @param band in which the mean lies; empty for a single trial
 */
public record Correction(
    CorrectionQuantity quantity,
    List<String> trials,
    int readings,
    double mean,
    Optional<Double> spread,
    Optional<Band<Double>> band) {

  /** Two batches may agree by chance; common practice, no source. */
  public static final int FEWEST_TRIALS = 3;

  private static final double ONE_SIDE = 0.975;

  public Correction {
    trials = List.copyOf(trials);
  }

  /**
   * The statistics of what was found.
   *
   * @param found at least one trial, each with at least one reading
   */
  static Correction of(CorrectionQuantity quantity, Map<String, List<Double>> found) {
    List<Double> means = found.values().stream().map(Correction::mean).toList();
    int n = means.size();
    double mean = mean(means);
    Optional<Double> spread = n < 2
        ? Optional.empty()
        : Optional.of(
            Math.sqrt(means.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum() / (n - 1)));
    Optional<Band<Double>> band = spread.map(s -> {
      double half =
          new TDistribution(n - 1.0).inverseCumulativeProbability(ONE_SIDE) * s / Math.sqrt(n);
      return new Band<>(mean - half, mean + half);
    });
    return new Correction(
        quantity,
        List.copyOf(found.keySet()),
        found.values().stream().mapToInt(List::size).sum(),
        mean,
        spread,
        band);
  }

  /** How many batches it rests on. */
  public int count() {
    return trials.size();
  }

  /** Whether there are enough batches to lean on it. */
  public boolean isEnough() {
    return count() >= FEWEST_TRIALS;
  }

  /** Whether it may well be nothing but scatter: its band holds zero. */
  public boolean isWithinScatter() {
    return quantity.isDifference() && band.filter(b -> b.contains(0.0)).isPresent();
  }

  private static double mean(Collection<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }
}
