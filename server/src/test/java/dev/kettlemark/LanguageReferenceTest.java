package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.syntax.SectionWord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** The language reference tells what the program does: its lists, its examples and its figures. */
class LanguageReferenceTest {

  private static final Path PAGE = Path.of("../grammar/LANGUAGE.md");

  private static final Pattern BLOCK = Pattern.compile("(?ms)^```kettle( mistake)?\\n(.*?)^```$");

  private static final Pattern LIST =
      Pattern.compile("(?s)(<!-- generated: ([a-z-]+) -->\\n)(.*?)(<!-- end -->)");

  private static final Pattern SECTION = Pattern.compile("(?ms)^## (.*?)\\n(.*?)(?=^## |\\z)");

  @Test
  void listsTheWordsOfTheProgram() {
    Map<String, String> tables = LanguageTables.all();
    Set<String> written = new TreeSet<>();
    String fresh = LIST.matcher(page()).replaceAll(list -> {
      written.add(list.group(2));
      String table = tables.getOrDefault(list.group(2), "no such list\n");
      return Matcher.quoteReplacement(list.group(1) + "\n" + table + "\n" + list.group(4));
    });
    assertEquals(tables.keySet().stream().collect(Collectors.toCollection(TreeSet::new)), written);
    if (Boolean.getBoolean("kettlemark.regenerate")) {
      write(fresh);
    }
    assertEquals(
        page(),
        fresh,
        "the lists of LANGUAGE.md are out of date; write them anew with\n"
            + "  mvn test -pl grammar,server -am -Dtest=LanguageReferenceTest"
            + " -Dsurefire.failIfNoSpecifiedTests=false -Dkettlemark.regenerate=true\n");
  }

  @Test
  void explainsEveryFactOfEverySection() {
    Map<String, String> sections = sections();
    LanguageTables.FACTS.forEach((section, words) -> {
      String text = sections.getOrDefault(section, "");
      Set<String> explained = firstCells(text);
      List<String> missing =
          words.stream().filter(word -> !explained.contains(word)).sorted().toList();
      assertEquals(List.of(), missing, section);
    });
  }

  @Test
  void explainsEveryClauseAndSection() {
    Set<String> explained = firstCells(sections().getOrDefault("Stage", ""));
    for (Connective connective : Connective.values()) {
      assertTrue(explained.contains(connective.word()), connective.word());
    }
    for (SectionWord word : SectionWord.values()) {
      String heading =
          word.word().substring(0, 1).toUpperCase(Locale.ROOT) + word.word().substring(1);
      assertTrue(sections().containsKey(heading), heading);
    }
  }

  @Test
  void readsEveryExample() {
    for (Document document : examples()) {
      for (Entry entry : document.entries()) {
        assertEquals(List.of(), entry.section().problems(), entry.section()::text);
        assertEquals(List.of(), entry.reading().problems(), entry.section()::text);
      }
    }
    assertTrue(examples().size() >= 8, "examples of every section");
  }

  @Test
  void findsNothingWrongWithTheExamples() {
    Snapshot library = library();
    for (Document document : library.library().ownDocuments()) {
      for (Entry entry : document.entries()) {
        List<String> grave = Rules.of(library, entry).stream()
            .filter(finding -> finding.severity().compareTo(Severity.WARNING) <= 0)
            .map(Finding::message)
            .toList();
        assertEquals(List.of(), grave, entry.section()::text);
      }
    }
  }

  @Test
  void findsTheMistakesOfTheBadExamples() {
    List<Document> mistakes = blocks(true);
    assertFalse(mistakes.isEmpty());
    for (Document document : mistakes) {
      List<Document> all = new ArrayList<>(Pantry.documents());
      all.add(document);
      Snapshot snapshot = Snapshot.of(Library.of(all));
      assertTrue(
          document.entries().stream()
              .flatMap(entry -> Rules.of(snapshot, entry).stream())
              .anyMatch(finding -> finding.severity() == Severity.ERROR),
          document.text().source()::text);
    }
  }

  @Test
  void solvesItsExamplesToTheWhole() {
    Snapshot library = library();
    int formulas = 0;
    for (Entry entry : library.library().entries(Kind.MATERIAL)) {
      ComputedFormula formula = Formulas.computed(library, entry).orElse(null);
      if (formula != null) {
        assertTrue(formula.amounts().complete(), formula.formula().name().value());
        assertEquals(BigFraction.ONE, formula.amounts().total());
        assertTrue(
            formula.process().cooked().isKnown(), formula.formula().name().value());
        assertEquals(List.of(), formula.resolved().missed());
        formulas++;
      }
    }
    assertTrue(formulas >= 5);
  }

  /** By hand: w + 0.004 w = 0.20, so the water is 0.20 / 1.004 and the gum 0.004 of it. */
  @Test
  void solvesTheGumOfTheLiquid() {
    ComputedFormula formula = formula("gum-of-liquid");
    BigFraction water = new BigFraction(20, 100).divide(new BigFraction(1004, 1000));
    assertEquals(water, formula.amounts().shareOf("water"));
    assertEquals(
        water.multiply(new BigFraction(4, 1000)), formula.amounts().shareOf("xanthan-gum"));
    assertEquals(0.1992, water.doubleValue(), 5e-5);
    assertEquals(0.0008, formula.amounts().shareOf("xanthan-gum").doubleValue(), 5e-5);
  }

  /** By hand: 100, 40 and 35 parts of 175. */
  @Test
  void solvesTheFormulaOnSugar() {
    ComputedFormula formula = formula("on-sugar");
    List<BigFraction> grams = formula.amounts().lines().stream()
        .map(line -> formula.amounts().grams(line).orElseThrow())
        .toList();
    assertEquals(List.of(new BigFraction(1000), new BigFraction(400), new BigFraction(350)), grams);
  }

  /** By hand: 9 / 0.72 = 12.5 and 0.28 · 12.5 = 3.5; 540 / 0.96 = 562.5 and 210 · 1.5 = 315. */
  @Test
  void weighsTheProduct() {
    Snapshot library = library();
    ComputedProduct product = Products.computed(
            library, library.library().find(Kind.PRODUCT, "lamp-cube").orElseThrow())
        .orElseThrow();
    assertEquals(12.5, product.pieceGrams().orElse(Mass.ZERO).grams(), 1e-9);
    assertEquals(3.5, product.parts().get(1).mass().orElse(Mass.ZERO).grams(), 1e-9);
    assertEquals(562.5, product.needs().get(0).withLoss().grams(), 1e-9);
    assertEquals(315, product.needs().get(1).withLoss().grams(), 1e-9);
  }

  /** The page's variant withdraws a fact whose figures go with it, and keeps all others. */
  @Test
  void resolvesTheVariant() {
    Facts parent = formula("lamp-marshmallow").formula().facts();
    Facts variant = formula("lamp-marshmallow-orange").formula().facts();
    assertEquals(1, parent.all("expect").count());
    assertEquals(0, variant.all("expect").count());
    assertEquals(parent.wordsOf("caution").size(), variant.wordsOf("caution").size());
  }

  /** The page's trial tells what the boiling model says, to its own error of one point. */
  @Test
  void measuresInTheTrialWhatTheFormulaLeaves() {
    double left = formula("lamp-fondant")
        .process()
        .stage("syrup")
        .orElseThrow()
        .left()
        .mass()
        .orElse(Mass.ZERO)
        .grams();
    Matcher measured = Pattern.compile("measured +([0-9]+) g +weight of syrup").matcher(page());
    assertTrue(measured.find());
    assertEquals(left, Double.parseDouble(measured.group(1)), left * 0.01);
  }

  private static ComputedFormula formula(String name) {
    Snapshot library = library();
    return Formulas.computed(
            library, library.library().find(Kind.MATERIAL, name).orElseThrow())
        .orElseThrow();
  }

  private static Snapshot library() {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(examples());
    return Snapshot.of(Library.of(all), Today.DAY);
  }

  private static List<Document> examples() {
    return blocks(false);
  }

  private static List<Document> blocks(boolean mistakes) {
    List<Document> documents = new ArrayList<>();
    Matcher block = BLOCK.matcher(page());
    while (block.find()) {
      if (mistakes == (block.group(1) != null)) {
        documents.add(Document.of("block-%02d.kettle".formatted(documents.size()), block.group(2)));
      }
    }
    return documents;
  }

  private static Map<String, String> sections() {
    return SECTION
        .matcher(page())
        .results()
        .collect(Collectors.toMap(found -> found.group(1), found -> found.group(2)));
  }

  /** The words between backquotes in the first column of the tables of a text. */
  private static Set<String> firstCells(String text) {
    return Pattern.compile("(?m)^\\| (`[^|]*`) \\|")
        .matcher(text)
        .results()
        .flatMap(cell -> Arrays.stream(cell.group(1).split(", ")))
        .map(word -> word.replace("`", ""))
        .collect(Collectors.toSet());
  }

  private static String page() {
    try {
      return Files.readString(PAGE).replace("\r\n", "\n");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void write(String text) {
    try {
      Files.writeString(PAGE, text);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
