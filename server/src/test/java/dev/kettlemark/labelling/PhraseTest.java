package dev.kettlemark.labelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Whole words in names that somebody wrote. */
class PhraseTest {

  /** Letters, numbers of all three categories, and what is neither. */
  private static final List<String> PIECES =
      List.of("egg", "white", "e", "É", "ß", "7", "½", "Ⅷ", " ", "-", "'", ".", "🥚", "̈");

  @Test
  void standsAsWordsOfItsOwn() {
    assertTrue(Phrase.isIn("Dried egg-white", "EGG WHITE"));
    assertTrue(Phrase.isIn("egg (dried)", "egg"));
    assertFalse(Phrase.isIn("eggplant", "egg"));
    assertFalse(Phrase.isIn("nutmeg", "nut"));
    assertFalse(Phrase.isIn("E1450", "e 145"));
    assertTrue(Phrase.isIn("eggplant and egg", "egg"));
  }

  /** A capital I with a dot is two letters in small, by the Unicode Standard, SpecialCasing. */
  @Test
  void everyCharacterKeepsItsPlace() {
    for (String text : List.of("İncir, MILK", "MILK-İ", "İİİ", "SÜSS 𐐀İ", "")) {
      assertEquals(text.length(), Phrase.plain(text).length(), text);
    }
    assertEquals("incir, milk", Phrase.plain("İncir, MILK"));
    assertTrue(Phrase.isIn("İncir helva with MILK", "milk"));
  }

  @Test
  void hasWords() {
    assertThrows(IllegalArgumentException.class, () -> Phrase.of(""));
  }

  /** Of these the pattern below sees half a letter only, when it looks back. */
  @Test
  void lettersOfTwoUnitsAreLetters() {
    assertFalse(Phrase.isIn("𐐀egg", "egg"));
    assertFalse(Phrase.isIn("egg𝟙", "egg"));
    assertTrue(Phrase.isIn("🥚egg🥚", "egg"));
  }

  /** The oracle is the pattern of the Java library that says the same. */
  @Test
  void standsWhereAPatternFindsIt() {
    Chance.rounds(2_000, random -> {
      String text = Phrase.plain(text(random, 12));
      Phrase phrase = Phrase.of(text(random, 1 + random.nextInt(2)));
      assertEquals(
          byPattern(text, phrase.plain()), places(text, phrase), () -> phrase + " in " + text);
    });
  }

  private static List<Integer> places(String text, Phrase phrase) {
    List<Integer> places = new ArrayList<>();
    int place = phrase.placeIn(text, 0);
    while (place != Phrase.NOWHERE) {
      places.add(place);
      place = phrase.placeIn(text, place + phrase.length());
    }
    return places;
  }

  private static List<Integer> byPattern(String text, String plain) {
    List<Integer> places = new ArrayList<>();
    Matcher matcher = Pattern.compile(
            "(?<![\\p{L}\\p{N}])" + Pattern.quote(plain) + "(?![\\p{L}\\p{N}])")
        .matcher(text);
    while (matcher.find()) {
      places.add(matcher.start());
    }
    return places;
  }

  private static String text(Random random, int pieces) {
    StringBuilder text = new StringBuilder();
    for (int piece = 0; piece < pieces; piece++) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return text.toString();
  }
}
