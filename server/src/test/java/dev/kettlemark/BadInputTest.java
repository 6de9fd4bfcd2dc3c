package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever the text: an answer in bounded time, no exception, and findings that lie in the text.
 *
 * <p>The bound is generous, since test machines are slow and shared; anything that grows faster than
 * the text would miss it by far.
 */
class BadInputTest {

  private static final Duration BOUND = Duration.ofSeconds(60);
  private static final int FIVE_MEGABYTES = 5_000_000;
  private static final String OPENING = "formula a\n  percent of charge\n  batch 1 kg\nstage b\n";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "\n",
        "\r",
        "\uFEFF",
        "\u0000",
        "\uD83C",
        "\uDF6F",
        "\"",
        "#",
        "formula",
        "stage",
        "stage x",
        "product p\n  centre 18 g p",
        "variant v of v",
        "variant v of w\nvariant w of v",
        "formula a\nstage b\n  100 % a",
        "formula a\nstage b\n  50 % c\nformula c\nstage b\n  100 % a",
        "formula a\nstage b\n  all of b\n  mix",
        "formula a\n  basis x = x\nstage b\n 10 % of x x",
        "formula a\n  percent of finished\nstage b\n  100 % water\n  cook to 100 °C",
        "formula a\nstage b\n  1 mL water\n  1 cup nothing\n  1 each egg",
        "formula a\n  batch 0.000000000000000000001 g\nstage b\n  100 % water\n  cook to 130 °C",
        "formula a\nstage b\n  100 % white-sugar\n  cook to 1999 °C\n  cool to -273.15 °C",
        "formula a\nstage b\n  100 % white-sugar at -273.15 °C\n  50 % water at 1999 °C\n  mix",
        "formula a\nstage b\n  0 % white-sugar\n  cook to 120 °C",
        "formula a\nstage b\n  0 g white-sugar\n  0 g water at 90 °C\n  mix\n  cook to 120 °C",
        "house h\n  altitude 99999999 km\n  altitude 12345678901234567890 m",
        "house h\n  room at -300 °C\n  bowl b weighs -1 kg\n  bowl b holds 1 L whips 0-0 g",
        "ingredient a\n  contains -5 % water, 200 % solids\n  density 0 g/mL\n  use 5-1 % of x",
        "ingredient a\n  contains 0 % water",
        "ingredient a\n  density 99999999999999999999 g/mL\nformula f\nstage s\n  99999999999999999 L a",
        "formula a\nstage b\n  99999999999999999999 % of c c\n  99999999999999999999 % of c d\n  q.s. e"
      })
  void answersToATextThatMeansNothing(String text) {
    assertAnswers(text);
    assertAnswers(text + "\n");
    assertAnswers(text.replace("\n", "\r\n"));
    assertAnswers(text.replace("\n", "\r"));
  }

  @Test
  void answersToALibraryOfFiveMegabytes() {
    String formula = "formula f# \"Nougat\"\n  percent of charge\n  batch 1200 g\nstage foam\n"
        + "  5 % egg-white-powder\n  q.s. water\n  whip until soft-peak\nstage syrup\n  40 % white-sugar\n"
        + "  10 % water\n  cook to 141 °C +- 1\nstage body\n  all of foam\n  all of syrup\n  mix\n\n";
    StringBuilder text = new StringBuilder();
    for (int i = 0; text.length() < FIVE_MEGABYTES; i++) {
      text.append(formula.replace("#", Integer.toString(i)));
    }
    List<Finding> findings = assertAnswers(text.toString());
    assertEquals(1, findings.size());
    assertEquals(
        "the text has " + text.length() + " characters, and beyond 1000000 only headings are read",
        findings.get(0).message());
  }

  @Test
  void checksALongTextThatIsNotTooLong() {
    String line = "  5 % white-sugar\n";
    String text = OPENING + line + "# " + "x".repeat(3000) + "\n";
    String padding = ("# " + "x".repeat(3000) + "\n").repeat(300);
    assertTrue(findings(text + padding).stream().noneMatch(BadInputTest::isOfLength));
    assertTrue(findings(text + padding).size() > 0);
  }

  private static boolean isOfLength(Finding finding) {
    return finding.message().contains("only headings are read");
  }

  @Test
  void answersToALibraryInWhichEachFormulaIsMadeOfTheLast() {
    StringBuilder text = new StringBuilder("formula f0\nstage b\n  100 % white-sugar\n");
    for (int i = 1; i < 20_000; i++) {
      text.append("formula f" + i + "\nstage b\n  100 % f" + (i - 1) + "\n");
      text.append("variant v" + i + " of " + (i == 1 ? "f0" : "v" + (i - 1)) + "\n");
    }
    assertAnswers(text.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a", "a ", "5 % ", "\"", "%", ";", "1", "1 ", ",", "a, ", "of ", "x = ", "é", "🍯", "- ",
        "a-", " "
      })
  void answersToALineOfAMillionCharacters(String piece) {
    String line = piece.repeat(1_000_000 / piece.length());
    assertAnswers(line);
    assertAnswers(OPENING + "  mix " + line + "\n  whip\n");
  }

  @Test
  void answersToALineOfFiveMegabytes() {
    assertAnswers("formula a \"" + "x".repeat(FIVE_MEGABYTES));
    assertAnswers(OPENING + "  " + "5 % sugar, ".repeat(FIVE_MEGABYTES / 11));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "x",
        "5 % sugar",
        "5 % of c#\n  5 % of sugar# sugar#",
        "5 % white-sugar#\n  2 mL water",
        "q.s. water",
        "mix",
        "rest for 2 h",
        "all of b",
        "stage b",
        "stage b#\n  all of b",
        "stage s#\n all of b\n 1 % water\n mix",
        "= =",
        "\"",
        "formula x",
        "formula x#",
        "formula g#\nstage s\n 100 % a",
        "basis a# = sugar#",
        "5 sugar#",
        "1,2 % sugar#",
        ".5 % sugar#",
        "cook to 120",
        "whip for 90",
        "1 tsp guar-gum",
        "5 % of liquid sugar#",
        "5 % sugar§",
        "wisk sugar#",
        "product p#\n  centre 5 g a\n  coat 5 % b",
        "stage b again\n  5 % sugar\n  mix"
      })
  void answersToManyShortLines(String line) {
    StringBuilder text = new StringBuilder(OPENING);
    for (int i = 0; i < (line.length() < 2 ? 1_000_000 : 400_000 / line.length()); i++) {
      text.append(line.replace("#", Integer.toString(i))).append('\n');
    }
    assertAnswers(text.toString());
  }

  @Test
  void answersToAFigureOfAHundredThousandDigits() {
    String digits = "7".repeat(100_000);
    for (String figure : List.of(
        digits,
        digits + "." + digits,
        digits + "-" + digits,
        "1/" + digits,
        "0." + digits,
        "1" + ",1".repeat(10_000))) {
      assertAnswers(
          OPENING + "  " + figure + " % sugar\n  cook to " + figure + " °C +- " + figure + "\n");
    }
  }

  @Test
  void answersToStagesThatTakeEachOtherTwice() {
    StringBuilder text =
        new StringBuilder(OPENING + "  5 % of s59 sugar\n  q.s. water\nstage s0\n  all of b\n");
    for (int i = 1; i < 60; i++) {
      text.append("stage s" + i + "\n  all of s" + (i - 1) + "\n  all of s" + (i - 1)
          + "\n  all of s" + i + "\n");
    }
    assertAnswers(text.toString());
  }

  @Test
  void answersToRandomBytes() {
    Chance.rounds(10, random -> {
      for (int size : new int[] {1, 10, 100, 1000}) {
        for (int i = 0; i < Math.max(1, 100 / size); i++) {
          assertAnswersToBytes(size, random);
        }
      }
    });
  }

  @Test
  void answersToMuchThatIsRandom() {
    Chance.rounds(1, random -> {
      assertAnswersToBytes(10_000, random);
      assertAnswersToBytes(1_000_000, random);
    });
  }

  private static void assertAnswersToBytes(int size, Random random) {
    byte[] bytes = new byte[size];
    random.nextBytes(bytes);
    assertAnswers(new String(bytes, StandardCharsets.UTF_8));
    assertAnswers(OPENING + new String(bytes, StandardCharsets.ISO_8859_1));
  }

  /** Words, figures and signs of the language in any order: the likeliest way to a wrong turn. */
  @Test
  void answersToAnyRowOfTheLanguagesOwnWords() {
    List<String> words = new ArrayList<>(List.of(
        "\n",
        "\n",
        "\n",
        "\n  ",
        "\r\n",
        "formula",
        "variant",
        "ingredient",
        "house",
        "product",
        "stage",
        "trial",
        "sheet",
        "of",
        "to",
        "in",
        "into",
        "by",
        "at",
        "on",
        "until",
        "for",
        "all of",
        "part",
        "q.s.",
        "%",
        "g",
        "kg",
        "mL",
        "cup",
        "°C",
        "°F",
        "min",
        "h",
        "L",
        "m",
        "each",
        "pieces",
        "1",
        "0",
        "-1",
        "1/2",
        "1/0",
        "1000",
        "1e9",
        "0.5",
        "-300",
        "120",
        "99999999999999999999",
        "20-10",
        "±",
        "=",
        ",",
        "\"t\"",
        "\"",
        "#",
        "a",
        "b",
        "c",
        "water",
        "white-sugar",
        "honey",
        "basis",
        "batch",
        "percent",
        "contains",
        "density",
        "use",
        "altitude",
        "bowl",
        "mould",
        "frame",
        "scale",
        "room",
        "reads",
        "holds",
        "weighs",
        "whips",
        "has",
        "measures",
        "centre",
        "coat",
        "make",
        "loss",
        "spare",
        "replace",
        "drop",
        "add",
        "change",
        "withdraw",
        "again",
        "mix",
        "cook",
        "boil",
        "warm",
        "cool",
        "whip",
        "fold",
        "rest",
        "temper",
        "deposit",
        "cut",
        "charge",
        "finished",
        "soft-peak",
        "lid",
        "solids",
        "fat"));
    Chance.rounds(3000, random -> {
      StringBuilder text = new StringBuilder(random.nextBoolean() ? OPENING : "");
      for (int word = random.nextInt(60); word >= 0; word--) {
        text.append(words.get(random.nextInt(words.size())))
            .append(random.nextInt(9) == 0 ? "" : " ");
      }
      assertAnswers(text.toString());
    });
  }

  /** Lines of the right shape with figures that no bench has. */
  @Test
  void answersToFormulasWithAbsurdFigures() {
    List<String> figures = List.of(
        "0",
        "1",
        "33",
        "100",
        "250",
        "99999999999999999999",
        "0.0000000000000000001",
        "-5",
        "273.15",
        "1999");
    List<String> lines = List.of(
        "  # % white-sugar",
        "  # % water at # °C",
        "  # g honey",
        "  # % of water guar-gum",
        "  # % of b sea-salt",
        "  # % of finished honey",
        "  # mL water",
        "  # ppm sea-salt",
        "  q.s. water",
        "  part # % of b",
        "  all of b",
        "stage c",
        "stage b",
        "  cook to # °C",
        "  cook to # °F +- #",
        "  boil for # min",
        "  warm to # °C",
        "  mix",
        "  whip until soft-peak",
        "  rest for # h at # °C",
        "  pour water into honey",
        "  cook until soft-ball",
        "  cool to # °C",
        "  batch # g",
        "  fold sea-salt");
    Chance.rounds(3000, random -> {
      StringBuilder text = new StringBuilder(
          OPENING.replace("charge", random.nextBoolean() ? "finished" : "charge"));
      text.append("house h\n  altitude # m\n  room at # °C\n  bowl p holds # L weighs # kg\n"
          .repeat(random.nextInt(2)));
      text.append("formula z\n  batch # g\nstage b in p\n");
      for (int line = random.nextInt(14); line >= 0; line--) {
        text.append(lines.get(random.nextInt(lines.size()))).append('\n');
      }
      String filled = text.toString();
      while (filled.contains("#")) {
        filled = filled.replaceFirst("#", figures.get(random.nextInt(figures.size())));
      }
      assertAnswers(filled);
    });
  }

  @Test
  void marksTheRightPlaceBehindCharactersOfTwoUnits() {
    String text = "\uFEFFformula a \"🍯 cre\u0300me\"\r\nstage b\r\n  5 % 𠮷-sugar ; water\r\n";
    Finding finding = findings(text).stream()
        .filter(f -> f.message().contains("`;`"))
        .findFirst()
        .orElseThrow();
    Source source = Source.of(text);
    assertEquals(";", finding.span().of(text));
    assertEquals(
        new Position(2, "  5 % 𠮷-sugar ".length()),
        source.position(finding.span().start(), PositionEncoding.UTF16));
  }

  private static List<Finding> findings(String text) {
    Document document = Document.of("bad.kettle", text);
    List<Document> all = new ArrayList<>(PANTRY);
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all));
    List<Finding> findings = new ArrayList<>();
    for (Entry entry : document.entries()) {
      if (!document.isTooLong()) {
        Formulas.computed(snapshot, entry);
      }
      for (Finding finding : Rules.of(snapshot, entry)) {
        Span whole = new Span(0, entry.section().text().length());
        assertTrue(whole.contains(finding.span()), () -> finding + " lies outside its section");
        assertTrue(
            finding.message().length() < 1000,
            () -> "endless message of " + finding.rule().id());
        findings.add(finding);
      }
    }
    return findings;
  }

  private static List<Finding> assertAnswers(String text) {
    try {
      return assertTimeoutPreemptively(BOUND, () -> findings(text));
    } catch (RuntimeException | StackOverflowError broken) {
      throw new AssertionError(
          "no answer to: " + text.substring(0, Math.min(600, text.length())), broken);
    }
  }

  private static final List<Document> PANTRY = Pantry.documents();
}
