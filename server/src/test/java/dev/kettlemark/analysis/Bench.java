package dev.kettlemark.analysis;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;

/** Computes a text as it stands, with the pantry at hand. */
public final class Bench {

  private static final List<Document> PANTRY = Pantry.documents();

  private Bench() {}

  /** The first formula of a text. */
  public static ComputedFormula formula(String text) {
    Document document = Document.of("bench.kettle", text);
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all));
    return document.entries().stream()
        .flatMap(entry -> Formulas.computed(snapshot, entry).stream())
        .findFirst()
        .orElseThrow();
  }

  /** The mass that a stage of the first formula leaves. */
  public static StageParcel left(String text, String stage) {
    return formula(text).process().stage(stage).orElseThrow().left();
  }
}
