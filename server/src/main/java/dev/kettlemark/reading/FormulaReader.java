package dev.kettlemark.reading;

import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Reads formulas and variants: facts first, then stages. */
final class FormulaReader {

  private final Heading heading;
  private final Body body;
  private final AmountReader amounts;
  private final List<Statement> facts = new ArrayList<>();
  private final List<BasisDefinition> bases = new ArrayList<>();
  private final List<VariantChange> changes = new ArrayList<>();
  private final List<Stage> stages = new ArrayList<>();

  FormulaReader(Heading heading, Body body) {
    this.heading = heading;
    this.body = body;
    this.amounts = new AmountReader(body);
  }

  Formula formula() {
    readLines(false);
    Facts all = new Facts(facts);
    return new Formula(
        heading.name(),
        heading.title(),
        all,
        all.percentBasis(),
        batch(all),
        bases,
        stages,
        Optional.empty());
  }

  Variant variant() {
    Optional<Located<String>> parent = heading.nameBehind(Connective.OF);
    if (parent.isEmpty()) {
      body.report(
          heading.span(),
          "the variant does not say of what; write `variant "
              + heading.name().value()
              + " of NAME`");
    }
    readLines(true);
    return new Variant(
        heading.name(), heading.title(), parent, new Facts(facts), changes, bases, stages);
  }

  private void readLines(boolean isVariant) {
    Optional<StageReader> stage = Optional.empty();
    for (Line line : body.lines()) {
      if (line instanceof Line.SectionLine opener && opener.keyword() == SectionWord.STAGE) {
        stage.map(StageReader::stage).ifPresent(stages::add);
        stage =
            Heading.of(opener, body.problems()).map(h -> new StageReader(h, body, amounts, facts));
      } else if (stage.isPresent()) {
        stage.get().read(line);
      } else {
        readFact(line, isVariant);
      }
    }
    stage.map(StageReader::stage).ifPresent(stages::add);
  }

  private void readFact(Line line, boolean isVariant) {
    if (line instanceof Line.DefinitionLine definition) {
      basis(definition).ifPresent(bases::add);
    } else if (line instanceof Line.StatementLine statement) {
      String head = statement.head().text();
      if (head.equals("basis")) {
        body.report(statement.span(), "a basis reads `basis liquid = water in foam`");
      } else if (Verb.of(head).isPresent() && !FactWord.FORMULA.contains(head)) {
        body.report(
            statement.head().span(),
            "a step stands in a stage; write `stage NAME` above " + Excerpt.of(head));
      } else if (isVariant && FactWord.VARIANT_CHANGE.contains(head)) {
        new ChangeReader(body, amounts).read(statement).ifPresent(changes::add);
      } else if (body.known(
          statement, FactWord.FORMULA, isVariant ? "fact of a variant" : "fact of a formula")) {
        facts.add(AcceptanceReader.checked(body, Body.statement(statement)));
      }
    } else {
      body.reportMisplaced(line, "before the first stage; amounts and takes stand in a stage");
    }
  }

  private Optional<BasisDefinition> basis(Line.DefinitionLine line) {
    if (!line.head().text().equals("basis")) {
      body.report(
          line.head().span(),
          "only a basis is defined with `=`, as in `basis liquid = water in foam`");
      return Optional.empty();
    }
    List<BasisDefinition.Member> members = line.members().stream()
        .map(member -> new BasisDefinition.Member(
            new Located<>(member.name().text(), member.name().span()),
            member.place().map(place -> new Located<>(place.text(), place.span()))))
        .toList();
    return Optional.of(new BasisDefinition(
        new Located<>(line.name().text(), line.name().span()), members, line.span()));
  }

  private Optional<Located<BigFraction>> batch(Facts facts) {
    Optional<Statement> fact = facts.first("batch");
    Optional<Located<BigFraction>> weight = facts.batch();
    if (fact.isPresent()
        && weight.isEmpty()
        && !body.hasMalformedFigure(fact.get().span())
        && fact.get().objects().stream().noneMatch(FormulaReader::lacksUnit)) {
      body.report(fact.get().span(), "a batch is a weight, as in `batch 1200 g`");
    }
    if (weight.isPresent() && weight.get().value().signum() <= 0) {
      body.report(weight.get().span(), "a batch weighs more than nothing");
      return Optional.empty();
    }
    return weight;
  }

  /** A figure without a unit is told by a rule of its own. */
  private static boolean lacksUnit(Located<Operand> operand) {
    return operand.value() instanceof Operand.Figure figure
        && figure.quantity().unit().isEmpty();
  }
}
