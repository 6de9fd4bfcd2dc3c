package dev.kettlemark.features;

import dev.kettlemark.model.FactWord;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What stands in a text: its sections, their stages, and the lines of those. */
public final class Outline {

  private static final String NAMELESS = "(no name)";

  private Outline() {}

  /** What an item stands for. */
  public enum Kind {
    HOUSE,
    INGREDIENT,
    FORMULA,
    VARIANT,
    PRODUCT,
    TRIAL,
    SHEET,
    STAGE,
    /** Something weighed in. */
    AMOUNT,
    /** A mass taken over from another stage. */
    TAKE,
    STEP,
    /** A change that a variant makes. */
    CHANGE,
    /** A part of a piece. */
    PART,
    /** A tool of a house. */
    TOOL
  }

  /**
   * Something in a text.
   *
   * @param name never empty
   * @param detail the display name, the amount, or the rest of the line; possibly empty
   * @param span all that belongs to it, from its first word to its last
   * @param selection its name
   * @param children what stands in it, in order
   */
  public record Item(
      String name, String detail, Kind kind, Span span, Span selection, List<Item> children) {

    public Item {
      children = List.copyOf(children);
    }
  }

  /** The sections of a text with all they hold. */
  public static List<Item> of(ParsedText text) {
    return text.sections().stream().flatMap(placed -> of(text, placed).stream()).toList();
  }

  /** One section with all it holds; several items where it is no more than stages. */
  public static List<Item> of(ParsedText text, PlacedSection placed) {
    return Block.of(text, placed).stream().map(Outline::item).toList();
  }

  private static Item item(Block block) {
    List<Item> children = new ArrayList<>();
    for (WrittenLine line : block.body()) {
      child(block, line).ifPresent(children::add);
    }
    block.parts().forEach(part -> children.add(item(part)));
    Line.SectionLine heading = (Line.SectionLine) block.heading().line();
    List<Atom> atoms =
        heading.objects().stream().flatMap(group -> group.atoms().stream()).toList();
    boolean named = !atoms.isEmpty() && atoms.get(0) instanceof Atom.NameAtom;
    List<Token> tokens = block.heading().tokens();
    return new Item(
        named ? tokens.get(1).text() : NAMELESS,
        title(atoms),
        Kind.valueOf(heading.keyword().name()),
        block.span(),
        tokens.get(named ? 1 : 0).span(),
        children);
  }

  private static String title(List<Atom> atoms) {
    return atoms.stream()
        .filter(Atom.TextAtom.class::isInstance)
        .map(atom -> ((Atom.TextAtom) atom).text())
        .findFirst()
        .orElse("");
  }

  private static Optional<Item> child(Block block, WrittenLine line) {
    if (line.tokens().isEmpty()) {
      return Optional.empty();
    }
    if (line.line() instanceof Line.StatementLine) {
      String head = line.tokens().get(0).text();
      return kind(block, head).map(kind -> statement(line, kind));
    }
    Row row = RowCutter.cut(line, block.isStage());
    return row.table() == Table.AMOUNT ? Optional.of(amount(row)) : Optional.empty();
  }

  private static Optional<Kind> kind(Block block, String head) {
    if (block.isStage()) {
      return Optional.of(Kind.STEP);
    }
    Optional<SectionWord> section = block.heading().section();
    if (section.filter(SectionWord.VARIANT::equals).isPresent()
        && FactWord.VARIANT_CHANGE.contains(head)) {
      return Optional.of(Kind.CHANGE);
    }
    if (section.filter(SectionWord.PRODUCT::equals).isPresent()
        && FactWord.PRODUCT_PART.contains(head)) {
      return Optional.of(Kind.PART);
    }
    return section.filter(SectionWord.HOUSE::equals).isPresent() && FactWord.TOOL.contains(head)
        ? Optional.of(Kind.TOOL)
        : Optional.empty();
  }

  private static Item statement(WrittenLine line, Kind kind) {
    Token head = line.tokens().get(0);
    return new Item(
        head.text(),
        words(line.tokens().subList(1, line.tokens().size())),
        kind,
        span(line),
        head.span(),
        List.of());
  }

  private static Item amount(Row row) {
    List<Row.Cell> cells = row.cells();
    List<Token> name = cells.get(AmountColumns.NAME).tokens();
    Kind kind = row.line().line() instanceof Line.TakeLine ? Kind.TAKE : Kind.AMOUNT;
    Token selected = name.isEmpty() ? row.line().tokens().get(0) : name.get(0);
    String measure = cells.subList(0, AmountColumns.NAME).stream()
        .filter(cell -> !cell.isEmpty())
        .map(cell -> String.join(" ", cell.words()))
        .collect(Collectors.joining(" "));
    return new Item(
        name.isEmpty() ? NAMELESS : selected.text(),
        measure,
        kind,
        span(row.line()),
        selected.span(),
        List.of());
  }

  private static String words(List<Token> tokens) {
    StringBuilder words = new StringBuilder();
    for (Token token : tokens) {
      words.append(words.length() == 0 || token.isComma() ? "" : " ").append(token.text());
    }
    return words.toString();
  }

  private static Span span(WrittenLine line) {
    List<Token> tokens = line.tokens();
    return tokens.get(0).span().to(tokens.get(tokens.size() - 1).span());
  }
}
