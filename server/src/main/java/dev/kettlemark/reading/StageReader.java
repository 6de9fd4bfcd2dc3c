package dev.kettlemark.reading;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.OtherNames;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** Reads the lines of one stage. */
final class StageReader {

  private static final Set<String> HEADS = Stream.concat(
          Arrays.stream(Verb.values()).map(Verb::word), FactWord.STAGE.stream())
      .collect(Collectors.toUnmodifiableSet());

  private final Heading heading;
  private final Body body;
  private final AmountReader reader;
  private final List<Statement> facts;
  private final List<AmountLine> amounts = new ArrayList<>();
  private final List<TakeLine> takes = new ArrayList<>();
  private final List<Statement> steps = new ArrayList<>();
  private final List<Statement> names = new ArrayList<>();

  /**
   * Starts a stage.
   *
   * @param facts where facts that stand among the steps go
   */
  StageReader(Heading heading, Body body, AmountReader reader, List<Statement> facts) {
    this.heading = heading;
    this.body = body;
    this.reader = reader;
    this.facts = facts;
  }

  Stage stage() {
    return new Stage(
        heading.name(),
        heading.title(),
        OtherNames.of(names.stream()),
        heading.nameBehind(Connective.IN),
        amounts,
        takes,
        steps,
        heading.span());
  }

  void read(Line line) {
    if (line instanceof Line.AmountLine amount) {
      reader
          .read(amount.measure(), amount.objects(), amount.clauses(), amount.span())
          .ifPresent(amounts::add);
    } else if (line instanceof Line.SufficientLine amount) {
      reader
          .readSufficient(amount.measure(), amount.objects(), amount.clauses(), amount.span())
          .ifPresent(amounts::add);
    } else if (line instanceof Line.TakeLine take) {
      take(take).ifPresent(takes::add);
    } else if (line instanceof Line.DefinitionLine definition) {
      body.report(definition.span(), "a basis is declared above the first stage");
    } else if (line instanceof Line.StatementLine statement) {
      String head = statement.head().text();
      if (!HEADS.contains(head) && FactWord.FORMULA.contains(head)) {
        body.report(
            statement.head().span(),
            "the fact " + Excerpt.of(head) + " stands above the first stage");
      } else if (body.known(statement, HEADS, "step")) {
        placeOf(head).add(AcceptanceReader.checked(body, Body.statement(statement)));
      }
    } else {
      body.reportMisplaced(line, "in a stage");
    }
  }

  private List<Statement> placeOf(String head) {
    if (head.equals("names")) {
      return names;
    }
    return FactWord.STAGE.contains(head) ? facts : steps;
  }

  private Optional<TakeLine> take(Line.TakeLine line) {
    if (line.source().isEmpty()) {
      return Optional.empty();
    }
    BigFraction share = line.share()
        .flatMap(atom -> atom.quantity())
        .map(StageReader::share)
        .orElse(BigFraction.ONE);
    if (share.signum() <= 0 || share.compareTo(BigFraction.ONE) > 0) {
      body.report(line.span(), "a part lies above 0 and up to 1, as in `part 1/2 of foam`");
      return Optional.empty();
    }
    Located<String> source =
        new Located<>(line.source().get().text(), line.source().get().span());
    return Optional.of(new TakeLine(share, source, line.span()));
  }

  private static BigFraction share(Quantity quantity) {
    return quantity.measures(Unit.Dimension.SHARE) ? quantity.middleInBase() : quantity.middle();
  }
}
