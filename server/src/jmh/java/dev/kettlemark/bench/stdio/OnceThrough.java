package dev.kettlemark.bench.stdio;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Checks one text and ends.
 *
 * <p>A server does as much at its start, beside speaking with its client, so none can be there much sooner.
 */
public final class OnceThrough {

  private OnceThrough() {}

  /** Takes the file of the text. */
  public static void main(String[] arguments) throws IOException {
    Document document = Document.of("untitled:once", Files.readString(Path.of(arguments[0])));
    Snapshot snapshot = Snapshot.of(Library.of(Pantry.documents()).with(document));
    System.out.println(document.entries().stream()
        .mapToInt(entry -> Rules.of(snapshot, entry).size())
        .sum());
  }
}
