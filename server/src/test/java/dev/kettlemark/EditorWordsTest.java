package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.GsonBuilder;
import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.grammar.KettleLexer;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.SectionWord;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words of the language as one list, from which the syntax files of all editors are made. */
class EditorWordsTest {

  private static final Path LIST = Path.of("../editor-client/words/words.json");

  @Test
  void theEditorsKnowEveryWord() {
    String text =
        new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(words()) + "\n";
    Pinned.file(LIST).check(text, getClass());
  }

  @Test
  void everyListHasWords() {
    words().forEach((name, list) -> assertTrue(list.size() >= 3, name));
  }

  private static Map<String, List<String>> words() {
    Map<String, List<String>> words = new LinkedHashMap<>();
    words.put("sections", sorted(Arrays.stream(SectionWord.values()).map(SectionWord::word)));
    words.put("verbs", sorted(Arrays.stream(Verb.values()).map(Verb::word)));
    words.put("facts", facts());
    words.put("states", sorted(Arrays.stream(State.values()).map(State::word)));
    words.put("figures", figures());
    words.put("connectives", literals(KettleLexer.OF, KettleLexer.PER));
    words.put("amounts", literals(KettleLexer.ALL, KettleLexer.SUFFICIENT));
    words.put(
        "units", sorted(Arrays.stream(Unit.values()).flatMap(unit -> unit.spellings().stream())));
    return words;
  }

  /** What `expect` and the trials can speak of. */
  private static List<String> figures() {
    return sorted(Stream.concat(
        Stream.of(Expectation.YIELD), Arrays.stream(Figure.values()).map(Figure::word)));
  }

  private static List<String> facts() {
    return sorted(Stream.of(
            FactWord.HOUSE,
            FactWord.INGREDIENT,
            FactWord.FORMULA,
            FactWord.STAGE,
            FactWord.VARIANT_CHANGE,
            FactWord.PRODUCT,
            FactWord.TRIAL,
            FactWord.SHEET)
        .flatMap(set -> set.stream()));
  }

  /** The words that the lexer has between two of its rules, both included. */
  private static List<String> literals(int first, int last) {
    return sorted(IntStream.rangeClosed(first, last)
        .mapToObj(KettleLexer.VOCABULARY::getLiteralName)
        .map(literal -> literal.substring(1, literal.length() - 1)));
  }

  private static List<String> sorted(Stream<String> words) {
    return words.distinct().sorted(Comparator.naturalOrder()).collect(Collectors.toList());
  }
}
