package dev.kettlemark.checks;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Variant;
import dev.kettlemark.reading.Suggestions;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports an amount of something that is described nowhere.
 *
 * <p>Neither the library nor the pantry knows its composition, so water, sugars and allergens stay
 * unknown for all that it goes into.
 */
public final class UnknownIngredient implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("unknown-ingredient", "an ingredient is described nowhere");

  /** So many names leave room for describing it among the fixes. */
  private static final int MOST_NAMES = 3;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.declaration().stream()
        .flatMap(UnknownIngredient::materials)
        .filter(name -> subject.material(name.value()).isEmpty())
        .map(name -> finding(subject, name))
        .toList();
  }

  /** What a section uses as a material, as written in its own text. */
  private static Stream<Located<String>> materials(Declaration declaration) {
    if (declaration instanceof Product product) {
      return product.parts().stream().flatMap(part -> part.material().stream());
    }
    Stream<Located<String>> used = Mentions.used(declaration).stream();
    return declaration instanceof Variant variant
        ? used.filter(name -> variant.parent().filter(name::equals).isEmpty())
        : used;
  }

  private static Finding finding(Subject subject, Located<String> name) {
    Set<String> known = others(subject);
    List<Fix> fixes = new ArrayList<>();
    Suggestions.near(name.value(), known).stream()
        .limit(MOST_NAMES)
        .forEach(near ->
            fixes.add(RenamedHere.fix("Write `" + near + "`", subject, name.value(), near)));
    fixes.add(describe(subject, name.value()));
    return INFO.at(
            name.span(),
            "`%s` is described nowhere%s",
            name.value(),
            Suggestions.sentence(name.value(), known))
        .because("its water, sugars and allergens are unknown")
        .withFixes(fixes);
  }

  /** Every name but the section's own, for nothing is made of itself. */
  private static Set<String> others(Subject subject) {
    Set<String> names = new LinkedHashSet<>(subject.materialNames());
    subject.declaration().map(d -> d.name().value()).ifPresent(names::remove);
    return names;
  }

  /** A section without a composition: what is not known must not look known. */
  private static Fix describe(Subject subject, String name) {
    String section = "ingredient " + name
        + "\n  note      \"Role, composition, source and allergens are still to be stated.\"";
    return new Fix(
        "Describe `" + name + "`", List.of(WrittenLines.of(subject).behindSection(section)));
  }
}
