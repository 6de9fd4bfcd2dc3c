package dev.kettlemark.sheets;

import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How long and where it keeps, and how anybody knows. */
final class KeepingPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.KEEPING;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    Optional<Statement> shelf =
        shown.allFacts().flatMap(facts -> facts.first("shelf").stream()).findFirst();
    lines.add(shelf.map(KeepingPart::shelf).orElseGet(() -> Phrase.sentence("keeping.none")));
    shown
        .allFacts()
        .flatMap(facts -> facts.all("pack"))
        .flatMap(line -> line
            .text()
            .map(Located::value)
            .or(() -> line.objectNames().stream().findFirst().map(n -> Names.spaced(n.value())))
            .stream())
        .map(text -> Phrase.sentence("keeping.pack", Phrase.given(text)))
        .forEach(lines::add);
    for (Made made : shown.made()) {
      lines.add(Phrase.sentence(
          "keeping.activity",
          made.title(),
          Phrase.value(FiguresPart.activity(made.name(), made.figures()))));
    }
    lines.addAll(StorageProof.of(shown, shelf));
    if (shown.reader() != SheetReader.HOME) {
      lines.add(Phrase.sentence("keeping.laboratory"));
    }
    return List.of(new Block.Lines(lines));
  }

  /** {@code shelf 3 months at 15-18 °C below 55 %RH} as it is written. */
  private static Phrase shelf(Statement shelf) {
    List<Phrase> told = new ArrayList<>();
    shelf.objects().forEach(object -> figure(object.value(), "shelf.time").ifPresent(told::add));
    for (StatementClause clause : shelf.clauses()) {
      String word = clause.word().name().toLowerCase(Locale.ROOT);
      for (Located<Operand> operand : clause.operands()) {
        if (operand.value() instanceof Operand.Figure figure) {
          String kind = kind(figure.quantity());
          figure(figure, "shelf." + word + "." + kind)
              .ifPresent(value -> told.add(Phrase.words("clause." + word + "." + kind, value)));
        }
      }
    }
    return Phrase.sentence("keeping.shelf", new Phrase.Together(told));
  }

  private static String kind(Quantity quantity) {
    return quantity
        .unit()
        .map(unit -> unit.dimension().name().toLowerCase(Locale.ROOT))
        .orElse("name");
  }

  private static Optional<Phrase> figure(Operand operand, String id) {
    return operand instanceof Operand.Figure figure
        ? SheetFigure.of(id, figure.quantity()).map(Phrase::value)
        : Optional.empty();
  }
}
