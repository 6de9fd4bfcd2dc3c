package dev.kettlemark.features;

import dev.kettlemark.features.SemanticTokens.Mark;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the meaning of each word of one section: of a plain word by the line it stands on. */
final class SectionMarks {

  private final Entry entry;
  private final Scope scope;
  private final Map<Integer, Mark> names = new HashMap<>();
  private final BitSet temperatures = new BitSet();

  SectionMarks(Entry entry, Scope scope) {
    this.entry = entry;
    this.scope = scope;
  }

  List<Mark> marks() {
    boolean inStage = false;
    for (Line line : entry.section().lines()) {
      if (line instanceof Line.SectionLine heading) {
        inStage = heading.keyword() == SectionWord.STAGE;
      }
      new LineMarks(entry.section().keyword(), inStage, this::name).read(line);
      Pointed.figures(line)
          .filter(figure -> figure.measures(Unit.Dimension.TEMPERATURE))
          .map(Atom.QuantityAtom::span)
          .forEach(heat -> temperatures.set(heat.start(), heat.end()));
    }
    new SectionNames(entry, scope).occurrences().forEach(this::occurrence);
    List<Mark> marks = new ArrayList<>();
    for (Lexeme lexeme : entry.section().lexemes()) {
      mark(lexeme).ifPresent(marks::add);
    }
    marks.sort(Comparator.comparingInt(mark -> mark.span().start()));
    return List.copyOf(marks);
  }

  private void name(Span span, TokenType type, TokenModifier... modifiers) {
    names.put(span.start(), new Mark(span, type, Set.of(modifiers)));
  }

  /** What a name speaks of counts more than the list in which it might stand. */
  private void occurrence(Occurrence occurrence) {
    Set<TokenModifier> modifiers = EnumSet.noneOf(TokenModifier.class);
    if (occurrence.defines()) {
      modifiers.add(TokenModifier.DECLARATION);
      if (occurrence.symbol().owner().isEmpty()) {
        modifiers.add(TokenModifier.DEFINITION);
      }
    }
    type(occurrence.symbol(), modifiers)
        .ifPresent(type ->
            names.put(occurrence.span().start(), new Mark(occurrence.span(), type, modifiers)));
  }

  private Optional<TokenType> type(Symbol symbol, Set<TokenModifier> modifiers) {
    return switch (symbol.kind()) {
      case STAGE -> Optional.of(TokenType.TYPE);
      case BASIS -> Optional.of(TokenType.PARAMETER);
      case TOOL -> Optional.of(TokenType.VARIABLE);
      case MATERIAL -> material(symbol.name(), modifiers);
      case PRODUCT -> known(Kind.PRODUCT, symbol);
      case HOUSE -> known(Kind.HOUSE, symbol);
      case TRIAL -> known(Kind.TRIAL, symbol);
      case SHEET -> known(Kind.SHEET, symbol);
    };
  }

  private Optional<TokenType> known(Kind kind, Symbol symbol) {
    return scope.ask(new Meant(kind, symbol.name())).map(found -> TokenType.CLASS);
  }

  private Optional<TokenType> material(String name, Set<TokenModifier> modifiers) {
    Optional<Meaning> meaning = scope.ask(new Meant(Kind.MATERIAL, name));
    if (meaning.isEmpty()) {
      return Optional.empty();
    }
    if (meaning.get().isPast()) {
      modifiers.add(TokenModifier.DEPRECATED);
    }
    if (!meaning.get().isIngredient()) {
      return Optional.of(TokenType.CLASS);
    }
    modifiers.add(TokenModifier.READONLY);
    if (meaning.get().isBuiltIn()) {
      modifiers.add(TokenModifier.DEFAULT_LIBRARY);
    }
    return Optional.of(TokenType.VARIABLE);
  }

  /**
   * As much of a declaration as its colour depends on, so that a key in it leaves those alone that name it.
   *
   * @param isPast whether it is no longer sold or made
   */
  private record Meaning(boolean isIngredient, boolean isPast, boolean isBuiltIn) {

    static Meaning of(Entry entry, Declaration declaration) {
      boolean isIngredient = declaration instanceof Ingredient;
      return new Meaning(
          isIngredient,
          declaration instanceof Ingredient ingredient
              ? ingredient.facts().says("status", "discontinued")
              : Facts.of(declaration).filter(f -> f.says("status", "withdrawn")).isPresent(),
          entry.uri().startsWith(Pantry.SCHEME));
    }
  }

  private record Meant(Kind kind, String name) implements Question<Optional<Meaning>> {

    @Override
    public Optional<Meaning> ask(Snapshot snapshot) {
      return snapshot
          .find(kind, name)
          .flatMap(entry -> entry.declaration().map(known -> Meaning.of(entry, known)));
    }
  }

  private Optional<Mark> mark(Lexeme lexeme) {
    Span span = lexeme.span();
    return switch (lexeme.kind()) {
      case NAME -> Optional.ofNullable(names.get(span.start()));
      case SECTION_WORD, AMOUNT_WORD -> plain(span, TokenType.KEYWORD);
      case CONNECTIVE -> plain(span, TokenType.OPERATOR);
      case NUMBER -> figure(span, TokenType.NUMBER);
      case UNIT -> figure(span, TokenType.MODIFIER);
      case DATE -> plain(span, TokenType.NUMBER);
      case TEXT -> plain(span, TokenType.STRING);
      case COMMENT -> plain(span, TokenType.COMMENT);
      case SYMBOL ->
        span.of(entry.section().text()).equals(",")
            ? Optional.empty()
            : plain(span, TokenType.OPERATOR);
      case STRAY -> Optional.empty();
    };
  }

  private static Optional<Mark> plain(Span span, TokenType type) {
    return Optional.of(new Mark(span, type, Set.of()));
  }

  private Optional<Mark> figure(Span span, TokenType type) {
    boolean heat = temperatures.get(span.start());
    return Optional.of(new Mark(span, type, heat ? Set.of(TokenModifier.TEMPERATURE) : Set.of()));
  }
}
