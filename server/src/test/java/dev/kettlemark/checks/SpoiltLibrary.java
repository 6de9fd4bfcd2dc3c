package dev.kettlemark.checks;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The sample library with something made wrong, and what is told of it that was not told before. */
final class SpoiltLibrary {

  private static final String FOLDER = "gannet-slip/";
  private static final String ENDING = ".kettle";

  private static final List<Document> SAMPLES = SampleTexts.library();
  private static final Snapshot SOUND =
      Snapshot.of(Library.of(SampleTexts.libraryWithPantry()), Today.DAY);
  private static final Set<Told> KNOWN = Set.copyOf(told(SOUND, SAMPLES));

  private SpoiltLibrary() {}

  /** What is told, wherever in its file it now stands. */
  record Told(String file, Severity severity, String rule, String message) {

    boolean isGrave() {
      return severity.compareTo(Severity.WARNING) <= 0;
    }

    @Override
    public String toString() {
      return file + ": " + severity.word() + " " + rule + ": " + message;
    }
  }

  /** What is told of the library once a mistake is made in it. */
  static List<Told> toldOf(Mutation mutation) {
    Document spoilt = spoilt(mutation);
    return told(SOUND.with(SOUND.library().with(spoilt)), with(spoilt)).stream()
        .filter(told -> !KNOWN.contains(told))
        .toList();
  }

  /** Every fix that is offered in the spoilt file. */
  static List<TriedFix> fixesOf(Mutation mutation) {
    Document spoilt = spoilt(mutation);
    return TriedFix.allOf(SOUND.with(SOUND.library().with(spoilt)), with(spoilt), spoilt);
  }

  private static Document spoilt(Mutation mutation) {
    String uri = FOLDER + mutation.file() + ENDING;
    Document sound = SAMPLES.stream()
        .filter(document -> document.uri().equals(uri))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no sample " + uri));
    return Document.of(uri, mutation.applied(sound.text().source().text()));
  }

  private static List<Document> with(Document spoilt) {
    return SAMPLES.stream()
        .map(document -> document.uri().equals(spoilt.uri()) ? spoilt : document)
        .toList();
  }

  /** The rules that tell an error or a warning once a file of the samples is changed in some places. */
  static Set<String> graveRules(String file, String... changes) {
    List<Mutation.Edit> edits = new ArrayList<>();
    for (int i = 0; i < changes.length; i += 2) {
      edits.add(new Mutation.Edit(file, "", changes[i], changes[i + 1]));
    }
    return toldOf(new Mutation("", edits, "", List.of())).stream()
        .filter(Told::isGrave)
        .map(Told::rule)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static List<Told> told(Snapshot snapshot, List<Document> documents) {
    List<Told> told = new ArrayList<>();
    for (Document document : documents) {
      for (Entry entry : document.entries()) {
        Rules.of(snapshot, entry)
            .forEach(finding -> told.add(new Told(
                document.uri(), finding.severity(), finding.rule().id(), finding.message())));
      }
    }
    return told;
  }
}
