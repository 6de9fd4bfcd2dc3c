package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordingTest {

  private static Map<String, String> words(String language) {
    return Wording.of(Locale.forLanguageTag(language)).orElseThrow().all();
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr"})
  void everyLanguageHasTheSameKeysAndPlaces(String language) {
    Map<String, String> english = words("en");
    Map<String, String> other = new TreeMap<>(words(language));
    // English stands in the code; RemarkWordsTest holds these.
    other.keySet().removeIf(key -> key.startsWith("remark."));
    assertEquals(new TreeSet<>(english.keySet()), new TreeSet<>(other.keySet()));
    english.forEach(
        (key, text) -> assertEquals(places(text), places(other.getOrDefault(key, "")), key));
  }

  private static Set<String> places(String text) {
    return Pattern.compile("\\{\\d}")
        .matcher(text)
        .results()
        .map(match -> match.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void everyVerbAndStateHasItsWords() {
    TreeSet<String> missing = new TreeSet<>();
    Map<String, String> english = words("en");
    for (Verb verb : Verb.values()) {
      missing.add("verb." + verb.word());
      missing.add("step." + verb.word());
    }
    for (State state : State.values()) {
      missing.add("state." + state.word());
      missing.add("look." + state.word());
    }
    missing.removeAll(english.keySet());
    assertEquals(new TreeSet<>(), missing);
  }
}
