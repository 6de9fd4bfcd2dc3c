package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Quantiles of Student's t at 0.975: NIST/SEMATECH e-Handbook of Statistical Methods, section
 * 1.3.6.7.2, from memory. All else by hand.
 */
class CorrectionTest {

  /** Values of spread √n have a band of just t on either side. */
  @ParameterizedTest
  @CsvSource({"2,12.706", "3,4.303", "4,3.182", "5,2.776", "11,2.228"})
  void spansTheBandOfStudent(int n, double t) {
    Map<String, List<Double>> found = new LinkedHashMap<>();
    for (int i = 0; i < n; i++) {
      found.put("T-" + i, List.of(i == 0 ? 1.0 : 0.0));
    }
    Correction correction = Correction.of(CorrectionQuantity.PROBE, found);
    double half = (correction.band().orElseThrow().high() - correction.mean())
        / (correction.spread().orElseThrow() / Math.sqrt(n));
    assertEquals(t, half, 0.001);
  }

  /** 1, 2, 3: mean 2, spread 1, band 2 ± 4.303/√3 = ± 2.484. */
  @Test
  void sumsUpThreeTrials() {
    Correction correction = Correction.of(
        CorrectionQuantity.WATER_LEFT,
        Map.of("T-1", List.of(1.0), "T-2", List.of(2.0), "T-3", List.of(3.0)));
    assertEquals(2, correction.mean(), 1e-12);
    assertEquals(1, correction.spread().orElseThrow(), 1e-12);
    assertEquals(-0.484, correction.band().orElseThrow().low(), 0.001);
    assertEquals(4.484, correction.band().orElseThrow().high(), 0.001);
    assertTrue(correction.isEnough());
    assertTrue(correction.isWithinScatter());
  }

  @Test
  void countsReadingsOfOneBatchAsOne() {
    Correction correction = Correction.of(
        CorrectionQuantity.PROBE, Map.of("T-1", List.of(1.0, 3.0), "T-2", List.of(4.0)));
    assertEquals(3, correction.mean(), 1e-12);
    assertEquals(2, correction.count());
    assertEquals(3, correction.readings());
    assertFalse(correction.isEnough());
  }

  @Test
  void hasNoSpreadOfOneTrial() {
    Correction correction =
        Correction.of(CorrectionQuantity.PROBE, Map.of("T-1", List.of(1.0, 3.0)));
    assertEquals(Optional.empty(), correction.spread());
    assertEquals(Optional.empty(), correction.band());
  }
}
