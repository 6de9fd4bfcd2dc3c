package dev.kettlemark.scaling;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;

/** A library of one text and the built-in pantry. */
record LibraryFixture(Snapshot snapshot, Document document) {

  static LibraryFixture of(String text) {
    Document document = Document.of("bench.kettle", text);
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    return new LibraryFixture(Snapshot.of(Library.of(all)), document);
  }

  ComputedFormula formula(String name) {
    return Formulas.computed(
            snapshot, snapshot.library().find(Kind.MATERIAL, name).orElseThrow())
        .orElseThrow();
  }

  ComputedProduct product(String name) {
    return Products.computed(
            snapshot, snapshot.library().find(Kind.PRODUCT, name).orElseThrow())
        .orElseThrow();
  }
}
