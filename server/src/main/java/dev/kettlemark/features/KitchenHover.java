package dev.kettlemark.features;

import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.science.SaturationLine;
import dev.kettlemark.text.Span;
import java.util.Optional;
import java.util.stream.Stream;

/** A house by its air, or one of its tools by what the house says of it. */
final class KitchenHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    Optional<Symbols.Found> house = pointed.named(Symbol.Kind.HOUSE);
    if (house.isPresent()) {
      return entry(pointed, house.get().symbol().name())
          .flatMap(KitchenHover::house)
          .map(known -> pointed.text(air(known), house.get().occurrence().span()));
    }
    return pointed
        .named(Symbol.Kind.TOOL)
        .flatMap(tool -> entry(pointed, tool.symbol().owner())
            .flatMap(owner -> house(owner)
                .flatMap(known -> declaration(known, tool.symbol().name()))
                .map(line -> line.of(owner.section().text())))
            .map(line ->
                pointed.text(tool(tool.symbol(), line), tool.occurrence().span())));
  }

  private static Optional<Entry> entry(Pointed pointed, String house) {
    return pointed.snapshot().library().find(Kind.HOUSE, house);
  }

  private static Optional<House> house(Entry entry) {
    return entry
        .declaration()
        .flatMap(d -> d instanceof House house ? Optional.of(house) : Optional.empty());
  }

  private static Markdown air(House house) {
    Kitchen kitchen = Kitchen.of(Optional.of(house));
    return new Markdown()
        .paragraph("**" + Markdown.plain(house.shownName()) + "** — house "
            + Markdown.code(house.name().value()))
        .paragraph(Display.fixed(house.altitudeMetres(), 0) + " m above the sea: air at "
            + Display.fixed(kitchen.pressure().kilopascals(), 1) + " kPa"
            + SaturationLine.boilingPoint(kitchen.pressure())
                .map(point -> ", water boils at " + Display.celsius(point))
                .orElse("")
            + ". The room is at " + Display.celsius(house.room()) + ".");
  }

  /** The line of the house that declares a tool. */
  private static Optional<Span> declaration(House house, String tool) {
    return house.facts().statements().stream()
        .filter(fact -> Stream.of("scale", "bowl", "pan", "mould", "frame").anyMatch(fact::is))
        .filter(fact -> fact.objectNames().stream()
            .findFirst()
            .filter(name -> name.value().equals(tool))
            .isPresent())
        .map(fact -> fact.span())
        .findFirst();
  }

  private static Markdown tool(Symbol tool, String line) {
    return new Markdown()
        .paragraph("**" + tool.name() + "** — tool of " + Markdown.code(tool.owner()))
        .paragraph(Markdown.plain(line.replaceAll("\\s+", " ")));
  }
}
