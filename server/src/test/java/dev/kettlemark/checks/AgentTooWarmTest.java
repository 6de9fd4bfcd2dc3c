package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Methylcellulose hydrates below 15 °C: Phillips and Williams (2009), from memory. */
class AgentTooWarmTest {

  private final RuleFixture agentTooWarm = RuleFixture.of(new AgentTooWarm());

  @Test
  void marksTheMistake() {
    agentTooWarm.check("""
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
                 ^^^^^^^^^^^^^^^ agent-too-warm: `methylcellulose` takes up water below 15 °C, and the coldest that it meets is 21 °C
          q.s. water
          disperse methylcellulose in water
          warm to 80 °C
          deposit
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    agentTooWarm.check("""
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
          q.s. water
          disperse methylcellulose in water
          cool to 5 °C for 60 min until hydrated
          warm to 80 °C
          deposit
        """);
  }

  @Test
  void doubtsWhatIsPartlyCold() {
    agentTooWarm.check("""
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
                 ^^^^^^^^^^^^^^^ agent-too-warm: `methylcellulose` takes up water below 15 °C, and the coldest that it meets is 12–18 °C
          q.s. water
          disperse methylcellulose in water
          cool to 12-18 °C
          warm to 80 °C
          deposit
        """);
  }

  @Test
  void isCertainWhereTheWholeBandIsTooWarm() {
    agentTooWarm.checkSeverity(Severity.ERROR, """
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
          q.s. water
          disperse methylcellulose in water
          warm to 80 °C
          deposit
        """);
  }

  @Test
  void doubtsWherePartOfItIs() {
    agentTooWarm.checkSeverity(Severity.WARNING, """
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
          q.s. water
          disperse methylcellulose in water
          cool to 12-18 °C
          warm to 80 °C
          deposit
        """);
  }

  @Test
  void mendsIt() {
    agentTooWarm.checkFix("Cool `methylcellulose` to 10 °C in its liquid", """
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
          q.s. water
          disperse methylcellulose in water
          warm to 80 °C
          deposit
        """, """
        formula hot-gel
          percent of charge
          batch 1000 g
          texture gelled
        stage gel
          1.50 % methylcellulose
          q.s. water
          disperse methylcellulose in water
          cool      methylcellulose to 10 °C for 60 min until hydrated
          warm to 80 °C
          deposit
        """);
  }
}
