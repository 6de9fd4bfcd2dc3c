package dev.kettlemark.sheets;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Sheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** The sample library, and small texts, to make sheets of. */
final class SheetBench {

  private SheetBench() {}

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

  /** A sheet that the samples declare. */
  static SheetRequest declared(Snapshot snapshot, String name) {
    return snapshot
        .library()
        .find(Kind.SHEET, name)
        .flatMap(Entry::declaration)
        .map(Sheet.class::cast)
        .flatMap(SheetRequest::of)
        .orElseThrow();
  }

  static SheetRequest request(String subject, SheetReader reader, String tag) {
    return SheetRequest.of(subject, reader, Locale.forLanguageTag(tag));
  }

  static SheetRequest.Size pieces(int count) {
    return new SheetRequest.Size.Pieces(new BigFraction(count));
  }

  static SheetRequest.Size kilograms(int kilograms) {
    return new SheetRequest.Size.Charge(new BigFraction(1000 * kilograms));
  }

  static SheetContent sheet(Snapshot snapshot, SheetRequest request) {
    return SheetContent.of(snapshot, request).fold(known -> known, unknown -> {
      throw new AssertionError(unknown.because());
    });
  }
}
