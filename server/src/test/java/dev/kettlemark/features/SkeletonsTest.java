package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.Today;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What editors write for a whole section or line can be read, once its places are filled in. */
class SkeletonsTest {

  private static final Path SNIPPETS = Path.of("../editor-client/snippets/kettlemark.json");

  /** Names to be filled in; nothing else of a skeleton may be wrong. */
  private static final Set<String> OF_NAMES = Set.of(
      "unknown-ingredient",
      "unknown-subject",
      "change-without-target",
      "unweighed-object",
      "total-off",
      "missing-caution");

  /** A word that a snippet is filled with where it stands. */
  record Filled(String name, String text) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Filled> skeletons() {
    return Skeletons.of(true).stream().map(offer -> filled(offer.label(), offer.snippet()));
  }

  static Stream<Filled> snippets() throws IOException {
    JsonObject snippets = JsonParser.parseString(Files.readString(SNIPPETS)).getAsJsonObject();
    return snippets.entrySet().stream()
        .map(entry -> filled(
            entry.getKey(),
            StreamSupport.stream(
                    entry.getValue().getAsJsonObject().getAsJsonArray("body").spliterator(), false)
                .map(JsonElement::getAsString)
                .collect(Collectors.joining("\n"))));
  }

  @ParameterizedTest
  @MethodSource({"skeletons", "snippets"})
  void isReadWithoutAnError(Filled filled) {
    assertFalse(filled.text().contains("$"), filled.text());
    Document document = Document.of("filled.kettle", inPlace(filled.text()));
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    List<String> wrong = document.entries().stream()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .filter(finding -> finding.severity() == Severity.ERROR)
        .filter(finding -> !OF_NAMES.contains(finding.rule().id()))
        .map(Finding::message)
        .toList();
    assertEquals(List.of(), wrong, document.text().source().text());
  }

  /** A section stands alone, a stage and its lines in a formula. */
  private static String inPlace(String text) {
    if (text.startsWith("stage")) {
      return "formula around\n" + text;
    }
    boolean isFact = text.startsWith("caution");
    return Stream.of("formula", "variant", "ingredient", "product", "trial", "sheet", "house")
            .anyMatch(text::startsWith)
        ? text
        : "formula around\n"
            + (isFact ? "  " + text + "\nstage pan\n" : "stage pan\n  " + text + "\n");
  }

  /** The text with each place holding what is proposed for it. */
  private static Filled filled(String name, String text) {
    String filled = text.replace("${CURRENT_YEAR}", "2026")
        .replace("${CURRENT_MONTH}", "03")
        .replace("${CURRENT_DATE}", "02")
        .replaceAll("\\$\\{\\d+\\|([^,|]*)[^|]*\\|}", "$1")
        .replaceAll("\\$\\{\\d+:([^}]*)}", "$1")
        .replaceAll("\\$\\d+", "");
    return new Filled(name, filled + "\n");
  }
}
