package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One slip in a good formula of the sample library is found by the rule that is there for it. */
class SpoiltSampleTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', ignoreLeadingAndTrailingWhitespace = true, textBlock = """
      peanut-brittle       | 'cook      to 149 °C ± 1'  | 'cook      to 149 °C ± 1\\n  check     solids 90 %' | contradicting-solids
      house                | altitude    14 m           | altitude    2240 m              | altitude-not-said
      egg-honey-nougat     | to 128 °C ± 1              | to 145 °C ± 1                   | browned-fructose
      chewy-caramel        | to 119 °C ± 1              | to 139 °C ± 1                   | scorched-milk
      heather-nougat       | to 126 °C ± 1              | to 138 °C ± 1                   | hot-second-syrup
      heather-nougat       | ' 9.00 %             water' | ' 1.00 %             water'     | undissolved-sugar
      italian-meringue     | 50.00 %                    | 10.00 %                         | long-boil
      peanut-brittle       | 'cook      to 149 °C ± 1'  | 'cook      to 149 °C ± 1\\n  hold      at 149 °C for 8 min' | long-hot-hold
      sheets               | 120 °C                     | 120 °C (250 °F)                 | mismatched-conversion
      white-fondant        | ' 12.50 %             glucose-syrup-42' | '  0.20 %             cream-of-tartar' | uncounted-inversion
      raspberry-jelly      | at 20-22 °C                | at 20-22 °F                     | impossible-room
      gelatine-marshmallow | warm      to 60 °C         | warm      to 105 °C on water-bath | overheated-water-bath
      peanut-brittle       | 23.00 %                    | ' 5.00 %'                       | too-little-doctor
      chewy-caramel        | 22.00 %                    | ' 1.00 %'                         | too-much-doctor
      chewy-caramel        | to 119 °C ± 1              | to 106 °C ± 1                   | moisture-off
      peanut-brittle       | to 149 °C ± 1              | to 125 °C ± 1                   | texture-mismatch
      white-fondant        | 67.00 %             white-sugar\\n  12.50 % | 38.00 %             white-sugar\\n  42.00 % | no-grain
      orchard-bar          | 26.00 %             oat-flake | 26.00 %             raspberry-puree | spoiling-on-shelf
      products             | orchard-bar\\n  make       | orchard-bar\\n  wafer     4 g                  wafer-sheet\\n  make | water-between-layers
      products             | 6 weeks at 15-18 °C below 55 %RH | 6 weeks at 15-18 °C below 75 %RH | damp-storage
      egg-honey-nougat     | 9.00 %             water    | 12.00 %             water       | foam-liquid-off
      heather-nougat       | 14.00 % agave-syrup        | 14.00 % almond-paste            | fat-jump
      heather-nougat       | 0.22 %                     | 2.20 %                          | over-usual-dose
      """)
  void isFound(String file, String right, String wrong, String rule) {
    List<Document> spoilt = new ArrayList<>();
    for (Document document : SampleTexts.library()) {
      String text = document.text().source().text();
      boolean isMeant = document.uri().endsWith("/" + file + ".kettle");
      if (isMeant) {
        assertTrue(text.contains(unescaped(right)), "the sample has changed: " + right);
      }
      spoilt.add(
          isMeant
              ? Document.of(document.uri(), text.replace(unescaped(right), unescaped(wrong)))
              : document);
    }
    assertFalse(rules(SampleTexts.library()).contains(rule));
    assertTrue(rules(spoilt).contains(rule), rule);
  }

  private static List<String> rules(List<Document> library) {
    return Listing.findings(library).stream().map(Listing.Shown::rule).toList();
  }

  private static String unescaped(String text) {
    return text.replace("\\n", "\n");
  }
}
