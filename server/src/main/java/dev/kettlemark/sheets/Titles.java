package dev.kettlemark.sheets;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.OtherNames;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * What the library calls its materials, formulas and stages.
 *
 * @param language in which the house writes; English where it does not say
 * @param known those of materials that were asked for before
 */
public record Titles(Snapshot snapshot, String language, Map<String, Title> known) {

  private static final String ENGLISH = Locale.ENGLISH.getLanguage();

  /** Those of a library in which a house writes. */
  public static Titles of(Snapshot snapshot, Optional<House> house) {
    String language = house
        .flatMap(home -> home.facts().wordOf("language"))
        .map(word -> Locale.forLanguageTag(word.value()).getLanguage())
        .filter(tag -> !tag.isEmpty())
        .orElse(ENGLISH);
    return new Titles(snapshot, language, new ConcurrentHashMap<>());
  }

  /** The title of something that can be weighed. */
  public Title of(String name) {
    Title title = known.get(name);
    if (title == null) {
      title = found(name);
      known.put(name, title);
    }
    return title;
  }

  private Title found(String name) {
    Optional<Entry> entry = snapshot.library().find(Kind.MATERIAL, name);
    return entry
        .flatMap(found -> found.declaration().map(d -> of(d, Pantry.holds(found.uri()))))
        .orElseGet(() -> plain(Names.capital(Names.spaced(name))));
  }

  /** The title of a section of the library's own files. */
  public Title of(Declaration declaration) {
    return of(declaration, false);
  }

  private Title of(Declaration declaration, boolean isBuiltIn) {
    String shown = declaration
        .title()
        .orElseGet(() -> Names.capital(Names.spaced(declaration.name().value())));
    Stream<Statement> facts = declaration instanceof Ingredient ingredient
        ? ingredient.facts().all("names")
        : Facts.of(declaration).stream().flatMap(own -> own.all("names"));
    return new Title(shown, isBuiltIn ? ENGLISH : language, OtherNames.of(facts));
  }

  Title of(Stage stage) {
    return new Title(
        stage.title().orElseGet(() -> Names.capital(Names.spaced(stage.name().value()))),
        language,
        stage.names());
  }

  Title plain(String text) {
    return new Title(text, language, OtherNames.NONE);
  }

  /** Notes in a reader's language; where there are none, those that name no language. */
  List<Phrase> notes(Facts facts, Locale locale) {
    List<Phrase> own = facts
        .all("note")
        .filter(note ->
            OtherNames.languageOf(note).filter(locale.getLanguage()::equals).isPresent())
        .flatMap(note -> note.text().stream())
        .map(Located::value)
        .map(Phrase::given)
        .toList();
    return own.isEmpty()
        ? facts
            .all("note")
            .filter(note -> OtherNames.languageOf(note).isEmpty())
            .flatMap(note -> note.text().stream())
            .map(note -> written(note.value()))
            .toList()
        : own;
  }

  /** Words of the source that have no counterpart in other languages. */
  Phrase written(String text) {
    return new Phrase.Titled(plain(text), false);
  }
}
