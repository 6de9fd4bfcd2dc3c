package dev.kettlemark.sheets;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.sheets.SheetContent.Head;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A sheet as linked data of the open vocabulary schema.org, for whatever reads pages by program.
 *
 * <p>Property names are those of the types {@code Recipe}, {@code HowToSection}, {@code HowToStep} and {@code
 * Organization}, from memory.
 */
final class RecipeData {

  /** Escapes {@code <}, {@code >} and {@code &}, so that the data cannot end its element. */
  private static final Gson GSON = new GsonBuilder().setPrettyPrinting().create();

  private RecipeData() {}

  static Element element(SheetContent sheet) {
    return Element.of("script")
        .with("type", "application/ld+json")
        .data("\n" + GSON.toJson(json(sheet)) + "\n");
  }

  static JsonObject json(SheetContent sheet) {
    Head head = sheet.head();
    JsonObject recipe = new JsonObject();
    recipe.addProperty("@context", "https://schema.org");
    recipe.addProperty("@type", "Recipe");
    recipe.addProperty("name", head.title());
    recipe.addProperty("inLanguage", head.request().locale().toLanguageTag());
    head.code().ifPresent(code -> recipe.addProperty("identifier", code));
    head.version().ifPresent(version -> recipe.addProperty("version", version));
    head.since().ifPresent(day -> recipe.addProperty("datePublished", day.toString()));
    head.house().ifPresent(house -> {
      JsonObject author = new JsonObject();
      author.addProperty("@type", "Organization");
      author.addProperty("name", house);
      recipe.add("author", author);
    });
    head.author().ifPresent(author -> recipe.addProperty("creditText", author));
    text(sheet, Part.Kind.ABOUT).ifPresent(about -> recipe.addProperty("description", about));
    amount(sheet).ifPresent(made -> recipe.addProperty("recipeYield", made));
    recipe.addProperty("recipeCategory", sheet.speech().text(Phrase.words("category")));
    recipe.add("recipeIngredient", ingredients(sheet));
    recipe.add("tool", points(sheet, Part.Kind.EQUIPMENT));
    recipe.add("recipeInstructions", instructions(sheet));
    return recipe;
  }

  private static Optional<String> text(SheetContent sheet, Part.Kind kind) {
    return sheet.part(kind).map(part -> {
      StringBuilder text = new StringBuilder();
      part.blocks().stream()
          .flatMap(
              block -> block instanceof Block.Lines lines ? lines.lines().stream() : Stream.empty())
          .forEach(line ->
              text.append(text.isEmpty() ? "" : " ").append(sheet.speech().text(line)));
      return text.toString();
    });
  }

  private static Optional<String> amount(SheetContent sheet) {
    return sheet.part(Part.Kind.YIELD).stream()
        .flatMap(part -> part.blocks().stream())
        .flatMap(
            block -> block instanceof Block.Terms terms ? terms.terms().stream() : Stream.empty())
        .findFirst()
        .map(term -> sheet.speech().text(term.told()));
  }

  /** The rows of the formula's tables: weight, then name. */
  private static JsonArray ingredients(SheetContent sheet) {
    JsonArray all = new JsonArray();
    sheet.part(Part.Kind.FORMULA).stream()
        .flatMap(part -> part.blocks().stream())
        .flatMap(block -> block instanceof Block.Grid grid ? grid.rows().stream() : Stream.empty())
        .filter(row -> row.rank() == Block.Row.Rank.PLAIN)
        .forEach(row -> row.cells().stream()
            .flatMap(Phrase::figures)
            .filter(figure -> figure.id().endsWith(".weight"))
            .findFirst()
            .ifPresent(weight -> all.add(sheet.speech().text(weight) + " "
                + sheet.speech().text(row.cells().get(0)))));
    return all;
  }

  private static JsonArray points(SheetContent sheet, Part.Kind kind) {
    JsonArray all = new JsonArray();
    sheet.part(kind).stream()
        .flatMap(part -> part.blocks().stream())
        .flatMap(block ->
            block instanceof Block.Points points ? points.points().stream() : Stream.empty())
        .forEach(point -> all.add(sheet.speech().text(point)));
    return all;
  }

  private static JsonArray instructions(SheetContent sheet) {
    JsonArray sections = new JsonArray();
    Optional<String> name = Optional.empty();
    for (Block block : sheet.part(Part.Kind.METHOD).map(Part::blocks).orElse(List.of())) {
      if (block instanceof Block.Heading heading) {
        name = Optional.of(sheet.speech().text(heading.phrase()));
      } else if (block instanceof Block.Steps steps) {
        sections.add(section(sheet, name.orElse(""), steps));
      }
    }
    return sections;
  }

  private static JsonObject section(SheetContent sheet, String name, Block.Steps steps) {
    JsonObject section = new JsonObject();
    section.addProperty("@type", "HowToSection");
    section.addProperty("name", name);
    JsonArray all = new JsonArray();
    for (Block.Step step : steps.steps()) {
      JsonObject one = new JsonObject();
      one.addProperty("@type", "HowToStep");
      one.addProperty("text", sheet.speech().text(step.text()));
      all.add(one);
    }
    section.add("itemListElement", all);
    return section;
  }
}
