package dev.kettlemark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineEndsTest {

  /** Written with N for a line feed and R for a carriage return. */
  @ParameterizedTest
  @CsvSource({
    "'', N",
    "a, N",
    "aN, N",
    "aRN, RN",
    "aR, R",
    "RN, RN",
    "N, N",
    "aNbRN, N",
    "aRNbN, RN",
    "aRb, R",
    "NRN, N"
  })
  void areThoseOfTheFirstLine(String text, String expected) {
    assertEquals(expected, shown(LineEnds.of(text.replace('N', '\n').replace('R', '\r'))));
  }

  private static String shown(String ends) {
    return ends.replace('\n', 'N').replace('\r', 'R');
  }
}
