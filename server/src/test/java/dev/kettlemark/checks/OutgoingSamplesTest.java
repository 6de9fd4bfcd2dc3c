package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing of the sample library spoilt, and what goes out of the kitchen is told to be wrong. */
class OutgoingSamplesTest {

  /** The rule, the file, and what is written there instead of what. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
          missing-yield | products | make      37 pieces | status    released
          missing-shelf | products | shelf     3 months | shelf     3 pieces
          undeclared-tool | egg-honey-nougat | in planetary-7 | in planetry-7
          unknown-state | italian-meringue | until soft-peak | until fluffy
          to-taste | peanut-brittle | sea-salt | sea-salt to taste
          typed-ingredients | chewy-caramel | code      GS-004 | note "Ingredients: sugar, butter, milk."
          published-draft | chewy-caramel | status    bench | status    draft
          outdated-sheet | sheets | show      volumes | version 4
          celsius-on-us-sheet | sheets | show      volumes, fahrenheit | show      volumes
          hidden-waiting | sheets | The steps wait for 12 h in all; plan for it. | Have fun.
          sheet-without-altitude | sheets | At another altitude | Elsewhere
          """)
  void tellsOfTheSpoiltThing(String rule, String file, String was, String now) {
    assertEquals(0, found(rule, SampleTexts.library()));
    List<Document> spoilt = SampleTexts.library().stream()
        .map(document -> document.uri().equals("gannet-slip/" + file + ".kettle")
            ? spoilt(document, was, now)
            : document)
        .toList();
    assertTrue(found(rule, spoilt) > 0);
  }

  private static Document spoilt(Document document, String was, String now) {
    String text = document.text().source().text();
    assertTrue(text.contains(was), was);
    return Document.of(document.uri(), text.replaceFirst("\\Q" + was + "\\E", now));
  }

  private static long found(String rule, List<Document> library) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(library);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    return library.stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .filter(finding -> finding.rule().id().equals(rule))
        .count();
  }
}
