package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every name of the samples, renamed and renamed back, leaves every byte as it was. */
class RenameRoundTripTest {

  private static final String OTHER = "quite-another-nâme";

  @Test
  void thereAndBackIsNothing() {
    List<Document> documents = FeatureFixture.samples("gannet-slip");
    Snapshot snapshot = FeatureFixture.snapshot(documents);
    int renamed = 0;
    for (Document document : documents) {
      List<Symbols.Found> names = Symbols.in(snapshot, document)
          .filter(found -> found.occurrence().defines())
          .toList();
      for (Symbols.Found name : names) {
        check(snapshot, document, name);
        renamed++;
      }
    }
    assertTrue(renamed > 80, renamed + " names");
  }

  private static void check(Snapshot before, Document document, Symbols.Found name) {
    int offset = name.place().span().start();
    Snapshot there = renamed(before, document, offset, OTHER);
    Document between = there.library().document(document.uri()).orElseThrow();
    String moved = between.text().source().text();
    assertTrue(moved.contains(OTHER), name.symbol().toString());
    Symbols.Found found = Symbols.in(there, between)
        .filter(other -> other.occurrence().defines() && other.symbol().name().equals(OTHER))
        .findFirst()
        .orElseThrow();
    Snapshot back =
        renamed(there, between, found.place().span().start(), name.symbol().name());
    assertEquals(texts(before), texts(back), name.symbol().toString());
  }

  private static Snapshot renamed(
      Snapshot snapshot, Document document, int offset, String newName) {
    Rename.Answer<Map<String, List<TextEdit>>> answer =
        Rename.edits(snapshot, document, offset, newName);
    if (!(answer instanceof Rename.Answer.Given<Map<String, List<TextEdit>>> given)) {
      throw new AssertionError(answer);
    }
    Library library = snapshot.library();
    for (Map.Entry<String, List<TextEdit>> edits : given.value().entrySet()) {
      Document old = library.document(edits.getKey()).orElseThrow();
      assertTrue(!old.builtIn(), "the pantry keeps its names");
      library = library.with(Document.of(
          old.uri(), TextEdit.applyAll(old.text().source().text(), edits.getValue())));
    }
    return snapshot.with(library);
  }

  private static Map<String, String> texts(Snapshot snapshot) {
    Map<String, String> texts = new TreeMap<>();
    snapshot
        .library()
        .ownDocuments()
        .forEach(document -> texts.put(document.uri(), document.text().source().text()));
    return texts;
  }
}
