package dev.kettlemark.features;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import java.util.Optional;

/** A sheet by what it shows and for whom. */
final class SheetHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .named(Symbol.Kind.SHEET)
        .flatMap(found -> pointed
            .snapshot()
            .library()
            .find(Kind.SHEET, found.symbol().name())
            .flatMap(Entry::declaration)
            .flatMap(known -> known instanceof Sheet sheet ? Optional.of(sheet) : Optional.empty())
            .map(sheet -> pointed.text(
                new Markdown().paragraph(told(sheet)), found.occurrence().span())));
  }

  private static String told(Sheet sheet) {
    String title = sheet
        .facts()
        .first("title")
        .flatMap(fact -> fact.text())
        .map(Located::value)
        .or(sheet::title)
        .orElse(sheet.name().value());
    return "**" + Markdown.plain(title) + "** — sheet "
        + Markdown.code(sheet.name().value())
        + sheet.subject().map(shown -> " of " + Markdown.code(shown.value())).orElse("")
        + sheet.reader().map(reader -> ", " + reader(reader.value())).orElse("")
        + sheet.language().map(tag -> ", in " + Markdown.plain(tag.value())).orElse("")
        + ".";
  }

  private static String reader(String word) {
    return HeadingOffers.READERS.stream()
        .filter(term -> term.word().equals(word))
        .findFirst()
        .map(term -> "for " + word + ": " + term.meaning())
        .orElse("for " + Markdown.plain(word));
  }
}
