package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** Locust bean gum hydrates above 85 °C: Phillips and Williams (2009), from memory. */
class AgentTooColdTest {

  private final RuleFixture agentTooCold = RuleFixture.of(new AgentTooCold());

  @Test
  void marksTheMistake() {
    agentTooCold.check("""
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
                 ^^^^^^^^^^^^^^^ agent-too-cold: `locust-bean-gum` comes to 60 °C, and needs 85 °C to take up water
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 60 °C for 10 min
        """);
  }

  @Test
  void isContentWithTheRightForm() {
    agentTooCold.check("""
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 90 °C for 10 min until hydrated
        """);
  }

  @Test
  void doubtsWhatIsPartlyHotEnough() {
    agentTooCold.check("""
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
                 ^^^^^^^^^^^^^^^ agent-too-cold: `locust-bean-gum` comes to 80–90 °C, and needs 85 °C to take up water
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 80-90 °C for 10 min
        """);
  }

  @Test
  void leavesWhatIsWarmedByEyeAlone() {
    agentTooCold.check("""
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm until dissolved
        """);
  }

  @Test
  void acceptsTheLimitItself() {
    agentTooCold.check("""
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 85 °C for 10 min
        """);
  }

  @Test
  void isCertainWhereTheWholeBandIsTooCold() {
    agentTooCold.checkSeverity(Severity.ERROR, """
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 60 °C for 10 min
        """);
  }

  @Test
  void doubtsWherePartOfItIs() {
    agentTooCold.checkSeverity(Severity.WARNING, """
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 80-90 °C for 10 min
        """);
  }

  @Test
  void mendsIt() {
    agentTooCold.checkFix("Warm `locust-bean-gum` to 90 °C", """
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm to 60 °C for 10 min
        """, """
        formula thick-sauce
          percent of charge
          batch 1000 g
          texture soft
        stage sauce
          0.20 % locust-bean-gum
          2.00 % caster-sugar
          q.s. raspberry-puree
          blend locust-bean-gum, caster-sugar
          sprinkle locust-bean-gum into raspberry-puree while whisking on low
          warm      locust-bean-gum to 90 °C for 10 min until hydrated
          warm to 60 °C for 10 min
        """);
  }
}
