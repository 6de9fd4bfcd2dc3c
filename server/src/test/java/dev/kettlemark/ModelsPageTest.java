package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.science.Check;
import dev.kettlemark.science.Check.Provenance;
import dev.kettlemark.science.CheckTable;
import dev.kettlemark.science.Contradiction;
import dev.kettlemark.science.Contradictions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of the models shows every figure they are held against, as {@code kettlemark verify-models} prints them. */
class ModelsPageTest {

  private static final Path PAGE = Path.of("MODELS.md");

  private static final Pattern LIST =
      Pattern.compile("(?s)(<!-- generated: ([a-z-]+) -->\\n)(.*?)(<!-- end -->)");

  private static final Pattern PICTURE = Pattern.compile("\\]\\((pictures/[^)]*)\\)");

  private static final Map<String, Supplier<String>> LISTS = new TreeMap<>(Map.of(
      "counts",
      ModelsPageTest::counts,
      "published",
      () -> table(Check::isPublished),
      "contradictions",
      ModelsPageTest::contradictions,
      "recomputed",
      () -> table(check -> !check.isPublished())));

  @Test
  void showsTheFiguresOfToday() {
    List<String> written = new ArrayList<>();
    String fresh = LIST.matcher(page()).replaceAll(list -> {
      written.add(list.group(2));
      String text = LISTS.getOrDefault(list.group(2), () -> "no such list\n").get();
      return Matcher.quoteReplacement(list.group(1) + "\n" + text + "\n" + list.group(4));
    });
    assertEquals(List.copyOf(LISTS.keySet()), written.stream().sorted().toList());
    Pinned.file(PAGE).check(fresh, getClass());
  }

  @Test
  void showsEveryPicture() {
    List<String> shown =
        PICTURE.matcher(page()).results().map(found -> found.group(1)).sorted().toList();
    try (Stream<Path> files = Files.list(Path.of("pictures"))) {
      assertEquals(
          files.map(file -> file.toString().replace('\\', '/')).sorted().toList(), shown);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Each model of the tables has its place in the text. */
  @Test
  void explainsEveryModel() {
    String text = page().substring(0, page().indexOf("## What is in print"));
    List<String> missing = CheckTable.all().stream()
        .map(Check::model)
        .distinct()
        .filter(model -> !text.contains("`" + model + "`"))
        .toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void neverUsesASourceWithoutSayingHowItGotHere() {
    assertTrue(CheckTable.all().stream()
        .map(Check::source)
        .noneMatch(source -> source.contains("from memory")));
  }

  private static String counts() {
    Map<Provenance, Long> counts = CheckTable.all().stream()
        .collect(Collectors.groupingBy(Check::provenance, TreeMap::new, Collectors.counting()));
    return """
        | Figures | How they got here |
        |---|---|
        | %d | read in a published copy of the source |
        | %d | from memory of the source, not read there again |
        | %d | recomputed apart from this program from the stated equations |
        | %d | published, and not followed |
        """.formatted(
            counts.getOrDefault(Provenance.READ, 0L),
            counts.getOrDefault(Provenance.FROM_MEMORY, 0L),
            counts.getOrDefault(Provenance.RECOMPUTED, 0L),
            Contradictions.all().size());
  }

  private static String table(Predicate<Check> wanted) {
    StringBuilder text =
        new StringBuilder("| Model | Case | Published | Difference | Tolerance | Source |\n");
    text.append("|---|---|--:|--:|--:|---|\n");
    CheckTable.all().stream()
        .filter(wanted)
        .forEach(check -> text.append("| %s | %s | %s | %s | %s | %s |\n"
            .formatted(
                check.model(),
                check.subject(),
                withUnit(Display.significant(check.published(), 7), check),
                difference(check),
                Display.significant(check.tolerance(), 2),
                source(check))));
    return text.toString();
  }

  private static String contradictions() {
    StringBuilder text =
        new StringBuilder("| Model | Case | Published | Here | Source | Not followed, because |\n");
    text.append("|---|---|--:|--:|---|---|\n");
    for (Contradiction one : Contradictions.all()) {
      Check check = one.check();
      text.append("| %s | %s | %s | %s | %s | %s |\n"
          .formatted(
              check.model(),
              check.subject(),
              withUnit(Display.significant(check.published(), 5), check),
              Display.significant(check.computed(), 4),
              source(check),
              one.because()));
    }
    return text.toString();
  }

  /** A difference far below the tolerance may be noise of the last bit, which differs between machines. */
  private static String difference(Check check) {
    return Math.abs(check.difference()) < check.tolerance() / 100
        ? "0"
        : Display.significant(check.difference(), 2);
  }

  private static String withUnit(String figure, Check check) {
    return check.unit().isEmpty() ? figure : figure + " " + check.unit();
  }

  private static String source(Check check) {
    return check.source() + (check.provenance() == Provenance.FROM_MEMORY ? ", from memory" : "");
  }

  private static String page() {
    try {
      return Files.readString(PAGE).replace("\r\n", "\n");
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
