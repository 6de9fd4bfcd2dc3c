package dev.kettlemark.checks;

import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reports the word pasteurised on what is raw.
 *
 * <p>Who must not eat raw egg trusts the word.
 */
public final class PasteurisedSaidOfRaw implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
          "pasteurised-said-of-raw", "something raw is called pasteurised")
      .forSafety();

  private static final Pattern PASTEURISED =
      Pattern.compile("(?i)(?<!un)(?<!not )(?<!non-)pasteuri[sz]ed");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Declaration> declaration = subject.declaration();
    if (declaration.isPresent() && declaration.get() instanceof Ingredient ingredient) {
      return ingredient.hasTrait("raw-animal")
          ? said(subject, ingredient.title(), ingredient.facts(), List.of("label", "names", "note"))
              .map(span -> finding(subject, span, ingredient.name().value()))
              .toList()
          : List.of();
    }
    return subject.label().map(label -> check(subject, label)).orElse(List.of());
  }

  /** Where another egg in it is pasteurised, the word may speak of that one. */
  private static List<Finding> check(Subject subject, Label label) {
    List<IngredientUse> raw = label.makeup().uses().stream()
        .filter(use -> use.says("traits", "raw-animal"))
        .toList();
    boolean another =
        label.makeup().uses().stream().anyMatch(use -> use.says("traits", "pasteurised"));
    if (raw.isEmpty() || another) {
      return List.of();
    }
    Optional<String> title = subject.declaration().flatMap(Declaration::title);
    return said(subject, title, label.facts(), List.of("note"))
        .map(span -> finding(subject, span, raw.get(0).name()))
        .toList();
  }

  private static Stream<Span> said(
      Subject subject, Optional<String> title, Facts facts, List<String> words) {
    Span heading = subject.section().lines().get(0).span();
    Stream<Span> inTitle = title.filter(PasteurisedSaidOfRaw::isSaid).map(said -> heading).stream();
    Stream<Span> inFacts = words.stream()
        .flatMap(facts::all)
        .flatMap(fact -> fact.text().stream())
        .filter(text -> isSaid(text.value()))
        .map(Located::span)
        .filter(subject::isWrittenHere);
    return Stream.concat(inTitle, inFacts);
  }

  private static boolean isSaid(String text) {
    return PASTEURISED.matcher(text).find();
  }

  private static Finding finding(Subject subject, Span span, String raw) {
    return INFO.at(span, "`%s` is raw, and here it is called pasteurised", raw)
        .because("who must not eat raw egg trusts the word")
        .withFix(new Fix("Write `raw`", raw(subject, span)));
  }

  /** The word, wherever it stands in the place that was found. */
  private static List<TextEdit> raw(Subject subject, Span span) {
    List<TextEdit> edits = new ArrayList<>();
    Matcher word = PASTEURISED.matcher(subject.text()).region(span.start(), span.end());
    while (word.find()) {
      boolean isCapital = Character.isUpperCase(subject.text().charAt(word.start()));
      edits.add(new TextEdit(new Span(word.start(), word.end()), isCapital ? "Raw" : "raw"));
    }
    return edits;
  }
}
