package dev.kettlemark.cards;

import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Value;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Basis;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetFigure.Spread;
import dev.kettlemark.sheets.SheetUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The answer to one question on half a page, for the wall above the bench. */
public final class AnswerCard {

  private static final Pattern DECIMALS = Pattern.compile("\\d\\.(\\d+)");

  /** From here on a tenth of a gram is more than anybody weighs. */
  private static final double KILOGRAM = 1000;

  /** What is cooked burns whoever touches it. */
  private static final Set<String> HOT = Set.of("cook", "altitude", "doctor", "sugar", "reach");

  private final Asked asked;

  private AnswerCard(Asked asked) {
    this.asked = asked;
  }

  /** The card in a language; empty where there are no words in it. */
  public static Optional<Leaf> of(Asked asked, Locale locale, LocalDate day) {
    AnswerCard card = new AnswerCard(asked);
    return Leaf.of(
        "answer-" + asked.kind(),
        locale,
        day,
        new Phrase.Words("answer.title." + asked.kind(), asked.about()),
        Phrase.words("answer.kind"),
        List.of(),
        List.of(
            card.line(),
            card.numbers(),
            card.method(),
            card.cautions(),
            card.unknown(),
            card.source()),
        Leaf.Size.HALF);
  }

  private Answer answer() {
    return asked.answer();
  }

  private Leaf.Section line() {
    List<Phrase> places = new ArrayList<>();
    answer().values().stream().limit(2).forEach(value -> places.add(best(value)));
    places.addAll(asked.about());
    return section(
        "answer",
        Block.Lines.of(Phrase.sentence(new Phrase.Words("answer.line." + asked.kind(), places))));
  }

  private Leaf.Section numbers() {
    List<Row> rows = answer().values().stream()
        .map(value ->
            Row.of(new Phrase.Words("value." + value.word(), List.of()), best(value), band(value)))
        .toList();
    return section(
        "numbers",
        new Block.Grid(
            Phrase.words("answer.numbers.caption"),
            List.of(
                Column.text("column.figure"),
                Column.figure("column.value"),
                Column.figure("column.band")),
            rows));
  }

  private static Phrase best(Value value) {
    return Phrase.value(figure(value, Spread.NONE));
  }

  private static Phrase band(Value value) {
    return value.low() < value.high()
        ? Phrase.value(figure(value, Spread.RANGE))
        : Phrase.given("–");
  }

  /** As many decimals as the answer itself is shown with. */
  private static SheetFigure figure(Value value, Spread spread) {
    Matcher decimals = DECIMALS.matcher(value.shown());
    int digits = decimals.find() ? decimals.group(1).length() : 0;
    if (value.unit().equals("g")) {
      digits = value.figure() >= KILOGRAM ? 0 : value.figure() == 0 ? 1 : digits;
    }
    SheetUnit unit = Stream.of(SheetUnit.values())
        .filter(one -> one.symbol().equals(value.unit()))
        .findFirst()
        .orElse(SheetUnit.NUMBER);
    return new SheetFigure(
        value.word() + (spread == Spread.RANGE ? ".band" : ""),
        unit,
        Outcome.known(new Reach(value.low(), value.figure(), value.high())),
        spread,
        digits,
        Basis.MODEL);
  }

  /** What changes in the text, line for line, and what else is to be minded. */
  private Leaf.Section method() {
    List<Phrase> points = new ArrayList<>();
    asked
        .formula()
        .ifPresent(formula ->
            answer().changes().forEach(change -> points.add(ChangeWords.of(change, formula))));
    answer().remarks().forEach(note -> points.add(Phrase.sentence(Phrase.told(note))));
    return points.isEmpty() ? section("changes") : section("changes", new Block.Points(points));
  }

  private Leaf.Section cautions() {
    List<Phrase> points = new ArrayList<>();
    if (HOT.contains(asked.kind())) {
      points.add(Phrase.words("caution.hot-sugar"));
    }
    boolean isRaw =
        asked.comes().filter(ingredient -> ingredient.hasTrait("raw-animal")).isPresent();
    if (isRaw) {
      points.add(Phrase.words("caution.raw-egg"));
    }
    allergens(points);
    return section("minded", new Block.Points(points));
  }

  /** What nobody has said of a material is not known to be absent. */
  private void allergens(List<Phrase> points) {
    if (asked.comes().isEmpty()) {
      boolean isGelatine = asked.kind().equals("gelatine");
      points.add(Phrase.sentence("answer.allergens." + (isGelatine ? "gelatine" : "same")));
      return;
    }
    Set<String> before = asked.goes().map(AnswerCard::allergens).orElse(Set.of());
    Set<String> after = allergens(asked.comes().get());
    Set<String> come = new TreeSet<>(after);
    come.removeAll(before);
    Set<String> go = new TreeSet<>(before);
    go.removeAll(after);
    if (!come.isEmpty()) {
      points.add(Phrase.sentence("answer.allergens.come", words(come)));
    }
    if (!go.isEmpty()) {
      points.add(Phrase.sentence("answer.allergens.go", words(go)));
    }
    boolean isSilent = after.isEmpty() && !isDescribed(asked.comes().get());
    if (isSilent) {
      points.add(
          Phrase.sentence("allergens.silent", Phrase.given(asked.comes().get().shownName())));
    } else if (come.isEmpty() && go.isEmpty()) {
      points.add(Phrase.sentence("answer.allergens.alike"));
    }
  }

  private static Set<String> allergens(Ingredient ingredient) {
    Set<String> words = new LinkedHashSet<>();
    ingredient.facts().wordsOf("allergen").stream().map(Located::value).forEach(words::add);
    return words;
  }

  private static boolean isDescribed(Ingredient ingredient) {
    return Stream.of("suits", "label", "gluten")
        .anyMatch(fact -> ingredient.facts().first(fact).isPresent());
  }

  private static Phrase words(Set<String> words) {
    return new Phrase.Listing(words.stream()
        .<Phrase>map(word -> new Phrase.Words("allergen." + word, List.of()))
        .toList());
  }

  private Leaf.Section unknown() {
    return section(
        "unknown",
        new Block.Points(List.of(
            Phrase.sentence("answer.unknown." + asked.kind()),
            Phrase.sentence("answer.unknown.trial"))));
  }

  /** Each equation once, with who published it. */
  private Leaf.Section source() {
    Set<Phrase> sources = new LinkedHashSet<>();
    sources(answer().derivation(), sources);
    return section("source", new Block.Points(List.copyOf(sources)));
  }

  private static void sources(Derivation derivation, Set<Phrase> sources) {
    if (!derivation.equation().isEmpty()) {
      sources.add(Phrase.words(
          "told.unknown",
          Phrase.told(Remark.of(derivation.title())),
          new Phrase.English(derivation.equation() + " (" + derivation.source() + ")")));
    }
    derivation.inputs().forEach(input -> sources(input, sources));
  }

  private static Leaf.Section section(String word, Block... blocks) {
    return new Leaf.Section(word, Phrase.words("answer.part." + word), List.of(blocks));
  }
}
