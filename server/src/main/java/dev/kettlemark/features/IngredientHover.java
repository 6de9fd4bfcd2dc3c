package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An ingredient: how much of it is here, on every basis, and what is known of it. */
final class IngredientHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed.named(Symbol.Kind.MATERIAL).map(name -> {
      Optional<Ingredient> ingredient = pointed
          .snapshot()
          .library()
          .find(Kind.MATERIAL, name.symbol().name())
          .flatMap(Entry::declaration)
          .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty());
      return pointed.text(
          text(pointed, name.symbol().name(), ingredient), name.occurrence().span());
    });
  }

  private static Markdown text(Pointed pointed, String name, Optional<Ingredient> ingredient) {
    Markdown markdown = new Markdown();
    Optional<ComputedFormula> formula = pointed.formula();
    Optional<AmountsHere> here = formula.map(computed -> AmountsHere.of(computed, name));
    if (ingredient.isEmpty()) {
      markdown.paragraph("**" + name + "** — nobody has described it");
      here.ifPresent(amounts -> amounts.addTo(markdown));
      return markdown;
    }
    Ingredient known = ingredient.get();
    markdown.paragraph("**" + Markdown.plain(known.shownName()) + "** — " + Markdown.code(name)
        + (known.roles().isEmpty() ? "" : ", for " + String.join(", ", known.roles())));
    here.ifPresent(amounts -> amounts.addTo(markdown));
    markdown.paragraph(doses(known, here));
    markdown.paragraph(Constituents.all(known.composition())
        + known
            .density()
            .map(d -> " Density " + Display.trimmed(d.gramsPerMillilitre(), 3) + " g/mL.")
            .orElse("")
        + known
            .saturates()
            .map(share -> " Saturates: " + Display.percent(share) + ", part of the fat.")
            .orElse(""));
    markdown.paragraph(allergens(known.facts()));
    markdown.paragraph(CautionText.sentences(known.facts().wordsOf("caution")));
    markdown.paragraph(WhereUsed.sentence(pointed.snapshot(), name));
    return markdown;
  }

  private static String doses(Ingredient ingredient, Optional<AmountsHere> here) {
    return here.map(amounts -> String.join("  \n", amounts.doses(ingredient)))
        .orElseGet(() -> String.join("  \n", AmountsHere.usual(ingredient)));
  }

  /** Silence of the pantry is no promise, and the text says so. */
  private static String allergens(Facts facts) {
    List<String> told = new ArrayList<>();
    String allergens = words(facts, "allergen");
    told.add(
        allergens.isEmpty()
            ? "No allergen is declared; the supplier's specification decides."
            : "**Allergens: " + allergens + ".**");
    add(told, "May contain ", words(facts, "may-contain"));
    add(told, "Gluten: ", words(facts, "gluten"));
    add(told, "Suits ", words(facts, "suits"));
    return String.join(" ", told);
  }

  private static void add(List<String> told, String lead, String words) {
    if (!words.isEmpty()) {
      told.add(lead + words + ".");
    }
  }

  private static String words(Facts facts, String fact) {
    return String.join(", ", facts.wordsOf(fact).stream().map(Located::value).toList());
  }
}
