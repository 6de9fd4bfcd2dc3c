package dev.kettlemark.cards;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Formulas to compare. */
final class CardBench {

  private CardBench() {}

  static Snapshot samples() {
    List<Document> documents = new ArrayList<>(Pantry.documents());
    try (Stream<Path> files = Files.list(Path.of("../samples/gannet-slip"))) {
      for (Path file : files.sorted().toList()) {
        documents.add(Document.of(file.getFileName().toString(), Files.readString(file)));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return Snapshot.of(Library.of(documents), Today.DAY);
  }

  static Snapshot of(String text) {
    List<Document> documents = new ArrayList<>(Pantry.documents());
    documents.add(Document.of("bench.kettle", text));
    return Snapshot.of(Library.of(documents), Today.DAY);
  }

  static Side side(Snapshot snapshot, String name) {
    return Side.of(snapshot, name, Optional.empty(), Optional.empty())
        .fold(known -> known, unknown -> {
          throw new AssertionError(unknown.because());
        });
  }

  static SideBySide both(Snapshot snapshot, String first, String second) {
    return SideBySide.of(side(snapshot, first), side(snapshot, second));
  }
}
