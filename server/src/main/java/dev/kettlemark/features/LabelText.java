package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.labelling.CautionNeed;
import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.IngredientList;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Law;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.MarketAllergens;
import dev.kettlemark.labelling.MarketAllergens.Listed;
import dev.kettlemark.labelling.Nutrition;
import dev.kettlemark.labelling.Way;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The draft of a label as plain text for a terminal or a printer. */
public final class LabelText {

  private static final int KEY = 16;
  private static final String INDENT = "  ";

  private final Label label;
  private final Market market;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private LabelText(Label label, Market market, int width) {
    this.label = label;
    this.market = market;
    this.width = width;
  }

  /** The label for one market as lines. */
  public static List<String> lines(Label label, Market market, int width) {
    LabelText text = new LabelText(label, market, width);
    text.write();
    return text.lines;
  }

  private void write() {
    lines.add(label.name() + " \"" + label.shownName() + "\"");
    lines.add("label " + LabelLines.heading(market));
    lines.add(Label.DRAFT);
    MarketAllergens allergens = MarketAllergens.of(label.allergens(), market);
    heading("allergens");
    allergens.contained().forEach(listed -> row(listed.text(), sources(listed)));
    none(allergens.contained(), "none stated");
    heading("may contain");
    allergens.mayContain().forEach(listed -> row(listed.text(), warned(listed)));
    none(allergens.mayContain(), "nothing stated");
    if (!allergens.onSite().isEmpty()) {
      paragraph("In the house besides, for a precaution to be decided: "
          + LabelLines.names(allergens.onSite()) + ".");
    }
    notes(allergens.notes());
    heading("diets");
    label.diets().forEach(answer -> row(answer.diet().word(), diet(answer)));
    row("halal, kosher", "not checked: only a certifying body can say so");
    claims();
    cautions();
    ingredients();
    nutrition();
    sources(allergens);
  }

  private void claims() {
    List<ClaimAnswer> claims =
        label.claims().stream().filter(claim -> claim.market() == market).toList();
    if (!claims.isEmpty()) {
      heading("claims");
      claims.forEach(claim -> row(claim.claim(), claim(claim)));
    }
  }

  private static String claim(ClaimAnswer claim) {
    String grounds = claim.grounds().stream().map(Ground::text).collect(Collectors.joining("; "));
    return switch (claim.standing()) {
      case HOLDS -> "holds by what the ingredients state";
      case BROKEN -> "broken: " + grounds;
      case UNKNOWN -> "cannot be known: " + grounds;
    };
  }

  private void cautions() {
    List<CautionNeed> needs = label.cautions().stream()
        .filter(need -> need.market().isEmpty() || need.market().get() == market)
        .toList();
    List<String> further = label.facts().wordsOf("caution").stream()
        .map(Located::value)
        .filter(word -> needs.stream().noneMatch(need -> need.caution().equals(word)))
        .toList();
    heading("cautions");
    needs.forEach(need -> row(
        need.caution(),
        (need.isStated() ? "" : "not stated: ") + "\"" + need.statement() + "\" since "
            + need.reason()));
    further.forEach(word -> row(word, "stated"));
    if (needs.isEmpty()) {
      none(further, "none");
    }
  }

  private void ingredients() {
    IngredientList list = IngredientList.of(label, market);
    heading("ingredients");
    paragraph(list.text());
    list.contains().ifPresent(this::paragraph);
    notes(list.notes());
  }

  private void nutrition() {
    Nutrition nutrition = Nutrition.of(label, market);
    lines.add("");
    TextTable table = nutrition.piece().isPresent()
        ? new TextTable(2, LEFT, RIGHT, RIGHT)
        : new TextTable(2, LEFT, RIGHT);
    table.plain("nutrition, estimated");
    List<String> head = new ArrayList<>(List.of("", "in 100 g"));
    nutrition.piece().ifPresent(piece -> head.add("in " + Display.mass(piece)));
    table.row(head.toArray(String[]::new));
    nutrition.rows().forEach(row -> table.row(cells(row)));
    lines.addAll(table.lines(width));
    nutrition.rows().stream()
        .flatMap(row -> row.per100()
            .fold(
                known -> Stream.<String>empty(),
                unknown -> Stream.of(row.name() + " unknown: " + unknown.because())))
        .distinct()
        .limit(2)
        .forEach(this::paragraph);
    if (market == Market.US) {
      paragraph(
          "An American label states a serving; these are 100 g and one piece, rounded alike.");
    }
  }

  private static String[] cells(Nutrition.Row row) {
    List<String> cells = new ArrayList<>();
    cells.add((row.isPart() ? "of which " : "") + row.name());
    cells.add(figure(row, row.per100()));
    row.perPiece().ifPresent(amount -> cells.add(figure(row, amount)));
    return cells.toArray(String[]::new);
  }

  private static String figure(Nutrition.Row row, Outcome<Double> amount) {
    return amount.map(known -> row.rounded(known) + " " + row.unit()).orElse("unknown");
  }

  private void sources(MarketAllergens allergens) {
    heading("by the law");
    Stream<Law> laws = Stream.of(
            Stream.concat(allergens.contained().stream(), allergens.mayContain().stream())
                .map(listed -> listed.group().law()),
            label.claims().stream().filter(claim -> claim.market() == market).map(ClaimAnswer::law),
            label.cautions().stream()
                .filter(need -> need.market().filter(m -> m == market).isPresent())
                .map(CautionNeed::law))
        .flatMap(all -> all);
    laws.map(Law::words).distinct().forEach(this::paragraph);
    paragraph(
        market == Market.EU
            ? "Regulation (EU) No 1169/2011, articles 18 to 22, 30 and annexes VII, VIII, XIV, from memory"
            : "21 CFR 101.4 and 101.9, from memory");
  }

  /** {@code 22.4 g condensed-milk in 100 g, by chewy-caramel}. */
  private static String sources(Listed listed) {
    return listed.sources().stream().map(LabelText::source).collect(Collectors.joining("; "));
  }

  private static String source(IngredientUse use) {
    String amount = use.share()
        .map(Ratio::percent)
        .map(grams -> Display.grams(grams) + " g " + use.name() + " in 100 g")
        .orElse("an unknown amount of " + use.name());
    Optional<Way> through = use.ways().stream().filter(way -> !way.isDirect()).findFirst();
    return amount + through.map(way -> ", by " + way.words()).orElse("");
  }

  private static String warned(Listed listed) {
    return listed.sources().isEmpty() ? "stated here" : "from " + names(listed.sources());
  }

  private static String diet(Diet.Answer answer) {
    return switch (answer.standing()) {
      case HOLDS -> "yes";
      case BROKEN -> "no: " + names(answer.offenders());
      case UNKNOWN -> "unknown: " + names(answer.silent()) + " is silent";
    };
  }

  private static String names(List<IngredientUse> uses) {
    return uses.stream().map(IngredientUse::name).collect(Collectors.joining(", "));
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void none(List<?> items, String text) {
    if (items.isEmpty()) {
      lines.add(INDENT + text);
    }
  }

  private void notes(List<String> notes) {
    notes.forEach(note -> hanging(INDENT + "- ", INDENT + "  ", note));
  }

  private void paragraph(String text) {
    hanging(INDENT, INDENT, text);
  }

  private void row(String key, String value) {
    String first = INDENT + Cells.left(key, KEY) + INDENT;
    String rest = " ".repeat(KEY + 2 * INDENT.length());
    if (Cells.of(key) > KEY) {
      hanging(INDENT, INDENT, key);
      hanging(rest, rest, value);
    } else {
      hanging(first, rest, value);
    }
  }

  private void hanging(String first, String rest, String text) {
    String head = first;
    for (String line : Cells.wrapped(text, width - Cells.of(rest))) {
      lines.add(head + line);
      head = rest;
    }
  }
}
