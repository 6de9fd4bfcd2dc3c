package dev.kettlemark.sheets;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What goes wrong in the hands: as a mass is poured, filled and cut, by the limits of its own steps. */
final class HandlingTrouble {

  private HandlingTrouble() {}

  static void tell(Made made, List<Row> rows) {
    for (Stage stage : made.formula().formula().stages()) {
      Optional<Phrase> waited = Optional.empty();
      for (int i = 0; i < stage.steps().size(); i++) {
        Statement step = stage.steps().get(i);
        String id = made.name() + "." + stage.name().value() + "." + (i + 1) + ".trouble";
        stiff(step, id).ifPresent(rows::add);
        threads(step, id).ifPresent(rows::add);
        coarse(made, stage, step, id).ifPresent(rows::add);
        if (step.is(Verb.SET.word()) || step.is(Verb.REST.word())) {
          waited = figure(step, Connective.FOR, Unit.Dimension.TIME, id + ".time");
        } else if (step.is(Verb.CUT.word())) {
          waited.ifPresent(time -> rows.add(row("knife", time)));
        }
      }
    }
  }

  /** A mass that is filled above a temperature no longer flows below it. */
  private static Optional<Row> stiff(Statement step, String id) {
    boolean isFilled =
        Stream.of(Verb.DEPOSIT, Verb.SPREAD, Verb.PIPE).anyMatch(verb -> step.is(verb.word()));
    Optional<Phrase> least =
        figure(step, Connective.ABOVE, Unit.Dimension.TEMPERATURE, id + ".temperature");
    Optional<Phrase> within = figure(step, Connective.WITHIN, Unit.Dimension.TIME, id + ".time");
    return least
        .filter(limit -> isFilled)
        .map(limit -> Row.of(
            Phrase.sentence("trouble.stiff"),
            Phrase.sentence("trouble.stiff.cause", limit),
            within
                .map(time -> Phrase.sentence("trouble.stiff.act.time", time))
                .orElseGet(() -> Phrase.sentence("trouble.stiff.act"))));
  }

  /** A hot syrup that meets the whisk or a cold wall sets there. */
  private static Optional<Row> threads(Statement step, String id) {
    return figure(step, Connective.OVER, Unit.Dimension.TIME, id + ".time")
        .filter(time -> step.is(Verb.STREAM.word()))
        .map(time -> row("threads", time));
  }

  /** A mass that is to be grained finely must cool before it is moved. */
  private static Optional<Row> coarse(Made made, Stage stage, Statement step, String id) {
    boolean isGrained = TroublePart.isMeantToGrain(made);
    boolean isCooked = stage.steps().stream().anyMatch(MethodPart::isCook);
    return figure(step, Connective.TO, Unit.Dimension.TEMPERATURE, id + ".temperature")
        .filter(cool -> isGrained && isCooked && step.is(Verb.COOL.word()))
        .map(cool -> row("coarse", cool));
  }

  private static Row row(String key, Phrase figure) {
    return Row.of(
        Phrase.sentence("trouble." + key),
        Phrase.sentence("trouble." + key + ".cause", figure),
        Phrase.sentence("trouble." + key + ".act", figure));
  }

  private static Optional<Phrase> figure(
      Statement step, Connective word, Unit.Dimension dimension, String id) {
    Optional<Quantity> written = step.figure(word, dimension).map(Located::value);
    return written.flatMap(quantity -> SheetFigure.of(id, quantity)).map(Phrase::value);
  }
}
