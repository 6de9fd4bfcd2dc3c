package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Span;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Texts with a cursor, and the library they make with the built-in pantry.
 *
 * <p>{@code <|>} is the cursor; a line {@code --- name} starts a further file.
 */
record FeatureFixture(Snapshot snapshot, Document document, int offset) {

  private static final String CURSOR = "<|>";
  private static final String FILE = "--- ";
  private static final List<Document> PANTRY = Pantry.documents();

  static FeatureFixture of(String marked) {
    List<Document> documents = new ArrayList<>();
    Document withCursor = null;
    int offset = 0;
    for (Named file : files(marked)) {
      int cursor = file.text().indexOf(CURSOR);
      Document document = Document.of(file.name(), file.text().replace(CURSOR, ""));
      documents.add(document);
      if (cursor >= 0 || withCursor == null) {
        withCursor = document;
        offset = Math.max(0, cursor);
      }
    }
    if (withCursor == null) {
      throw new IllegalArgumentException("a fixture needs a text");
    }
    return new FeatureFixture(snapshot(documents), withCursor, offset);
  }

  static Snapshot snapshot(List<Document> own) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.addAll(own);
    return Snapshot.of(Library.of(all));
  }

  /** The sample library, or another folder of samples, each file by its name. */
  static List<Document> samples(String folder) {
    try (Stream<Path> files = Files.list(Path.of("..", "samples", folder))) {
      List<Document> documents = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        documents.add(Document.of(file.getFileName().toString(), Files.readString(file)));
      }
      return documents;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** {@code first.kettle 3:5 foam}. */
  String draw(Place place) {
    Document held = snapshot.library().document(place.uri()).orElseThrow();
    var position = held.text().source().position(place.span().start(), PositionEncoding.UTF16);
    return place.uri() + " " + (position.line() + 1) + ":" + (position.column() + 1) + " "
        + place.span().of(held.text().source().text());
  }

  String draw(List<Place> places) {
    return String.join("\n", places.stream().map(this::draw).toList());
  }

  String hover() {
    return Hover.at(snapshot, document, offset).map(HoverText::markdown).orElse("nothing");
  }

  /** What stands under a span of the cursor's document. */
  String text(Span span) {
    return span.of(document.text().source().text());
  }

  private record Named(String name, String text) {}

  private static List<Named> files(String marked) {
    List<Named> files = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    String name = "first.kettle";
    for (String line : marked.split("(?<=\n)")) {
      if (line.startsWith(FILE)) {
        files.add(new Named(name, text.toString()));
        text.setLength(0);
        name = line.substring(FILE.length()).strip();
      } else {
        text.append(line);
      }
    }
    files.add(new Named(name, text.toString()));
    return files;
  }
}
