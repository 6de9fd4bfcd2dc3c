package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.cards.ComparisonPage;
import dev.kettlemark.cards.ProductSide;
import dev.kettlemark.cards.ProductsPage;
import dev.kettlemark.cards.ProductsSideBySide;
import dev.kettlemark.cards.Side;
import dev.kettlemark.cards.SideBySide;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.ReportPages;
import dev.kettlemark.features.WhatIf;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.sheets.LeafMarkdown;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * Commands that answer with a page of Markdown, the same that the terminal tells.
 *
 * <p>Each takes {@code uri}, a document of the library that is asked about, and what stands beside it.
 */
enum ReportCommands {

  /** {@code formula}: a formula as a table. */
  SHOW("kettlemark.show", ReportCommands::show),

  /** {@code name}: where an ingredient, formula or stage is used, and how much of it. */
  USED("kettlemark.used", (scene, argument) -> used(scene, Commands.text(argument, "name"))),

  /** {@code formula}, which may be left out: trials beside what was predicted for them. */
  TRIALS(
      "kettlemark.trials",
      (scene, argument) ->
          ReportPages.trials(scene.snapshot(), Commands.optionalText(argument, "formula"))),

  /** {@code formula}, and {@code market} if not those of the house: the draft of a label. */
  LABEL("kettlemark.label", ReportCommands::label),

  /** {@code formula}, and {@code value} if not all: how its figures came about. */
  EXPLAIN("kettlemark.explain", ReportCommands::explain),

  /** {@code formula}, {@code replace} and {@code by}: what another material would change. */
  WHAT_IF("kettlemark.whatIf", ReportCommands::whatIf),

  /**
   * {@code formula}, {@code with} if not its parent, and {@code language} if not en-GB: two formulas, or two
   * products, side by side.
   */
  COMPARE("kettlemark.compare", ReportCommands::compare);

  private final String command;

  @SuppressWarnings(
      "ImmutableEnumChecker") // The functions hold nothing, but their type cannot say so.
  private final BiFunction<Scene, JsonObject, String> page;

  ReportCommands(String command, BiFunction<Scene, JsonObject, String> page) {
    this.command = command;
    this.page = page;
  }

  static List<String> names() {
    return Stream.of(values()).map(ReportCommands::command).toList();
  }

  static Optional<ReportCommands> of(String command) {
    return Stream.of(values()).filter(each -> each.command.equals(command)).findFirst();
  }

  String command() {
    return command;
  }

  String page(Scene scene, JsonObject argument) {
    return page.apply(scene, argument);
  }

  private static String show(Scene scene, JsonObject argument) {
    return FormulaTable.of(formula(scene, argument)).markdown();
  }

  private static String used(Scene scene, String name) {
    boolean known = !scene.snapshot().library().all(Kind.MATERIAL, name).isEmpty();
    String page = ReportPages.used(scene.snapshot(), name);
    if (!known && page.contains("nothing of this library uses it")) {
      throw ScaleCommand.refused(
          "no ingredient, formula or stage that is used is named `" + name + "`");
    }
    return page;
  }

  private static String label(Scene scene, JsonObject argument) {
    String name = Commands.text(argument, "formula");
    Entry entry = Stream.of(Kind.MATERIAL, Kind.PRODUCT)
        .flatMap(kind -> scene.snapshot().library().find(kind, name).stream())
        .findFirst()
        .orElseThrow(
            () -> ScaleCommand.refused("the library has no formula or product `" + name + "`"));
    return ReportPages.label(scene.snapshot(), entry, Commands.optionalText(argument, "market"))
        .orElseThrow(() -> ScaleCommand.refused("there is no label of `" + name
            + "`: it cannot be worked out, or there is no such market"));
  }

  /** A rule is explained by its own page, so that one command answers for both. */
  private static String explain(Scene scene, JsonObject argument) {
    Optional<String> rule = Commands.optionalText(argument, "rule").flatMap(RulePages::page);
    if (rule.isPresent()) {
      return rule.get();
    }
    Optional<String> value = Commands.optionalText(argument, "value");
    return ReportPages.explained(formula(scene, argument), value)
        .orElseThrow(() -> ScaleCommand.refused("`" + Commands.text(argument, "formula")
            + "` has no stage or figure `" + value.orElse("") + "`"));
  }

  private static String whatIf(Scene scene, JsonObject argument) {
    return WhatIf.of(
            scene.snapshot(),
            Commands.text(argument, "formula"),
            Commands.text(argument, "replace"),
            Commands.text(argument, "by"))
        .fold(WhatIf::markdown, unknown -> {
          throw ScaleCommand.refused(unknown.because());
        });
  }

  private static String compare(Scene scene, JsonObject argument) {
    String name = Commands.text(argument, "formula");
    Optional<ProductSide> product = product(scene, name);
    if (product.isPresent()) {
      return products(scene, argument, product.get());
    }
    Side side = side(scene, name);
    Optional<String> with = Commands.optionalText(argument, "with");
    Side other = side(
        scene,
        with.or(() -> parent(side))
            .orElseThrow(() -> ScaleCommand.refused(
                "`" + name + "` is no variant; name the formula to hold it against")));
    String language = Commands.optionalText(argument, "language").orElse("en-GB");
    return ComparisonPage.of(SideBySide.of(other, side), Locale.forLanguageTag(language))
        .map(LeafMarkdown::of)
        .orElseThrow(() -> ScaleCommand.refused("there are no words in `" + language + "`"));
  }

  private static Optional<ProductSide> product(Scene scene, String name) {
    return Side.of(scene.snapshot(), name, Optional.empty(), Optional.empty()).isKnown()
        ? Optional.empty()
        : ProductSide.of(scene.snapshot(), name, Optional.empty()).toOptional();
  }

  private static String products(Scene scene, JsonObject argument, ProductSide first) {
    String with = Commands.optionalText(argument, "with")
        .orElseThrow(() ->
            ScaleCommand.refused("`" + first.name() + "` is a product; the command needs `with`"));
    ProductSide second = product(scene, with)
        .orElseThrow(() -> ScaleCommand.refused(
            "`" + with + "` is no product, and a product is compared with a product only"));
    String language = Commands.optionalText(argument, "language").orElse("en-GB");
    return ProductsPage.of(ProductsSideBySide.of(first, second), Locale.forLanguageTag(language))
        .map(LeafMarkdown::of)
        .orElseThrow(() -> ScaleCommand.refused("there are no words in `" + language + "`"));
  }

  private static Side side(Scene scene, String name) {
    return Side.of(scene.snapshot(), name, Optional.empty(), Optional.empty())
        .fold(known -> known, unknown -> {
          throw ScaleCommand.refused(unknown.because());
        });
  }

  private static Optional<String> parent(Side side) {
    return side.entry()
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .map(Located::value);
  }

  private static ComputedFormula formula(Scene scene, JsonObject argument) {
    String name = Commands.text(argument, "formula");
    return scene
        .snapshot()
        .library()
        .find(Kind.MATERIAL, name)
        .flatMap(entry -> Formulas.computed(scene.snapshot(), entry))
        .orElseThrow(() -> ScaleCommand.refused("the library has no formula `" + name + "`"));
  }
}
