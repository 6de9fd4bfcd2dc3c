package dev.kettlemark.answers;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;

/** A library of one text and the pantry. */
record Workbench(Snapshot snapshot) {

  private static final List<Document> PANTRY = Pantry.documents();

  static Workbench of(String text) {
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(Document.of("bench.kettle", text));
    return new Workbench(Snapshot.of(Library.of(all)));
  }

  ComputedFormula formula(String name) {
    return Formulas.computed(
            snapshot, snapshot.library().find(Kind.MATERIAL, name).orElseThrow())
        .orElseThrow();
  }

  Shelf shelf() {
    return new Shelf(snapshot);
  }

  static <T> T known(Outcome<T> outcome) {
    return outcome.fold(value -> value, unknown -> {
      throw new AssertionError(unknown.because());
    });
  }

  static String because(Outcome<?> outcome) {
    return outcome.fold(
        value -> {
          throw new AssertionError("known: " + value);
        },
        unknown -> unknown.because());
  }

  static double figure(Answer answer, String word) {
    return answer
        .value(word)
        .orElseThrow(() -> new AssertionError("no " + word))
        .figure();
  }
}
