package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OffSpeedStreamTest {

  private final RuleFixture offSpeedStream = RuleFixture.of(new OffSpeedStream());

  @Test
  void marksAGush() {
    offSpeedStream.check("""
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 5 s
                                       ^^^ off-speed-stream: 566 g of hot syrup in 5 s is 113.1 g in a second, usual is 1 to 20 g
        """);
  }

  @Test
  void marksATrickle() {
    offSpeedStream.check("""
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 20 min
                                       ^^^^^^ off-speed-stream: 566 g of hot syrup in 20 min is 0.5 g in a second, usual is 1 to 20 g
        """);
  }

  @Test
  void isContentAtBothLimits() {
    offSpeedStream.check("""
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 30 s
        """);
  }

  @Test
  void isContentWithASlowStream() {
    offSpeedStream.check("""
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 9 min
        """);
  }

  @Test
  void allowsALargeBatchAMinute() {
    offSpeedStream.check("""
        formula meringue
          batch   20 kg
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 60 s
        """);
  }

  @Test
  void saysNothingWithoutABatch() {
    offSpeedStream.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 5 s
        """);
  }

  @Test
  void takesMoreTime() {
    offSpeedStream.checkFix("Take 90 s for it", """
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 5 s
        """, """
        formula meringue
          batch   1000 g
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam over 90 s
        """);
  }
}
