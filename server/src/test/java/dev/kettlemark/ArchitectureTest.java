package dev.kettlemark;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.equivalentTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import dev.kettlemark.checks.Rule;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.checks.Rules;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/**
 * The walls of the house: who may know whom, and what nobody may do.
 *
 * <p>An exception to a rule stands in a list here, with its reason; an exception that is no longer needed
 * fails as well.
 */
class ArchitectureTest {

  private static final String ROOT = "dev.kettlemark";
  private static final Path SOURCES = Path.of("src/main/java/dev/kettlemark");
  private static final Path TESTS = Path.of("src/test/java/dev/kettlemark");

  /** Fewer classes than this means that the scan went wrong, and every rule below holds for nothing. */
  private static final int FEWEST_CLASSES = 150;

  private static final int MEDIAN_LINES = 110;
  private static final int USUAL_LINES = 400;
  private static final int MOST_LINES = 500;

  /** Source files above {@link #MOST_LINES}, each with its reason. */
  private static final Map<String, String> LONG_FILES = Map.of();

  /** Classes below the adapters that read files, each with its reason. */
  private static final Map<String, String> READERS = Map.of(
      "dev.kettlemark.library.Pantry",
      "the pantry is written in the language and shipped as text inside the program",
      "dev.kettlemark.library.Thresholds",
      "so are the usual thresholds",
      "dev.kettlemark.labelling.LawTable",
      "what the law says is a table with its source and date, so that it can be read and renewed as one",
      "dev.kettlemark.sheets.Wording",
      "what sheets say stands in one file for each language, so that it can be read and renewed as one",
      "dev.kettlemark.sheets.SheetHtml",
      "the look of a page is a style sheet, which is laid into each page",
      "dev.kettlemark.preview.PreviewStyle",
      "so is the look of what is shown beside a text",
      "dev.kettlemark.checks.RulePages",
      "the page of a rule is Markdown, so that the editor, the terminal and the web read one text");

  private static final JavaClasses CLASSES = new ClassFileImporter()
      .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
      .withImportOption(location -> !location.contains("/grammar/"))
      .importPackages(ROOT);

  @Test
  void theScanSawTheWholeProgram() {
    assertTrue(CLASSES.size() >= FEWEST_CLASSES, "only " + CLASSES.size() + " classes");
  }

  @Test
  void eachLayerKnowsOnlyWhatLiesBelowIt() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .withOptionalLayers(true)
        .layer("text")
        .definedBy(ROOT + ".text..")
        .layer("quantity")
        .definedBy(ROOT + ".quantity..")
        .layer("model")
        .definedBy(ROOT + ".model..")
        .layer("science")
        .definedBy(ROOT + ".science..")
        .layer("syntax")
        .definedBy(ROOT + ".syntax..")
        .layer("reading")
        .definedBy(ROOT + ".reading..")
        .layer("library")
        .definedBy(ROOT + ".library..")
        .layer("analysis")
        .definedBy(ROOT + ".analysis..")
        .layer("scaling")
        .definedBy(ROOT + ".scaling..")
        .layer("labelling")
        .definedBy(ROOT + ".labelling..")
        .layer("pictures")
        .definedBy(ROOT + ".pictures..")
        .layer("answers")
        .definedBy(ROOT + ".answers..")
        .layer("sheets")
        .definedBy(ROOT + ".sheets..")
        .layer("cards")
        .definedBy(ROOT + ".cards..")
        .layer("publishing")
        .definedBy(ROOT + ".publishing..")
        .layer("files")
        .definedBy(ROOT + ".files..")
        .layer("checks")
        .definedBy(ROOT + ".checks..")
        .layer("comparison")
        .definedBy(ROOT + ".comparison..")
        .layer("features")
        .definedBy(ROOT + ".features..")
        .layer("preview")
        .definedBy(ROOT + ".preview..")
        .layer("protocol")
        .definedBy(ROOT + ".protocol..")
        .layer("workbench")
        .definedBy(ROOT + ".workbench..")
        .layer("cli")
        .definedBy(ROOT + ".cli..")
        .whereLayer("text")
        .mayNotAccessAnyLayer()
        .whereLayer("quantity")
        .mayNotAccessAnyLayer()
        .whereLayer("model")
        .mayOnlyAccessLayers("text", "quantity")
        .whereLayer("science")
        .mayOnlyAccessLayers("model", "quantity")
        .whereLayer("syntax")
        .mayOnlyAccessLayers("text", "model")
        .whereLayer("reading")
        .mayOnlyAccessLayers("syntax", "model", "text", "quantity")
        .whereLayer("library")
        .mayOnlyAccessLayers("text", "syntax", "model", "reading")
        .whereLayer("analysis")
        .mayOnlyAccessLayers("library", "reading", "model", "science", "quantity", "text")
        .whereLayer("scaling")
        .mayOnlyAccessLayers(
            "analysis", "library", "syntax", "model", "science", "quantity", "text")
        .whereLayer("labelling")
        .mayOnlyAccessLayers(
            "scaling", "analysis", "library", "model", "science", "quantity", "text")
        .whereLayer("pictures")
        .mayOnlyAccessLayers(
            "scaling", "analysis", "library", "model", "science", "quantity", "text")
        .whereLayer("answers")
        .mayOnlyAccessLayers("analysis", "library", "model", "science", "quantity", "text")
        .whereLayer("sheets")
        .mayOnlyAccessLayers(
            "answers",
            "pictures",
            "labelling",
            "scaling",
            "analysis",
            "library",
            "model",
            "science",
            "quantity",
            "text")
        .whereLayer("cards")
        .mayOnlyAccessLayers(
            "sheets",
            "answers",
            "labelling",
            "scaling",
            "analysis",
            "library",
            "model",
            "science",
            "quantity",
            "text")
        .whereLayer("publishing")
        .mayOnlyAccessLayers(
            "cards",
            "sheets",
            "checks",
            "labelling",
            "scaling",
            "analysis",
            "library",
            "model",
            "quantity",
            "text")
        .whereLayer("files")
        .mayNotAccessAnyLayer()
        .whereLayer("checks")
        .mayOnlyAccessLayers(
            "labelling",
            "scaling",
            "analysis",
            "library",
            "reading",
            "syntax",
            "model",
            "science",
            "quantity",
            "text")
        .whereLayer("comparison")
        .mayOnlyAccessLayers(
            "labelling",
            "checks",
            "answers",
            "scaling",
            "analysis",
            "library",
            "model",
            "science",
            "quantity",
            "text",
            "syntax",
            "reading")
        .whereLayer("features")
        .mayOnlyAccessLayers(
            "comparison",
            "labelling",
            "pictures",
            "checks",
            "answers",
            "scaling",
            "analysis",
            "library",
            "reading",
            "syntax",
            "model",
            "science",
            "quantity",
            "text")
        .whereLayer("preview")
        .mayOnlyAccessLayers(
            "sheets", "pictures", "checks", "analysis", "library", "model", "quantity", "text")
        .whereLayer("protocol")
        .mayOnlyAccessLayers(
            "preview",
            "features",
            "cards",
            "sheets",
            "pictures",
            "comparison",
            "checks",
            "scaling",
            "files",
            "analysis",
            "library",
            "reading",
            "syntax",
            "model",
            "quantity",
            "text")
        .whereLayer("workbench")
        .mayOnlyAccessLayers("protocol", "files")
        .check(CLASSES);
  }

  @Test
  void theServerOfThePageKnowsNothingOfTheWorkbench() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".workbench.http..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(ROOT + ".workbench", ROOT + ".protocol..", ROOT + ".files..")
        .check(CLASSES);
  }

  @Test
  void onlyWhatSpeaksOfFindingsBringsChecksToFeatures() {
    noClasses()
        .that()
        .resideInAPackage(ROOT + ".features..")
        .and()
        .haveNameNotMatching(".*\\.(QuickFixes|AcceptHover|AcceptOffers)(\\$.*)?")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(ROOT + ".checks..")
        .because(
            "checks and features are siblings; only quick fixes and acceptances speak of findings")
        .allowEmptyShould(true)
        .check(CLASSES);
  }

  @Test
  void noPackagesGoInACircle() {
    slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  /** SECURITY.md promises it: nothing leaves the machine, and nothing comes in but at one door. */
  @Test
  void onlyTheWorkbenchOpensASocket() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + ".workbench..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.net\\.(Socket|ServerSocket|DatagramSocket|MulticastSocket"
            + "|InetAddress|URLConnection|HttpURLConnection|Proxy|http\\..*)"
            + "|javax\\.net\\..*|com\\.sun\\.net\\..*|java\\.rmi\\..*"
            + "|java\\.nio\\.channels\\.(ServerSocket|Socket|Datagram|AsynchronousS).*")
        .check(CLASSES);
    noClasses()
        .should()
        .callMethod(URI.class, "toURL")
        .orShould()
        .callMethod(URL.class, "openStream")
        .orShould()
        .callMethod(URL.class, "openConnection")
        .orShould()
        .callConstructor(URL.class, String.class)
        .check(CLASSES);
  }

  @Test
  void onlyTheTerminalProgramStartsOthers() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + ".cli..")
        .should()
        .dependOnClassesThat()
        .belongToAnyOf(ProcessBuilder.class)
        .orShould()
        .callMethod(Runtime.class, "exec", String[].class)
        .check(CLASSES);
  }

  /** A clock of the machine may be set at any time; the day is asked for in one place, and nothing waits by it. */
  @Test
  void onlyTheTerminalAsksTheClockOfTheMachine() {
    noClasses()
        .that()
        // Its method references stand in classes of their own; see LambdaClasses.
        .haveNameNotMatching(ROOT + "\\.cli\\.Terminal(\\$\\$\\d+)?")
        .should()
        .callMethodWhere(target(owner(resideInAPackage("java.time..")))
            .and(target(name("now")))
            .or(target(owner(assignableTo(Clock.class))).and(target(nameMatching("system.*"))))
            .or(target(owner(equivalentTo(System.class))).and(target(name("currentTimeMillis")))))
        .orShould()
        .callConstructor(Date.class)
        .check(CLASSES);
  }

  @Test
  void eachLibraryHasItsPlace() {
    onlyIn("org.antlr..", "syntax");
    onlyIn(ROOT + ".grammar..", "syntax");
    onlyIn("org.eclipse.lsp4j..", "protocol");
    onlyIn("info.picocli..", "cli");
    onlyIn("picocli..", "cli");
    onlyIn("org.eclipse.elk..", "pictures");
    onlyIn("org.eclipse.emf..", "pictures");
    // A sheet is also published as JSON, and carries linked data.
    onlyIn("com.google.gson..", "cli", "protocol", "sheets", "workbench");
    onlyIn(
        "org.hipparchus..",
        "quantity",
        "model",
        "analysis",
        "science",
        "syntax",
        "reading",
        "scaling",
        "labelling",
        "answers",
        "checks",
        "comparison",
        "features",
        "pictures",
        "sheets",
        "cards",
        "publishing",
        // Both turn what a user asks for into an exact figure of a scaling.
        "protocol",
        "cli");
  }

  private static void onlyIn(String library, String... packages) {
    String[] names =
        Stream.of(packages).map(name -> ROOT + "." + name + "..").toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(names)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  @Test
  void onlyTheTerminalSpeaksToTheTerminal() {
    noClasses()
        .that()
        .resideOutsideOfPackage(ROOT + ".cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .accessField(System.class, "in")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .because(
            "a stray line on standard output breaks the protocol, and an exit drops the editor")
        .check(CLASSES);
  }

  @Test
  void onlyAdaptersAndNamedReadersTouchFiles() {
    TreeSet<String> touching = new TreeSet<>();
    for (JavaClass one : CLASSES) {
      boolean adapter = one.getPackageName().startsWith(ROOT + ".cli")
          || one.getPackageName().startsWith(ROOT + ".files")
          || one.getPackageName().startsWith(ROOT + ".protocol")
          || one.getPackageName().startsWith(ROOT + ".workbench");
      boolean touches = one.getDirectDependenciesFromSelf().stream()
          .map(dependency -> dependency.getTargetClass().getName())
          .anyMatch(name -> name.startsWith("java.nio.file.")
              || name.equals("java.io.File")
              || name.equals("java.io.InputStream")
              || name.equals("java.io.OutputStream")
              || name.equals("java.io.Reader")
              || name.equals("java.io.Writer"));
      if (!adapter && touches) {
        touching.add(one.getName());
      }
    }
    assertEquals(new TreeSet<>(READERS.keySet()), touching);
  }

  @Test
  void everyRuleIsFinalAndHasNoState() {
    classes()
        .that()
        .implement(Rule.class)
        .should()
        .haveModifier(JavaModifier.FINAL)
        .check(CLASSES);
    for (JavaClass rule : rules().toList()) {
      List<String> state = rule.getFields().stream()
          .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
          .map(field -> field.getFullName())
          .toList();
      assertEquals(List.of(), state, rule.getName());
    }
  }

  @Test
  void everyRuleIsListedTestedAndExplained() {
    TreeSet<String> written = new TreeSet<>();
    rules().forEach(rule -> written.add(rule.getSimpleName()));
    TreeSet<String> listed = new TreeSet<>();
    Rules.all().forEach(rule -> listed.add(rule.getClass().getSimpleName()));
    assertEquals(written, listed);
    for (Rule rule : Rules.all()) {
      String name = rule.getClass().getSimpleName();
      assertTrue(
          Files.exists(TESTS.resolve("checks/" + name + "Test.java")), name + " has no test");
      assertTrue(RulePages.page(rule.info().id()).isPresent(), name + " has no page");
      assertEquals(kebab(name), rule.info().id(), "the id of " + name);
    }
  }

  @Test
  void everyPackageSaysWhatItIsAndIsNullMarked() {
    for (Path folder : folders()) {
      Path info = folder.resolve("package-info.java");
      assertTrue(Files.exists(info), folder + " has no package-info.java");
      String text = read(info);
      assertTrue(text.contains("@NullMarked\npackage "), info + " is not null-marked");
      for (String opening :
          List.of("Layer: ", "Promise: ", "May use: ", "Never: ", "Start reading at {@link ")) {
        assertTrue(text.contains(opening), info + " lacks the line `" + opening + "`");
      }
    }
  }

  @Test
  void theCompiledPackagesAreNullMarked() {
    for (JavaClass one : CLASSES) {
      assertTrue(
          one.getPackage().isAnnotatedWith(NullMarked.class),
          one.getPackageName() + " is not marked");
    }
  }

  @Test
  void sourceFilesStayShort() {
    List<Integer> lengths = new ArrayList<>();
    TreeSet<String> tooLong = new TreeSet<>();
    for (Path file : sources()) {
      int length = (int) read(file).lines().count();
      lengths.add(length);
      if (length > MOST_LINES) {
        tooLong.add(SOURCES.relativize(file).toString().replace('\\', '/'));
      }
    }
    lengths.sort(null);
    assertTrue(
        lengths.get(lengths.size() / 2) <= MEDIAN_LINES,
        "the median is " + lengths.get(lengths.size() / 2));
    assertTrue(
        lengths.get(lengths.size() * 95 / 100) <= USUAL_LINES,
        "95 % are below " + lengths.get(lengths.size() * 95 / 100));
    assertEquals(new TreeSet<>(LONG_FILES.keySet()), tooLong);
  }

  @Test
  void noClassIsNamedAfterNothing() {
    noClasses()
        .should()
        .haveNameMatching(".*(Util|Utils|Manager|Helper|Impl)")
        .because("such a name says nothing about what the class is for")
        .check(CLASSES);
  }

  @Test
  void theScienceAndTheModelAskNothingOfTheWorld() {
    noClasses()
        .that(resideInAPackage(ROOT + ".science..").or(resideInAPackage(ROOT + ".model..")))
        .should()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.util\\.(Random|concurrent\\..*)|java\\.time\\.(Clock|Instant)|java\\.lang\\.Thread")
        .because("the same formula gives the same figures at any time, on any machine")
        .check(CLASSES);
  }

  private static Stream<JavaClass> rules() {
    return CLASSES.stream().filter(one -> one.isAssignableTo(Rule.class) && !one.isInterface());
  }

  /** {@code MissingUnit} to {@code missing-unit}. */
  private static String kebab(String name) {
    return name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  private static List<Path> folders() {
    return sources().stream().map(Path::getParent).distinct().toList();
  }

  private static List<Path> sources() {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file).replace("\r\n", "\n");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
