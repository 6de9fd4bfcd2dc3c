package dev.kettlemark.cli;

import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.kettlemark.library.Document;
import dev.kettlemark.model.Declaration;
import org.junit.jupiter.api.Test;

/** Trees are held as long as there is room for them. */
class TreeRoomTest {

  private static final String TEXT = "formula one\n  percent of charge\n";

  @Test
  void holdsWhatThereIsRoomForAndLetsGoOfTheRest() {
    TreeRoom room = new TreeRoom(2L * TEXT.length());
    Document first = Document.of("first.kettle", TEXT);
    Document second = Document.of("second.kettle", TEXT);
    Document third = Document.of("third.kettle", TEXT);
    for (Document fits : new Document[] {first, second}) {
      Declaration declaration = declaration(fits);
      assertSame(fits, room.held(fits));
      assertSame(declaration, declaration(fits));
    }
    Declaration declaration = declaration(third);
    assertSame(third, room.held(third));
    assertNotSame(declaration, declaration(third));
  }

  private static Declaration declaration(Document document) {
    return document.entries().get(0).declaration().orElseThrow();
  }
}
