package dev.kettlemark.features;

import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Word;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/** A trial, or one of its measurements, beside what was predicted. */
final class TrialHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    Optional<TrialComparison> compared =
        pointed.snapshot().result(Trials.COMPARED, pointed.entry());
    if (compared.isEmpty()) {
      return Optional.empty();
    }
    return pointed
        .named(Symbol.Kind.TRIAL)
        .map(name -> pointed.text(whole(compared.get()), name.occurrence().span()))
        .or(() -> measured(pointed)
            .flatMap(line -> pointedAt(pointed)
                .flatMap(span -> compared.get().readings().stream()
                    .filter(reading -> reading.measurement().line().span().equals(line.span()))
                    .findFirst()
                    .map(reading ->
                        pointed.text(one(compared.get(), reading, otherScale(pointed)), span)))));
  }

  private static Optional<Line.StatementLine> measured(Pointed pointed) {
    return pointed.statement().filter(line -> line.head().text().equals("measured"));
  }

  /** The figure, or the word that leads the line; its names have answers of their own. */
  private static Optional<Span> pointedAt(Pointed pointed) {
    return pointed
        .figure()
        .map(figure -> figure.span())
        .or(() -> pointed.word().filter(word -> word.text().equals("measured")).map(Word::span));
  }

  private static Markdown whole(TrialComparison compared) {
    Markdown markdown = new Markdown()
        .paragraph("**" + Markdown.plain(compared.trial().shownName()) + "** — trial of "
            + Markdown.code(compared.formula().formula().name().value()))
        .paragraph("A " + Markdown.plain(TrialWords.circumstances(compared)) + ".")
        .table(
            List.of("of", "measured", "predicted", "difference", ""),
            compared.readings().stream().map(TrialHover::row).toList());
    TrialWords.notes(compared).forEach(note -> markdown.paragraph(Markdown.plain(note)));
    return markdown;
  }

  private static List<String> row(TrialReading reading) {
    return List.of(
        Markdown.plain(reading.measurement().subject()),
        reading.measurement().shown(),
        TrialWords.predicted(reading),
        TrialWords.difference(reading),
        reading.verdict().words());
  }

  /** {@code = 284.7 °F} where the figure under the cursor is a temperature. */
  private static String otherScale(Pointed pointed) {
    return pointed
        .figure()
        .flatMap(figure -> figure.quantity())
        .flatMap(OtherScale::asWritten)
        .map(other -> " = " + other)
        .orElse("");
  }

  private static Markdown one(TrialComparison compared, TrialReading reading, String otherScale) {
    Markdown markdown = new Markdown();
    String unit = reading.measurement().quantity().unit();
    markdown.paragraph("**" + reading.measurement().shown() + otherScale + "** "
        + Markdown.plain(reading.measurement().subject()));
    if (reading.predicted().isKnown()) {
      markdown.paragraph("Predicted " + TrialWords.predicted(reading) + " " + unit
          + "; difference " + TrialWords.difference(reading) + ", "
          + reading.verdict().words() + ".");
    }
    TrialWords.note(reading).ifPresent(note -> markdown.paragraph(Markdown.plain(note)));
    compared.probes().stream()
        .filter(probe -> probe.end().equals(reading.measurement())
            || probe.weight().equals(reading.measurement()))
        .forEach(probe -> markdown.paragraph(Markdown.plain(TrialWords.probe(probe))));
    compared.airs().stream()
        .filter(air -> air.density().equals(reading.measurement()))
        .forEach(air -> markdown.paragraph(Markdown.plain(TrialWords.air(air))));
    if (compared.isOlder()) {
      markdown.paragraph("A " + Markdown.plain(TrialWords.circumstances(compared)) + ".");
    }
    return markdown;
  }
}
