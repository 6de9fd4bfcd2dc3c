package dev.kettlemark.sheets;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A step in the words of its reader. */
final class StepSentence {

  /** Speeds and heats have a phrase of their own in each language. */
  private static final Set<String> LEVELS = Set.of("low", "medium", "high");

  private static final Set<Verb.Effect> HEATING =
      Set.of(Verb.Effect.HEAT, Verb.Effect.BOIL, Verb.Effect.COOK);

  private final Made made;
  private final SheetReader reader;
  private final String id;
  private final boolean isHeating;
  private int figures;

  private StepSentence(Statement step, Made made, SheetReader reader, String id) {
    this.isHeating =
        Verb.of(step.word().value()).map(Verb::effect).filter(HEATING::contains).isPresent();
    this.made = made;
    this.reader = reader;
    this.id = id;
  }

  /**
   * The sentence of a step.
   *
   * @param id in front of the ids of its figures
   */
  static Phrase of(Statement step, Made made, SheetReader reader, String id) {
    return new StepSentence(step, made, reader, id).sentence(step);
  }

  /** Only what a step sets limits by: its temperatures, times and humidities. */
  static Phrase limits(Statement step, Made made, SheetReader reader, String id) {
    StepSentence sentence = new StepSentence(step, made, reader, id);
    sentence.objects(step);
    List<Phrase> limits = new ArrayList<>();
    for (StatementClause clause : step.clauses()) {
      Phrase told = sentence.clause(clause);
      if (told.figures().findAny().isPresent()) {
        limits.add(told);
      }
    }
    return limits.isEmpty() ? Phrase.nothing() : new Phrase.Together(limits);
  }

  private Phrase sentence(Statement step) {
    Phrase objects = objects(step);
    List<Phrase> clauses = new ArrayList<>();
    List<Phrase> ends = new ArrayList<>();
    for (StatementClause clause : step.clauses()) {
      (clause.word() == Connective.UNTIL ? ends : clauses).add(clause(clause));
    }
    String word = step.word().value();
    String key = Verb.of(word).isPresent() ? "verb." + word : "verb.other";
    Phrase sentence = Phrase.words(
        key, objects, new Phrase.Together(clauses), new Phrase.Together(ends), Phrase.given(word));
    return Phrase.sentence(sentence);
  }

  private Phrase objects(Statement step) {
    List<Phrase> names = new ArrayList<>();
    List<Phrase> figuresFirst = new ArrayList<>();
    for (Located<Operand> object : step.objects()) {
      Operand operand = object.value();
      if (operand instanceof Operand.Text) {
        // Why something must not be done is told behind the step.
        continue;
      }
      if (operand instanceof Operand.Name name && name.word().equals("x")) {
        figuresFirst.add(Phrase.given("×"));
      } else if (operand instanceof Operand.Name name) {
        names.add(name(name.word(), step));
      } else {
        figuresFirst.add(operand(operand));
      }
    }
    Phrase listed = names.isEmpty() ? Phrase.nothing() : new Phrase.Listing(names);
    return Phrase.together(listed, new Phrase.Together(figuresFirst));
  }

  private Phrase name(String word, Statement step) {
    boolean isAction = step.is(Verb.NEVER.word()) || step.is(Verb.KEEP.word());
    return isAction ? Phrase.words("action." + word) : Names.of(word, made, reader);
  }

  private Phrase clause(StatementClause clause) {
    String word = clause.word().name().toLowerCase(Locale.ROOT);
    List<Phrase> told = new ArrayList<>();
    String kind = "name";
    for (Located<Operand> operand : clause.operands()) {
      Operand value = operand.value();
      if (value instanceof Operand.Text) {
        continue;
      }
      if (value instanceof Operand.Figure figure) {
        kind = kind(figure.quantity());
      }
      if (value instanceof Operand.Name name) {
        kind = kindOf(name.word(), clause.word());
        told.add(behind(name.word(), clause.word()));
      } else {
        told.add(operand(value));
      }
    }
    return told.isEmpty()
        ? Phrase.nothing()
        : Phrase.words("clause." + word + "." + kind, new Phrase.Listing(told));
  }

  private String kindOf(String word, Connective connective) {
    if (connective == Connective.WHILE) {
      return "action";
    }
    if (LEVELS.contains(word) && connective == Connective.ON) {
      return isHeating ? "heat" : "speed";
    }
    if (connective == Connective.UNTIL && State.of(word).isEmpty()) {
      return "verb";
    }
    return "name";
  }

  private Phrase behind(String word, Connective connective) {
    if (connective == Connective.ON && LEVELS.contains(word)) {
      return Phrase.words("level." + word);
    }
    if (connective == Connective.WHILE) {
      return Phrase.words("action." + word);
    }
    if (connective == Connective.UNTIL && State.of(word).isPresent()) {
      return Names.state(State.of(word).get());
    }
    if (connective == Connective.UNTIL && Verb.of(word).isPresent()) {
      return Phrase.words("step." + word);
    }
    return Names.of(word, made, reader);
  }

  private static String kind(Quantity quantity) {
    return quantity
        .unit()
        .map(Unit::dimension)
        .map(dimension -> dimension.name().toLowerCase(Locale.ROOT))
        .orElse("name");
  }

  private Phrase operand(Operand operand) {
    if (operand instanceof Operand.Figure figure) {
      String own = id + "." + ++figures;
      Quantity quantity = figure.quantity();
      return Phrase.value(SheetFigure.of(own, quantity)
          .orElseGet(() -> SheetFigure.written(
              own, SheetUnit.NUMBER, quantity.middle().doubleValue(), quantity.decimals())));
    }
    return operand instanceof Operand.Day day ? new Phrase.Day(day.date()) : Phrase.nothing();
  }
}
