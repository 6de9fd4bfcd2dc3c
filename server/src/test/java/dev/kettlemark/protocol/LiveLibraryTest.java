package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Moments of a library while it is edited: made late, and right whenever they are asked. */
class LiveLibraryTest {

  private static final LocalDate DAY = LocalDate.of(2026, 3, 14);
  private static final String KEY = "file:///quay/jelly.kettle";
  private static final String TEXT = """
      formula jelly
        stage cook
          55.00 %  white-sugar
          35.00 %  water
          10.00 %  house-syrup
          cook  to 107 °C

      formula house-syrup
        stage boil
          80.00 %  white-sugar
          20.00 %  water
          cook  to 118 °C
      """;

  private final LiveLibrary library = new LiveLibrary(() -> DAY, UnaryOperator.identity());
  private int version;

  @Test
  void makeResultsOnlyOfTheMomentThatIsAskedFor() {
    open();
    List<Moment> moments = new ArrayList<>();
    for (int key = 0; key < 5; key++) {
      moments.add(type("55", "5" + key));
      type("5" + key, "55");
    }
    assertNotEquals(List.of(), findings(library.moment().snapshot()));
    moments.forEach(moment -> assertTrue(moment.results().made().isEmpty()));
  }

  @Test
  void makeResultsOnce() {
    open();
    assertSame(library.moment().snapshot(), library.moment().snapshot());
  }

  /** A request may wait for a worker until the text is another. */
  @Test
  void answerForTheirOwnTextHoweverLateTheyAreAsked() {
    open();
    Moment right = library.moment();
    Moment wrong = type("55.00", "45.00");
    Moment rightAgain = type("45.00", "55.00");
    List<String> found = findings(rightAgain.snapshot());
    assertNotEquals(found, findings(wrong.snapshot()));
    assertEquals(found, findings(right.snapshot()));
  }

  @Test
  void answerAsIfEachWereAloneInWhateverOrderTheyAreAsked() {
    Chance.rounds(3, random -> {
      open();
      List<Moment> moments = new ArrayList<>();
      for (int edit = 0; edit < 24; edit++) {
        moments.add(edited(random));
        if (random.nextInt(3) == 0) {
          assertAlone(moments.get(random.nextInt(moments.size())));
        }
      }
      Collections.shuffle(moments, random);
      moments.forEach(LiveLibraryTest::assertAlone);
    });
  }

  private static void assertAlone(Moment moment) {
    List<Document> fresh = moment.library().documents().stream()
        .map(document -> document.builtIn()
            ? document
            : Document.of(document.uri(), document.text().source().text()))
        .toList();
    assertEquals(findings(Snapshot.of(Library.of(fresh), DAY)), findings(moment.snapshot()));
  }

  private static List<String> findings(Snapshot snapshot) {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .map(Finding::message)
        .toList();
  }

  private void open() {
    library.open(KEY, new Moment.OpenBuffer(KEY, ++version), TEXT);
  }

  private Moment edited(Random random) {
    String text = text();
    String[] words = {"white-sugar", "house-syrup", "jelly", "55.00", "118", "stage boil", "water"};
    String word = words[random.nextInt(words.length)];
    int place = text.indexOf(word, random.nextInt(text.length()));
    return place < 0
        ? edit(new Span(random.nextInt(text.length()), text.length()), TEXT)
        : edit(new Span(place, place + word.length()), words[random.nextInt(words.length)]);
  }

  private Moment type(String before, String after) {
    int place = text().indexOf(before);
    assertTrue(place >= 0, before);
    return edit(new Span(place, place + before.length()), after);
  }

  private Moment edit(Span span, String replacement) {
    library.change(
        KEY,
        new Moment.OpenBuffer(KEY, ++version),
        List.of(text -> new TextEdit(span, replacement)));
    return library.moment();
  }

  private String text() {
    return library.moment().document(KEY).orElseThrow().text().source().text();
  }
}
