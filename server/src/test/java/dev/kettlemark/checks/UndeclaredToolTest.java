package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UndeclaredToolTest {

  private final RuleFixture undeclaredTool = RuleFixture.of(new UndeclaredTool());

  @Test
  void marksAMisspeltPan() {
    undeclaredTool.check("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup in coper-pan
                       ^^^^^^^^^ undeclared-tool: `lantern-yard` lists no `coper-pan` among its tools
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void mendsMarksAMisspeltPan() {
    undeclaredTool.checkFirstFix("Write `copper-pan`", """
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup in coper-pan
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """, """
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup in copper-pan
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        """);
  }

  @Test
  void marksAForeignRackOfAReleasedFormula() {
    undeclaredTool.check("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into slab-300
          set       for 2 h at 18-20 °C
          rest      on wire-rack for 10 min
                       ^^^^^^^^^ undeclared-tool: `lantern-yard` lists no `wire-rack` among its tools
        """);
  }

  @Test
  void offersNothingAsMarksAForeignRackOfAReleasedFormula() {
    undeclaredTool.checkNoFix("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into slab-300
          set       for 2 h at 18-20 °C
          rest      on wire-rack for 10 min
        """);
  }

  @Test
  void leavesAForeignRackAtTheBenchAlone() {
    undeclaredTool.check("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into slab-300
          set       for 2 h at 18-20 °C
          rest      on wire-rack for 10 min
        """);
  }

  @Test
  void knowsWhatTheHouseListsWithoutFigures() {
    undeclaredTool.check("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
          tool wire-rack
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into slab-300
          set       for 2 h at 18-20 °C
          rest      on wire-rack for 10 min
        """);
  }

  @Test
  void staysQuietWithoutAHouse() {
    undeclaredTool.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup in any-pan
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into frame-small
          set       for 2 h at 18-20 °C
        """);
  }

  @Test
  void leavesSpeedsAndTraysAlone() {
    undeclaredTool.check("""
        house lantern-yard
          bowl mixer-six holds 5.7 L
          pan copper-pan holds 7 L
          frame slab-300 measures 300 x 200 x 15 mm
        formula plain-syrup
          version   2 on 2026-03-01
          status    released
          percent   of charge
          batch     1000 g
        stage syrup in copper-pan
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        stage slab
          all of    syrup
          deposit   syrup into tray
          set       for 2 h at 18-20 °C
          mix       syrup while whisking on low
        """);
  }
}
