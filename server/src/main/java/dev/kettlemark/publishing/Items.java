package dev.kettlemark.publishing;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Standing;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.SheetUnit;
import dev.kettlemark.sheets.Title;
import dev.kettlemark.sheets.Titles;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds what a library has to publish, and what the list tells of it. */
final class Items {

  private final Snapshot snapshot;

  /** Turns phrases into the language of the list. */
  private final Leaf speaker;

  Items(Snapshot snapshot, Leaf speaker) {
    this.snapshot = snapshot;
    this.speaker = speaker;
  }

  /** Every formula, variant and product of the user, in order of file and place; of one name the first. */
  List<Item> all() {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .filter(entry -> sort(entry).isPresent() && isMeant(entry))
        .toList()
        .parallelStream()
        .map(entry -> item(entry, sort(entry).orElseThrow()))
        .toList();
  }

  private static Optional<Item.Sort> sort(Entry entry) {
    Optional<Declaration> declaration = entry.declaration();
    if (declaration.isEmpty()) {
      return Optional.empty();
    }
    if (declaration.get() instanceof Formula) {
      return Optional.of(Item.Sort.FORMULA);
    }
    if (declaration.get() instanceof Variant) {
      return Optional.of(Item.Sort.VARIANT);
    }
    return declaration.get() instanceof Product ? Optional.of(Item.Sort.PRODUCT) : Optional.empty();
  }

  /** Whether its name means this section, and no other of the same name. */
  private boolean isMeant(Entry entry) {
    String name = name(entry);
    return snapshot.library().find(Kind.MATERIAL, name).filter(entry::equals).isPresent()
        || snapshot.library().find(Kind.PRODUCT, name).filter(entry::equals).isPresent();
  }

  private static String name(Entry entry) {
    return entry.declaration().orElseThrow().name().value();
  }

  private Item item(Entry entry, Item.Sort sort) {
    Optional<ComputedFormula> formula = Formulas.computed(snapshot, entry);
    Optional<ComputedProduct> product = Products.computed(snapshot, entry);
    Optional<Label> label = Labels.label(snapshot, entry);
    Optional<Facts> facts =
        formula.map(f -> f.formula().facts()).or(() -> entry.declaration().flatMap(Facts::of));
    Optional<FormulaVersion> version = facts.flatMap(FormulaVersion::of);
    String name = name(entry);
    String ending = sort == Item.Sort.PRODUCT
            && snapshot.library().find(Kind.MATERIAL, name).isPresent()
        ? " product"
        : "";
    return new Item(
        entry,
        sort,
        FileNames.of(name + ending),
        errors(entry),
        new ItemRow(
            name,
            sort.name().toLowerCase(Locale.ROOT),
            title(entry, formula, label),
            word(facts, "code"),
            version
                .flatMap(FormulaVersion::number)
                .map(number -> Display.trimmed(number.doubleValue(), 3))
                .orElse(""),
            version.flatMap(FormulaVersion::since).map(day -> day.toString()).orElse(""),
            word(facts, "status"),
            formula.map(this::yielded).or(() -> product.flatMap(this::pieces)).orElse(""),
            label.map(this::allergens).orElse(""),
            label.map(this::claims).orElse("")));
  }

  /** In the language of the list, where the source has a name in it. */
  private String title(Entry entry, Optional<ComputedFormula> formula, Optional<Label> label) {
    Optional<House> house =
        formula.flatMap(f -> f.kitchen().house()).or(() -> label.flatMap(Label::house));
    return called(Titles.of(snapshot, house).of(entry.declaration().orElseThrow()));
  }

  private String called(Title title) {
    return speaker.text(new Phrase.Titled(title, false));
  }

  private static String word(Optional<Facts> facts, String fact) {
    return facts.flatMap(f -> f.wordOf(fact)).map(Located::value).orElse("");
  }

  /** What is held against a section, and against the formulas that a product is made of. */
  private List<String> errors(Entry entry) {
    List<String> errors = new ArrayList<>();
    Stream<Entry> parts = entry
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty())
        .stream()
        .flatMap(product -> product.parts().stream())
        .flatMap(part -> part.material().stream())
        .flatMap(name -> snapshot.library().find(Kind.MATERIAL, name.value()).stream())
        .filter(part -> sort(part).isPresent());
    Stream.concat(Stream.of(entry), parts)
        .flatMap(each -> Rules.of(snapshot, each).stream())
        .filter(finding -> finding.severity() == Severity.ERROR)
        .forEach(finding -> errors.add(finding.rule().id() + ": " + finding.message()));
    return errors;
  }

  private String yielded(ComputedFormula formula) {
    double charge = formula.process().charge().mass().grams();
    return formula
        .process()
        .cooked()
        .map(cooked -> {
          double best = cooked.mass().grams();
          double slack = cooked.slack().grams();
          double factor = 100 / charge;
          return speaker.text(Phrase.value(new SheetFigure(
              "yield",
              SheetUnit.PERCENT,
              formula
                  .process()
                  .yieldShare()
                  .map(share ->
                      new Reach((best - slack) * factor, best * factor, (best + slack) * factor)),
              Spread.BAND,
              1,
              Basis.MODEL)));
        })
        .orElse(speaker.text(Phrase.words("figure.unknown")));
  }

  private Optional<String> pieces(ComputedProduct product) {
    return product
        .product()
        .pieces()
        .map(count -> speaker.text(Phrase.words(
            "yield.pieces.of",
            Phrase.value(
                SheetFigure.exact("pieces", SheetUnit.PIECE, count.value().doubleValue(), 0)),
            Phrase.value(new SheetFigure(
                "piece",
                SheetUnit.GRAM,
                product.pieceGrams().map(Mass::grams).map(Reach::of),
                Spread.NONE,
                1,
                Basis.EXACT)))));
  }

  private String allergens(Label label) {
    List<Phrase> told = new ArrayList<>();
    label
        .allergens()
        .contained()
        .keySet()
        .forEach(word -> told.add(new Phrase.Words("allergen." + word, List.of())));
    Titles titles = Titles.of(snapshot, label.house());
    List<Phrase> silent = label.allergens().silent().stream()
        .<Phrase>map(use -> new Phrase.Titled(titles.of(use.name()), false))
        .toList();
    if (!silent.isEmpty()) {
      told.add(Phrase.words("site.silent", new Phrase.Listing(silent)));
    }
    return speaker.text(
        told.isEmpty() ? Phrase.words("site.none-known") : new Phrase.Listing(told));
  }

  private String claims(Label label) {
    Set<String> words = new LinkedHashSet<>();
    label.diets().stream()
        .filter(diet -> diet.standing() == Standing.HOLDS)
        .map(Diet.Answer::diet)
        .forEach(diet -> words.add(diet.word()));
    for (ClaimAnswer claim : label.claims()) {
      boolean holds = label.claims().stream()
          .filter(other -> other.claim().equals(claim.claim()))
          .allMatch(other -> other.standing() == Standing.HOLDS);
      if (holds) {
        words.add(claim.claim());
      } else {
        words.remove(claim.claim());
      }
    }
    return speaker.text(new Phrase.Listing(words.stream()
        .<Phrase>map(word -> new Phrase.Words("claim." + word, List.of()))
        .toList()));
  }

  /** Everything that a reader may look for besides what the list shows. */
  List<String> ingredients(Item item) {
    return Labels.label(snapshot, item.entry()).stream()
        .flatMap(label -> {
          Titles titles = Titles.of(snapshot, label.house());
          return label.makeup().uses().stream()
              .flatMap(use -> Stream.of(use.label(), called(titles.of(use.name()))));
        })
        .distinct()
        .toList();
  }
}
