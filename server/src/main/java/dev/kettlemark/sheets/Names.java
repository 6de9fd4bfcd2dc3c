package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.House;
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
      return Phrase.words("name.stage", new Phrase.Titled(made.titles().of(stage.get()), true));
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
    Title full = made.titles().of(word);
    boolean isPlain = made.formula().formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .filter(other -> !other.equals(word))
        .noneMatch(other -> made.titles().of(other).brief().isLike(full.brief()));
    return new Phrase.Titled(isPlain ? full.brief() : full, true);
  }

  /** The whole display name of something that is weighed. */
  static Phrase full(String word, Made made) {
    return new Phrase.Titled(made.titles().of(word), false);
  }

  static Phrase stage(Stage stage, Made made) {
    return new Phrase.Titled(made.titles().of(stage), false);
  }

  static Phrase state(State state) {
    return new Phrase.Marked(Phrase.words("state." + state.word()));
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
