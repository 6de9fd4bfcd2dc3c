package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** From a name to where it is declared and to where it is spoken of. */
public final class Navigation {

  private Navigation() {}

  /**
   * Where the thing under the cursor is declared, a text of the user before the pantry.
   *
   * @return absolute places of the declared names; empty where nothing is named
   */
  public static List<Place> definition(Snapshot snapshot, Document document, int offset) {
    return Symbols.at(snapshot, document, offset).stream()
        .flatMap(found -> places(snapshot, found.symbol(), true))
        .toList();
  }

  /** Every place that speaks of the thing under the cursor, in all files. */
  public static List<Place> references(
      Snapshot snapshot, Document document, int offset, boolean withDeclaration) {
    return Symbols.at(snapshot, document, offset).stream()
        .flatMap(found -> searches(snapshot, withDeclaration).stream()
            .flatMap(search -> search.places(snapshot, found.symbol()).stream()))
        .toList();
  }

  /**
   * A part of a search for all places: one document.
   *
   * @param defining whether it looks for declarations, or for uses
   */
  public record Search(Document document, boolean defining) {

    public List<Place> places(Snapshot snapshot, Symbol symbol) {
      return Navigation.places(snapshot, document, symbol, defining).toList();
    }
  }

  /** The parts of a search for all places, in the order of their results: declarations first. */
  public static List<Search> searches(Snapshot snapshot, boolean withDeclaration) {
    List<Document> documents = documents(snapshot).toList();
    Stream<Search> declarations = documents.stream()
        .filter(document -> withDeclaration)
        .map(document -> new Search(document, true));
    return Stream.concat(
            declarations, documents.stream().map(document -> new Search(document, false)))
        .toList();
  }

  /**
   * A place that speaks of a thing.
   *
   * @param gives whether the thing is declared there
   */
  public record Highlight(Span span, boolean gives) {}

  /** Every place in one document that speaks of the thing under the cursor, in order. */
  public static List<Highlight> highlights(Snapshot snapshot, Document document, int offset) {
    return Symbols.at(snapshot, document, offset).stream()
        .flatMap(found ->
            Symbols.in(snapshot, document).filter(other -> other.symbol().equals(found.symbol())))
        .map(found -> new Highlight(found.place().span(), found.occurrence().defines()))
        .toList();
  }

  /** The name under the cursor from which one goes elsewhere. */
  public static Optional<Span> origin(Snapshot snapshot, Document document, int offset) {
    return Symbols.at(snapshot, document, offset).map(found -> found.place().span());
  }

  private static Stream<Place> places(Snapshot snapshot, Symbol symbol, boolean defining) {
    return documents(snapshot).flatMap(document -> places(snapshot, document, symbol, defining));
  }

  /** All documents, those of the user before the pantry. */
  private static Stream<Document> documents(Snapshot snapshot) {
    return Stream.of(false, true)
        .flatMap(builtIn -> snapshot.library().documents().stream()
            .filter(document -> document.builtIn() == builtIn));
  }

  private static Stream<Place> places(
      Snapshot snapshot, Document document, Symbol symbol, boolean defining) {
    return Symbols.in(snapshot, document)
        .filter(found -> found.symbol().equals(symbol))
        .filter(found -> found.occurrence().defines() == defining)
        .map(Symbols.Found::place);
  }
}
