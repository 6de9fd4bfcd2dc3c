package dev.kettlemark.sheets;

import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.MarketAllergens;
import dev.kettlemark.labelling.MarketAllergens.Listed;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What it holds that some must not eat, and what may be said of it. */
final class AllergensPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.ALLERGENS;
  }

  @Override
  public List<Block> of(Shown shown) {
    List<Block> blocks = new ArrayList<>();
    shown.label().ifPresent(label -> {
      for (Market market : markets(shown, label)) {
        MarketAllergens allergens = MarketAllergens.of(label.allergens(), market);
        blocks.add(
            shown.reader() == SheetReader.PRODUCTION
                ? matrix(shown, allergens, market)
                : terms(allergens, market));
        if (shown.reader() == SheetReader.PRODUCTION && !allergens.notes().isEmpty()) {
          blocks.add(
              new Block.Points(allergens.remarks().stream().map(Phrase::told).toList()));
        }
      }
      silent(shown, label).ifPresent(blocks::add);
      if (shown.reader() != SheetReader.BENCH) {
        blocks.add(claims(shown, label));
      }
    });
    return blocks;
  }

  /** The line sells where the house sells; a reader at home buys where they live. */
  static List<Market> markets(Shown shown, Label label) {
    if (shown.reader() == SheetReader.PRODUCTION) {
      return label.markets();
    }
    return List.of(shown.request().locale().getCountry().equals("US") ? Market.US : Market.EU);
  }

  private static Block terms(MarketAllergens allergens, Market market) {
    List<Block.Term> terms = new ArrayList<>();
    terms.add(term("allergens.contains", allergens.contained(), market));
    if (!allergens.mayContain().isEmpty()) {
      terms.add(term("allergens.may", allergens.mayContain(), market));
    }
    if (!allergens.onSite().isEmpty()) {
      terms.add(term("allergens.site", allergens.onSite(), market));
    }
    return new Block.Terms(terms);
  }

  private static Block.Term term(String key, List<Listed> listed, Market market) {
    Phrase told = listed.isEmpty()
        ? Phrase.words("allergens.none")
        : new Phrase.Listing(listed.stream()
            .flatMap(one -> one.words().stream())
            .distinct()
            .map(AllergensPart::word)
            .toList());
    return new Block.Term(Phrase.words(key, Phrase.given(market.name())), told);
  }

  private static Phrase word(String word) {
    return new Phrase.Words("allergen." + word, List.of());
  }

  private static Block matrix(Shown shown, MarketAllergens allergens, Market market) {
    Set<String> words = new LinkedHashSet<>();
    for (List<Listed> listed :
        List.of(allergens.contained(), allergens.mayContain(), allergens.onSite())) {
      listed.forEach(one -> words.addAll(one.words()));
    }
    List<Row> rows = words.stream()
        .map(word -> Row.of(
            word(word),
            mark(allergens.contained(), word),
            mark(allergens.mayContain(), word),
            mark(allergens.onSite(), word),
            sources(shown, allergens, word)))
        .toList();
    return new Block.Grid(
        Phrase.words("allergens.caption", Phrase.given(market.name())),
        List.of(
            Column.text("column.allergen"),
            Column.text("column.contains"),
            Column.text("column.may"),
            Column.text("column.site"),
            Column.text("column.from")),
        rows);
  }

  private static Phrase mark(List<Listed> listed, String word) {
    return listed.stream().anyMatch(one -> one.words().contains(word))
        ? Phrase.words("yes")
        : Phrase.given("–");
  }

  private static Phrase sources(Shown shown, MarketAllergens allergens, String word) {
    List<Phrase> names = allergens.contained().stream()
        .filter(one -> one.words().contains(word))
        .flatMap(one -> one.sources().stream())
        .map(use -> title(shown, use))
        .toList();
    return names.isEmpty() ? Phrase.nothing() : new Phrase.Listing(names);
  }

  private static Phrase title(Shown shown, IngredientUse use) {
    return new Phrase.Titled(shown.titles().of(use.name()), false);
  }

  /** What nobody has said of an ingredient is not known to be absent. */
  private static Optional<Block> silent(Shown shown, Label label) {
    List<Phrase> names =
        label.allergens().silent().stream().map(use -> title(shown, use)).toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Block.Lines.of(Phrase.sentence("allergens.silent", new Phrase.Listing(names))));
  }

  private static Block claims(Shown shown, Label label) {
    List<Block.Term> terms = new ArrayList<>();
    for (Diet.Answer answer : label.diets()) {
      terms.add(new Block.Term(
          new Phrase.Words("claim." + answer.diet().word(), List.of()),
          Phrase.words("standing." + word(answer.standing()))));
    }
    List<Market> markets = markets(shown, label);
    for (ClaimAnswer claim : label.claims()) {
      boolean isDiet =
          label.diets().stream().anyMatch(diet -> diet.diet().word().equals(claim.claim()));
      if (markets.contains(claim.market()) && (!isDiet || !claim.grounds().isEmpty())) {
        List<Phrase> told = new ArrayList<>();
        told.add(Phrase.words("standing." + word(claim.standing())));
        claim
            .grounds()
            .forEach(ground -> told.add(Phrase.words("claim.ground", Phrase.told(ground.what()))));
        terms.add(new Block.Term(
            Phrase.words(
                "claim.in",
                new Phrase.Words("claim." + claim.claim(), List.of()),
                Phrase.given(claim.market().name())),
            new Phrase.Together(told)));
      }
    }
    return new Block.Terms(terms);
  }

  private static String word(Enum<?> standing) {
    return standing.name().toLowerCase(Locale.ROOT);
  }
}
