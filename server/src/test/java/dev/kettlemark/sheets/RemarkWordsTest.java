package dev.kettlemark.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every remark that may reach a page has words in every language. */
class RemarkWordsTest {

  private static final Path SOURCES = Path.of("src/main/java/dev/kettlemark");

  /** What the pages are made of; what only an editor or a terminal tells stays English. */
  private static final List<String> PACKAGES = List.of(
      "analysis", "answers", "cards", "labelling", "reading", "scaling", "science", "sheets");

  /** The clause of an unknown or of a remark; pieces of it are joined by a plus sign. */
  private static final Pattern CLAUSE =
      Pattern.compile("(?:unknown\\(\\s*Reason\\.[A-Z_]+,|Remark\\.of\\(|broken\\(|outside\\(|"
          + "ground\\(\\s*(?:Kind\\.[A-Z_]+|kind),(?: use,)?)\\s*"
          + "((?:\"(?:[^\"\\\\]|\\\\.)*\"\\s*\\+?\\s*)+)");

  private static Map<String, Remark> remarks() throws IOException {
    Map<String, Remark> remarks = new TreeMap<>();
    for (String name : PACKAGES) {
      try (Stream<Path> files = Files.walk(SOURCES.resolve(name))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          Matcher clause = CLAUSE.matcher(Files.readString(file));
          while (clause.find()) {
            String text = clause.group(1).strip().replaceAll("\"\\s*\\+\\s*\"", "");
            Remark remark = Remark.of(text.substring(1, text.length() - 1));
            remarks.put(remark.key(), remark);
          }
        }
      }
    }
    return remarks;
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "fr"})
  void everyRemarkHasWords(String language) throws IOException {
    Map<String, String> words =
        Wording.of(Locale.forLanguageTag(language)).orElseThrow().all();
    Map<String, Remark> remarks = remarks();
    assertTrue(remarks.size() > 140, "only " + remarks.size());
    Set<String> missing = new TreeSet<>();
    remarks.forEach((key, remark) -> {
      String text = words.get("remark." + key);
      if (text == null || !places(text).equals(places(remark))) {
        missing.add(key + " = " + remark.pattern());
      }
    });
    assertEquals(Set.of(), missing);
  }

  private static Set<String> places(String message) {
    return Pattern.compile("\\{(\\d)}")
        .matcher(message)
        .results()
        .map(match -> match.group(1))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> places(Remark remark) {
    long count = Pattern.compile("%(?:\\.\\d)?[sdf]")
        .matcher(remark.pattern().replace("%%", ""))
        .results()
        .count();
    return Stream.iterate(0, i -> i + 1)
        .limit(count)
        .map(String::valueOf)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void germanAndFrenchHaveTheSameKeys() {
    assertEquals(keys("de"), keys("fr"));
  }

  private static Set<String> keys(String language) {
    return Wording.of(Locale.forLanguageTag(language)).orElseThrow().all().keySet().stream()
        .filter(key -> key.startsWith("remark."))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String told(Remark remark, String tag) {
    SheetRequest request = SheetRequest.of("", SheetReader.PRODUCTION, Locale.forLanguageTag(tag));
    return Speech.of(request).orElseThrow().text(Phrase.told(remark));
  }

  @Test
  void tellsItsValuesAsTheLanguageWritesThem() {
    Remark remark = Remark.of(
        "nothing in it holds air: protein and fibre are %.2f %% of it, less than %.1f %%",
        0.451, 1.0);
    assertEquals(
        "nothing in it holds air: protein and fibre are 0.45 % of it, less than 1.0 %",
        told(remark, "en-GB"));
    assertEquals(
        "nichts darin hält Luft: Eiweiß und Ballaststoffe sind 0,45 %, weniger als 1,0 %",
        told(remark, "de-DE"));
  }

  @Test
  void tellsARemarkInARemarkAndAWord() {
    Remark inner = Remark.of("nobody has described `%s`", "moon-dust");
    Remark remark = Remark.of("how much %s there is, is unknown: %s", "moon dust", inner);
    assertEquals(
        "wie viel moon dust darin ist, ist unbekannt: niemand hat moon-dust beschrieben",
        told(remark, "de-DE"));
    assertEquals(
        "how much moon dust there is, is unknown: nobody has described `moon-dust`",
        remark.english());
    Remark holds = Remark.of("`%s` holds %s", "marzipan", new Remark.Word("allergen", "almond"));
    assertEquals("marzipan enthält Mandel", told(holds, "de-DE"));
    assertEquals("`marzipan` holds almond", holds.english());
  }

  /** A citation holds digits and is no figure. */
  @Test
  void leavesWhatIsNoFigure() {
    Remark remark = Remark.of(
        "`%s` needs no statement of %s: %s",
        "oil", new Remark.Word("allergen", "soy"), "21 CFR 101.4");
    assertTrue(told(remark, "de-DE").endsWith(": 21 CFR 101.4"), told(remark, "de-DE"));
  }

  /** A remark without words in a language says at least of what kind the obstacle is. */
  @Test
  void staysEnglishWhereThereAreNoWords() {
    SheetFigure figure = SheetFigure.model(
        "x",
        SheetUnit.PERCENT,
        Outcome.unknown(Reason.NOT_MODELLED, "this was never translated by anybody"),
        1);
    SheetRequest request = SheetRequest.of("", SheetReader.PRODUCTION, Locale.GERMANY);
    assertEquals(
        "unbekannt: (keine Gleichung dafür) this was never translated by anybody",
        Speech.of(request).orElseThrow().text(Phrase.value(figure)));
  }
}
