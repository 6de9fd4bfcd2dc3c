package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.ClauseWords;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Form;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Lexeme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What may follow on the line of a step. */
final class StepOffers {

  private final Snapshot snapshot;
  private final CursorLine cursor;
  private final FormulaNames names;
  private final Optional<Verb> verb;

  StepOffers(Snapshot snapshot, CursorLine cursor, FormulaNames names) {
    this.snapshot = snapshot;
    this.cursor = cursor;
    this.names = names;
    this.verb = Verb.of(cursor.head());
  }

  List<Offer> offers() {
    int opener = cursor.lastConnective();
    if (cursor.endsWith(Lexeme.Kind.NUMBER)) {
      return opener < 0 ? UnitOffers.ofAmounts() : UnitOffers.behind(cursor.connective(opener));
    }
    if (!cursor.expectsItem(Math.max(opener, 0))) {
      return cursor.isFigure() ? List.of() : connectives();
    }
    Optional<Connective> behind =
        opener < 0 ? Optional.empty() : Optional.of(cursor.connective(opener));
    if (cursor.isFigure()) {
      return behind.filter(Connective.TO::equals).isPresent() ? targets() : List.of();
    }
    return behind.map(this::behind).orElseGet(this::objects);
  }

  /** What the verb acts on; a verb may also stand without it. */
  private List<Offer> objects() {
    List<Offer> offers = new ArrayList<>(contents());
    if (!cursor.endsWith(Lexeme.Kind.SYMBOL)) {
      offers.addAll(connectives());
    }
    return offers;
  }

  private List<Offer> behind(Connective connective) {
    return switch (connective) {
      case UNTIL -> StateOffers.of(verb);
      case TO -> targets();
      case INTO, IN -> places();
      case WITH, FROM, BY -> contents();
      case BETWEEN ->
        new Materials(snapshot)
            .fitting(material ->
                material instanceof Ingredient ingredient && ingredient.hasRole("wafer"));
      default -> Offer.words(ClauseWords.behind(connective, form(connective)));
    };
  }

  /** What goes on meanwhile goes on at a speed; otherwise the verb tells. */
  private Optional<String> form(Connective connective) {
    boolean meanwhile = connective == Connective.ON
        && cursor.before().stream().anyMatch(token -> token.reads(Connective.WHILE.word()));
    return meanwhile
        ? Optional.of("SPEED")
        : verb.map(Verb::form).flatMap(form -> form.behind(connective));
  }

  private List<Offer> targets() {
    Optional<Verb.Effect> effect = verb.map(Verb::effect);
    if (effect.filter(e -> e == Verb.Effect.COOK || e == Verb.Effect.BOIL).isPresent()) {
      return Temperatures.ofSugarStages();
    }
    return effect.filter(Verb.Effect.HEAT::equals).isPresent()
        ? Temperatures.ofIngredients(snapshot, names.weighed(cursor.stage()))
        : List.of();
  }

  /** A mass is shaped into a mould or frame, and mixed into what the stage holds. */
  private List<Offer> places() {
    boolean shapes = verb.map(Verb::effect).filter(Verb.Effect.SHAPE::equals).isPresent();
    return Stream.of(shapes ? forms() : contents(), shapes ? contents() : forms())
        .flatMap(List::stream)
        .toList();
  }

  private List<Offer> contents() {
    return names.contents(cursor.stage(), cursor.line());
  }

  private List<Offer> forms() {
    Optional<House> house = house(snapshot, cursor.entry());
    return Stream.concat(
            house.stream().flatMap(h -> h.frames().stream()).map(House.Frame::name),
            house.stream().flatMap(h -> h.moulds().stream()).map(House.Mould::name))
        .map(Located::value)
        .map(name -> Offer.of(name, Kind.TOOL, "of the house"))
        .toList();
  }

  /** The house that holds for a section's document. */
  static Optional<House> house(Snapshot snapshot, Entry entry) {
    return snapshot.library().houseFor(entry.uri()).flatMap(found -> {
      Optional<Declaration> declaration = found.declaration();
      return declaration.isPresent() && declaration.get() instanceof House house
          ? Optional.of(house)
          : Optional.empty();
    });
  }

  /** Those that the verb usually has come first. */
  private List<Offer> connectives() {
    List<Connective> usual = verb.map(Verb::form).map(Form::connectives).orElse(List.of());
    return Stream.concat(
            usual.stream(),
            Arrays.stream(Connective.values()).filter(word -> !usual.contains(word)))
        .filter(word -> !ClauseWords.meaning(word).isEmpty())
        .map(word -> Offer.of(word.word(), Kind.CONNECTIVE, ClauseWords.meaning(word)))
        .toList();
  }
}
