package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import org.junit.jupiter.api.Test;

class FormatterTest {

  @Test
  void alignsPointsUnitsAndNamesInAStage() {
    check("""
        stage foam
        1.05 % egg-white-powder
         36 % caster-sugar
        12.5% water at 60°C
        q.s. orange-peel-candied-in-long-strips at 20 °C
        """, """
        stage foam
           1.05 %             egg-white-powder
          36    %             caster-sugar
          12.5  %             water                               at 60 °C
           q.s.               orange-peel-candied-in-long-strips  at 20 °C
        """);
  }

  @Test
  void givesBasesAColumnOfTheirOwn() {
    check("""
        stage foam
        0.40 % of liquid guar-gum
        12 % of first-syrup honey
        3 % sugar
        """, """
        stage foam
           0.40 % of liquid       guar-gum
          12    % of first-syrup  honey
           3    %                 sugar
        """);
  }

  @Test
  void endsWholeNumbersAndFractionsTogether() {
    check("""
        stage dough
        1200 g flour
        2 each egg
        1/2 cups cream
        q.s. water
        """, """
        stage dough
          1200 g              flour
             2 each           egg
           1/2 cup            cream
          q.s.                water
        """);
  }

  @Test
  void putsWhatATakeTakesBelowTheOtherNames() {
    check("""
        stage body
        0.25 % sea-salt
        all of foam
        part 1/2 of syrup at 60 °C
        """, """
        stage body
           0.25 %             sea-salt
          all of              foam
          part 1/2 of         syrup                at 60 °C
        """);
  }

  @Test
  void putsWhatAFactSaysInAColumn() {
    check("""
        formula glaze    "Glaze,  plain"
          code GS-1
            version 2 on 2026-03-01
        expect yield 80%+-2
          basis liquid=water in foam,milk
          note "two  spaces"
        """, """
        formula glaze "Glaze,  plain"
          code      GS-1
          version   2  on 2026-03-01
          expect    yield 80 % ± 2
          basis     liquid = water in foam, milk
          note      "two  spaces"
        """);
  }

  @Test
  void letsALongWordPushOnlyItsOwnLine() {
    check("""
        ingredient potato-protein
        role whipping,protein
        coagulates above 60degC from "common practice"
        stands-in-for egg-white-powder
        use 0.3 - 1.2 % of charge from "common practice"
        """, """
        ingredient potato-protein
          role      whipping, protein
          coagulates above 60 °C        from "common practice"
          stands-in-for egg-white-powder
          use       0.3-1.2 % of charge  from "common practice"
        """);
  }

  @Test
  void alignsTheToolsOfAHouse() {
    check("""
        house quay
        altitude 8 m
        scale big reads 1 g to 6000 g
        scale fine-scale reads 0.01 g to 200 g
        bowl bowl-5 holds 4.8 L whips 90-1800 g weighs 1.1 kg
        frame slab measures 400 x 300 x 15 mm
        """, """
        house quay
          altitude    8 m
          scale       big         reads 1 g     to 6000 g
          scale       fine-scale  reads 0.01 g  to 200 g
          bowl        bowl-5      holds 4.8 L   whips 90-1800 g  weighs 1.1 kg
          frame       slab        measures 400 x 300 x 15 mm
        """);
  }

  @Test
  void alignsThePartsOfAProductAndTheChangesOfAVariant() {
    check("""
        product bite
        centre 18.0 g nougat
        coat 24 % of finished couverture
        loss 5 % of centre "trimmings"
        make 96 pieces

        variant nougat-plant of nougat
        replace egg-white-powder by 0.90 % potato-protein
        replace honey by 14.00 % agave-syrup
        add 0.30 % of liquid guar-gum in foam
        withdraw caution honey-infant
        """, """
        product bite
          centre    18.0 g              nougat
          coat      24 % of finished    couverture
          loss      5 % of centre       "trimmings"
          make      96 pieces

        variant nougat-plant of nougat
          replace   egg-white-powder  by 0.90 % potato-protein
          replace   honey             by 14.00 % agave-syrup
          add       0.30 % of liquid  guar-gum  in foam
          withdraw  caution honey-infant
        """);
  }

  @Test
  void alignsWhatATrialMeasured() {
    check("""
        trial T-1 of nougat on 2026-03-09 at quay
        lot honey "H-25"
        measured 140.4 °C end of syrup
        measured 0.52 aw body at 24 h
        scored 8 of 10 chew
        scored 8 chew
        """, """
        trial T-1 of nougat on 2026-03-09 at quay
          lot       honey               "H-25"
          measured  140.4 °C    end of syrup
          measured  0.52 aw     body at 24 h
          scored    8 of 10     chew
          scored    8           chew
        """);
  }

  @Test
  void spellsUnitsRangesAndTolerancesOneWay() {
    check("""
        stage slab
        rest for 1 days at 18 – 22degC
        set for 3 day below 50%RH
        cook to 250degF+/-2
        cool to -18 - -12 °C
        """, """
        stage slab
          rest      for 1 day at 18-22 °C
          set       for 3 days below 50 %RH
          cook      to 250 °F ± 2
          cool      to -18–-12 °C
        """);
  }

  @Test
  void keepsOneBlankLineAtMostAndOneBeforeEachHeading() {
    check("""


        formula glaze


          batch     100 g
        stage one
          mix



          mix
        # belongs to two
        stage two
          mix

        """, """
        formula glaze

          batch     100 g

        stage one
          mix

          mix

        # belongs to two
        stage two
          mix
        """);
  }

  @Test
  void indentsCommentsWithWhatTheyStandAbove() {
    check("""
        # the file

        stage one
        # above a step
          mix  # a   b\s\s
              # of the body
        # a divider

        stage two
        """, """
        # the file

        stage one
          # above a step
          mix  # a   b
          # of the body
        # a divider

        stage two
        """);
  }

  @Test
  void alignsCommentsBehindLinesOfOneKind() {
    check("""
        stage one # heading
        3 % sugar # sweet
        12 % invert-sugar # sweeter
        mix sugar, invert-sugar # well
        rest # a while
        """, """
        stage one  # heading
           3 %                sugar         # sweet
          12 %                invert-sugar  # sweeter
          mix       sugar, invert-sugar  # well
          rest                           # a while
        """);
  }

  @Test
  void leavesALineWithAProblemAsItIs() {
    check("""
        stage one
        3 % sugar
        1,200   g  water\s\s
         note   "not closed
        .5 %   salt
         mix ? sugar
        all   foam
        """, """
        stage one
           3 %                sugar
        1,200   g  water\s\s
         note   "not closed
        .5 %   salt
         mix ? sugar
        all   foam
        """);
  }

  @Test
  void keepsTheKindOfLineEnd() {
    assertEquals(
        "formula a\r\n  batch     100 g\r\n\r\nstage b\r\n  mix\r\n",
        format("formula a\r\n batch 100 g  \r\nstage b\r\nmix"));
    assertEquals("formula a\r\rstage b\r", format("formula a\rstage b"));
  }

  @Test
  void keepsMixedLineEndsApart() {
    assertEquals("formula a\n\nstage b\r\rstage c\r", format("formula a\nstage b\rstage c"));
    assertEquals("formula a\r  \nstage b\n", format("formula a\r  \nstage b"));
  }

  @Test
  void keepsTheByteOrderMark() {
    assertEquals("\uFEFF# a\n", format("\uFEFF\n\n# a"));
    assertEquals("\uFEFFformula a\n", format("\uFEFF  formula a"));
    assertEquals("\uFEFF", format("\uFEFF\n\n"));
  }

  @Test
  void leavesNothingOfATextOfBlankLines() {
    assertEquals("", format(""));
    assertEquals("", format(" \n\t\n  "));
  }

  @Test
  void countsCharactersOutsideTheBasicPlaneOnce() {
    check("""
        stage one
        3 % 𝒂𝒃 at 60 °C  # 🍬
        4 % salé-u\u0308ber at 60 °C
        note "🍬🍬" # sweet
        """, """
        stage one
           3 %                𝒂𝒃                   at 60 °C  # 🍬
           4 %                salé-u\u0308ber            at 60 °C
          note      "🍬🍬"  # sweet
        """);
  }

  @Test
  void replacesNoBreakSpacesAndTabsBetweenWords() {
    check("stage one\n\t3\u00A0%\u00A0\tsugar\n", "stage one\n   3 %                sugar\n");
  }

  @Test
  void changesOnlyTheLinesOfARange() {
    String text = "stage one\n3 % sugar\n4 % salt\n";
    List<TextEdit> edits = Formatter.edits(ParsedText.of(text), new Span(12, 14));
    assertEquals(
        "stage one\n   3 %                sugar\n4 % salt\n", TextEdit.applyAll(text, edits));
  }

  @Test
  void touchesOnlyTheSpaceThatChanges() {
    String text = "stage one\n  cook    to 120 °C\n";
    assertEquals(List.of(TextEdit.insert(20, "  ")), Formatter.edits(ParsedText.of(text)));
  }

  @Test
  void hasNoEditsForATextInItsLayout() {
    assertTrue(Formatter.edits(ParsedText.of("stage one\n  mix\n")).isEmpty());
  }

  private static void check(String before, String after) {
    assertEquals(after, format(before));
    assertEquals(after, format(after));
  }

  private static String format(String text) {
    return Formatter.format(text);
  }
}
