package dev.kettlemark.preview;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import dev.kettlemark.sheets.SheetReader;
import dev.kettlemark.sheets.SheetRequest;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is shown.
 *
 * @param entry the section that was asked for
 * @param subject the formula, variant or product that it speaks of
 * @param request the sheet of it
 */
record Shown(Entry entry, String subject, SheetRequest request) {

  /** What a section can show; empty where it shows nothing, and for a sheet that does not say what it shows. */
  static Optional<Shown> of(Snapshot snapshot, Entry entry, PreviewRequest wanted) {
    return entry
        .declaration()
        .flatMap(declaration -> request(snapshot, entry, declaration))
        .map(request -> wanted.reader().map(request::forReader).orElse(request))
        .map(request -> wanted.locale().map(request::in).orElse(request))
        .map(request -> new Shown(entry, request.subject(), request));
  }

  private static Optional<SheetRequest> request(
      Snapshot snapshot, Entry entry, Declaration declaration) {
    if (declaration instanceof Sheet sheet) {
      return SheetRequest.of(sheet);
    }
    if (declaration instanceof Trial trial) {
      return trial.formula().map(formula -> plain(formula.value()));
    }
    boolean isShown =
        declaration instanceof Product || Formulas.computed(snapshot, entry).isPresent();
    return isShown ? Optional.of(plain(declaration.name().value())) : Optional.empty();
  }

  private static SheetRequest plain(String subject) {
    return SheetRequest.of(subject, SheetReader.CHEF, Locale.UK);
  }

  /** What a name means: a sheet first, since it says most exactly what is wanted. */
  static Optional<Entry> named(Library library, String name) {
    return Stream.of(Kind.SHEET, Kind.MATERIAL, Kind.PRODUCT)
        .flatMap(kind -> library.find(kind, name).stream())
        .findFirst();
  }

  /**
   * The section that a place in a text speaks of: what stands between sections, such as the comment at the
   * head of a text, speaks of the next one.
   */
  static Entry at(Document document, int offset) {
    List<Entry> entries = document.entries();
    Entry here = document.entryAt(offset);
    return entries.subList(entries.indexOf(here), entries.size()).stream()
        .filter(entry -> entry.declaration().isPresent())
        .findFirst()
        .orElse(here);
  }

  String name() {
    return entry.declaration().map(declaration -> declaration.name().value()).orElse(subject);
  }

  /** The section of the subject itself. */
  Optional<Entry> subjectEntry(Library library) {
    return Stream.of(Kind.MATERIAL, Kind.PRODUCT)
        .flatMap(kind -> library.find(kind, subject).stream())
        .findFirst();
  }

  /** The sections of the formulas that are told: the subject itself, or what a product is made of. */
  List<Entry> formulas(Snapshot snapshot) {
    Optional<Entry> own = subjectEntry(snapshot.library());
    Optional<Product> product = own.flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Product found ? Optional.of(found) : Optional.empty());
    Stream<Entry> all = product.isPresent()
        ? product.get().parts().stream()
            .flatMap(part -> part.material().stream())
            .flatMap(material -> snapshot.library().find(Kind.MATERIAL, material.value()).stream())
        : own.stream();
    return all.filter(one -> Formulas.computed(snapshot, one).isPresent())
        .distinct()
        .toList();
  }
}
