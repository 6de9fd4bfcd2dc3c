package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Gives a thing another name wherever it is spoken of.
 *
 * <p>A rename is done only if every other name still means afterwards what it meant before.
 */
public final class Rename {

  private Rename() {}

  /** What a rename comes to: an answer, or why there is none. */
  public sealed interface Answer<T> {

    /** The answer. */
    record Given<T>(T value) implements Answer<T> {}

    /** No answer; the reason is a plain clause in lower case. */
    record Refused<T>(String reason) implements Answer<T> {}
  }

  /**
   * What would be renamed.
   *
   * @param span the name under the cursor, absolute
   * @param placeholder its present name
   */
  public record Target(Span span, String placeholder) {}

  /** Whether the name under the cursor can be changed. */
  public static Answer<Target> prepare(Snapshot snapshot, Document document, int offset) {
    Optional<Symbols.Found> found = Symbols.at(snapshot, document, offset);
    if (found.isEmpty()) {
      return new Answer.Refused<>("there is no name here that could be changed");
    }
    Symbol symbol = found.get().symbol();
    return refusal(snapshot, symbol)
        .<Answer<Target>>map(Answer.Refused::new)
        .orElseGet(() -> new Answer.Given<>(new Target(found.get().place().span(), symbol.name())));
  }

  /**
   * The edits that change the name under the cursor everywhere.
   *
   * @return edits by URI, in order of place, in absolute offsets
   */
  public static Answer<Map<String, List<TextEdit>>> edits(
      Snapshot snapshot, Document document, int offset, String newName) {
    return edits(snapshot, document, offset, newName, (done, all) -> {});
  }

  /** Is told how many of all documents have been looked at, and may end the work by an exception. */
  public interface Steps {
    void step(int done, int all);
  }

  /** The same, telling after each document how far it is. */
  public static Answer<Map<String, List<TextEdit>>> edits(
      Snapshot snapshot, Document document, int offset, String newName, Steps steps) {
    Answer<Target> prepared = prepare(snapshot, document, offset);
    if (prepared instanceof Answer.Refused<Target> refused) {
      return new Answer.Refused<>(refused.reason());
    }
    Symbol symbol = Symbols.at(snapshot, document, offset).orElseThrow().symbol();
    if (!isName(newName)) {
      return new Answer.Refused<>("`" + newName
          + "` cannot be a name; a name is one word of letters, digits and hyphens that starts with a letter"
          + " and means nothing else");
    }
    Symbol renamed = new Symbol(symbol.kind(), symbol.owner(), newName);
    if (!renamed.equals(symbol)) {
      Optional<Symbols.Found> taken = taken(snapshot, renamed);
      if (taken.isPresent()) {
        return new Answer.Refused<>("`" + newName + "` already names a "
            + symbol.kind().word() + where(snapshot, taken.get()));
      }
    }
    Map<String, List<TextEdit>> edits = edits(snapshot, symbol, newName);
    return mistaken(snapshot, edits, symbol, newName, steps)
        .<Answer<Map<String, List<TextEdit>>>>map(Answer.Refused::new)
        .orElseGet(() -> new Answer.Given<>(edits));
  }

  private static Optional<String> refusal(Snapshot snapshot, Symbol symbol) {
    List<Symbols.Found> definitions = Symbols.everywhere(snapshot)
        .filter(found -> found.occurrence().defines() && found.symbol().equals(symbol))
        .toList();
    if (definitions.isEmpty()) {
      return Optional.of(
          "`" + symbol.name() + "` is declared nowhere, so there is nothing to rename");
    }
    boolean allBuiltIn = definitions.stream()
        .allMatch(found -> snapshot
            .library()
            .document(found.entry().uri())
            .filter(Document::builtIn)
            .isPresent());
    return allBuiltIn
        ? Optional.of("`" + symbol.name() + "` belongs to the built-in pantry and keeps its name;"
            + " an ingredient of the same name in your library overrides it")
        : Optional.empty();
  }

  /** Whether the text of a name stays one name wherever names stand: in a heading, an amount, a step. */
  private static boolean isName(String word) {
    String trial = "formula " + word + "\nstage " + word + "\n1 % " + word + "\nfold " + word;
    List<PlacedSection> sections = ParsedText.of(trial).sections();
    if (sections.size() != 1 || sections.get(0).section().lines().size() != 4) {
      return false;
    }
    return !word.equals("again")
        && !word.equals("charge")
        && !word.equals("finished")
        && sections.get(0).section().problems().isEmpty()
        && sections.get(0).section().lines().stream().allMatch(line -> holdsOnly(line, word));
  }

  private static boolean holdsOnly(Line line, String word) {
    return line.clauses().isEmpty()
        && line.objects().size() == 1
        && line.objects().get(0).atoms().size() == 1
        && line.objects().get(0).atoms().get(0) instanceof Atom.NameAtom name
        && name.text().equals(word);
  }

  /** A name of the user's own texts that the new one would be mixed up with. */
  private static Optional<Symbols.Found> taken(Snapshot snapshot, Symbol renamed) {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> Symbols.in(snapshot, document))
        .filter(found -> found.symbol().equals(renamed))
        .findFirst();
  }

  private static Map<String, List<TextEdit>> edits(
      Snapshot snapshot, Symbol symbol, String newName) {
    Map<String, List<TextEdit>> edits = new TreeMap<>();
    for (Document document : snapshot.library().ownDocuments()) {
      List<TextEdit> own = Symbols.spans(snapshot, document, symbol).stream()
          .map(span -> new TextEdit(span, newName))
          .toList();
      if (!own.isEmpty()) {
        edits.put(document.uri(), own);
      }
    }
    return edits;
  }

  /** What would mean something else after the edits. */
  private static Optional<String> mistaken(
      Snapshot before,
      Map<String, List<TextEdit>> edits,
      Symbol symbol,
      String newName,
      Steps steps) {
    Snapshot after = before.with(applied(before.library(), edits));
    List<Document> documents = before.library().ownDocuments();
    for (int i = 0; i < documents.size(); i++) {
      steps.step(i, documents.size());
      Document document = documents.get(i);
      List<Symbols.Found> old = Symbols.in(before, document).toList();
      List<Symbol> expected =
          old.stream().map(found -> found.symbol().renamed(symbol, newName)).toList();
      List<Symbol> now = after.library().document(document.uri()).stream()
          .flatMap(changed -> Symbols.in(after, changed))
          .map(Symbols.Found::symbol)
          .toList();
      if (!expected.equals(now)) {
        return Optional.of("with the name `" + newName + "` another name would change its meaning"
            + firstDifference(before, old, expected, now));
      }
    }
    return Optional.empty();
  }

  private static String firstDifference(
      Snapshot snapshot, List<Symbols.Found> old, List<Symbol> expected, List<Symbol> now) {
    for (int i = 0; i < Math.min(expected.size(), now.size()); i++) {
      if (!expected.get(i).equals(now.get(i))) {
        return where(snapshot, old.get(i));
      }
    }
    return "";
  }

  private static Library applied(Library library, Map<String, List<TextEdit>> edits) {
    Library changed = library;
    for (Map.Entry<String, List<TextEdit>> edit : edits.entrySet()) {
      Document document = library.document(edit.getKey()).orElseThrow();
      String text = document.text().source().with(edit.getValue()).text();
      changed = changed.with(document.with(ParsedText.of(text)));
    }
    return changed;
  }

  private static String where(Snapshot snapshot, Symbols.Found found) {
    return snapshot
        .library()
        .document(found.entry().uri())
        .map(document -> document.text().source().lineAt(found.place().span().start()) + 1)
        .map(line -> " in line " + line + " of " + fileName(found.entry().uri()))
        .orElse("");
  }

  private static String fileName(String uri) {
    return uri.substring(uri.lastIndexOf('/') + 1);
  }
}
