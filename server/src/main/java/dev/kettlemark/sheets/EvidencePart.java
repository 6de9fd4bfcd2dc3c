package dev.kettlemark.sheets;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Trial;
import dev.kettlemark.sheets.Shown.Made;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was really made of it, and when. */
final class EvidencePart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.EVIDENCE;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    for (Made made : shown.made()) {
      tell(shown, made, lines);
    }
    return lines.isEmpty() ? List.of() : List.of(new Block.Lines(lines));
  }

  private static void tell(Shown shown, Made made, List<Phrase> lines) {
    List<Trial> trials = SwapsPart.trials(shown, made.name()).stream()
        .sorted(Comparator.comparing(trial -> trial.day().orElse(LocalDate.MIN)))
        .toList();
    Phrase name = made.title();
    if (trials.isEmpty()) {
      lines.add(Phrase.sentence("evidence.none", name));
      return;
    }
    Trial last = trials.get(trials.size() - 1);
    Phrase count = Phrase.value(
        SheetFigure.exact(made.name() + ".trials", SheetUnit.NUMBER, trials.size(), 0));
    Phrase day = last.day().<Phrase>map(Phrase.Day::new).orElse(Phrase.given("–"));
    lines.add(Phrase.sentence("evidence.made." + shown.reader().word(), name, count, day));
    if (shown.reader() == SheetReader.PRODUCTION) {
      lines.add(Phrase.sentence(
          "evidence.numbers",
          new Phrase.Listing(
              trials.stream().map(trial -> Phrase.given(trial.name().value())).toList())));
    }
    Optional<FormulaVersion> version =
        FormulaVersion.of(made.formula().formula().facts());
    long older = trials.stream()
        .filter(trial -> version.filter(v -> TrialComparison.isOlder(trial, v)).isPresent())
        .count();
    if (older > 0) {
      lines.add(Phrase.sentence(
          "evidence.older",
          Phrase.value(SheetFigure.exact(
              made.name() + ".trials.older", SheetUnit.NUMBER, (double) older, 0))));
    }
    if (shown.reader() == SheetReader.CHEF) {
      last.facts()
          .first("verdict")
          .flatMap(verdict -> verdict.text())
          .map(Located::value)
          .ifPresent(text -> lines.add(Phrase.sentence("evidence.verdict", Phrase.given(text))));
    }
  }
}
