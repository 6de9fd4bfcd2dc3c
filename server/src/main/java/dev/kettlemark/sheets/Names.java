package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import dev.kettlemark.sheets.Shown.Made;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the names of a source are called on a sheet. */
final class Names {

  private Names() {}

  /** What a word of a step means: a stage, something weighed, a tool, a state or a plain word. */
  static Phrase of(String word, Made made, SheetReader reader) {
    Optional<Stage> stage = made.formula().formula().stage(word);
    if (stage.isPresent()) {
      return Phrase.words(
          "name.stage", named(stage.get().title().orElseGet(() -> capital(spaced(word)))));
    }
    Optional<Material> material = made.formula().material(word);
    if (material.isPresent()) {
      return material(word, made);
    }
    Optional<House> house = made.formula().kitchen().house();
    if (house.isPresent() && Tools.isTool(house.get(), word)) {
      return Tools.name(house.get(), word, reader);
    }
    if (State.of(word).isPresent()) {
      return state(State.of(word).get());
    }
    return Verb.of(word).isPresent()
        ? Phrase.words("step." + word)
        : new Phrase.Words("word." + word, List.of());
  }

  /** An ingredient or formula by its display name, without its grade where that is plain. */
  static Phrase material(String word, Made made) {
    String full = full(word, made);
    String brief = brief(full);
    boolean isPlain = made.formula().formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .filter(other -> !other.equals(word))
        .map(other -> full(other, made))
        .noneMatch(other -> brief(other).equals(brief));
    return named(isPlain ? brief : full);
  }

  private static String brief(String title) {
    int comma = title.indexOf(',');
    return comma < 0 ? title : title.substring(0, comma);
  }

  /** The whole display name of something that is weighed. */
  static String full(String word, Made made) {
    return made.formula()
        .material(word)
        .flatMap(Material::ingredient)
        .map(Ingredient::shownName)
        .orElseGet(() -> capital(spaced(word)));
  }

  static Phrase stage(Stage stage) {
    return Phrase.given(
        stage.title().orElseGet(() -> capital(spaced(stage.name().value()))));
  }

  static Phrase state(State state) {
    return new Phrase.Marked(Phrase.words("state." + state.word()));
  }

  static Phrase named(String title) {
    return new Phrase.Named(title);
  }

  static String spaced(String word) {
    return word.replace('-', ' ');
  }

  static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT)
            + text.substring(text.offsetByCodePoints(0, 1));
  }
}
