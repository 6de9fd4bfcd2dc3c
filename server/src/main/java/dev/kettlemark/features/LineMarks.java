package dev.kettlemark.features;

import dev.kettlemark.analysis.Expectation;
import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.ClauseWords;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Verb;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.syntax.Word;
import dev.kettlemark.text.Span;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells the words of a line that belong to the language itself: verbs, fact words, words of lists. */
final class LineMarks {

  /** Properties of tools, each before its figure. */
  private static final Set<String> TOOL_PROPERTIES =
      Set.of("reads", "holds", "whips", "weighs", "has", "measures");

  private static final Set<String> BASES = Set.of("charge", "finished");

  private static final Set<String> COMPONENTS = Stream.concat(
          Arrays.stream(Component.values()).map(Component::word), Stream.of("solids"))
      .collect(Collectors.toUnmodifiableSet());

  private final Optional<SectionWord> section;
  private final boolean inStage;
  private final Sink found;

  LineMarks(Optional<SectionWord> section, boolean inStage, Sink found) {
    this.section = section;
    this.inStage = inStage;
    this.found = found;
  }

  /** Takes what is found. */
  @FunctionalInterface
  interface Sink {
    void take(Span span, TokenType type, TokenModifier... modifiers);
  }

  void read(Line line) {
    line.clauses().forEach(this::basis);
    if (line instanceof Line.SectionLine heading) {
      heading(heading);
    } else if (line instanceof Line.DefinitionLine definition) {
      found.take(definition.head().span(), TokenType.PROPERTY);
    } else if (line instanceof Line.StatementLine statement) {
      Optional<Verb> verb = inStage ? Verb.of(statement.head().text()) : Optional.empty();
      if (verb.isPresent()) {
        step(statement, verb.get());
      } else if (isFact(statement.head().text())) {
        fact(statement);
      }
    }
  }

  private void heading(Line.SectionLine heading) {
    List<Atom.NameAtom> names = names(heading.objects()).toList();
    names.stream()
        .skip(1)
        .filter(name -> name.text().equals("again"))
        .forEach(name -> found.take(name.span(), TokenType.KEYWORD));
    if (heading.keyword() == SectionWord.SHEET) {
      listed(heading.clauses(), Connective.FOR, HeadingOffers.READERS);
      listed(heading.clauses(), Connective.IN, HeadingOffers.LANGUAGES);
    }
  }

  private void step(Line.StatementLine step, Verb verb) {
    found.take(step.head().span(), TokenType.FUNCTION, TokenModifier.DEFAULT_LIBRARY);
    for (Clause clause : step.clauses()) {
      if (clause.word() == Connective.UNTIL) {
        names(clause.groups()).forEach(this::state);
      }
      words(clause.groups(), ClauseWords.behind(clause.word()));
    }
    if (verb == Verb.KEEP) {
      words(step.objects(), ClauseWords.behind(Connective.WHILE));
    }
  }

  /** A step may also end with what begins then: {@code keep whisking until deposit}. */
  private void state(Atom.NameAtom name) {
    if (State.of(name.text()).isPresent() || SugarStage.ofWord(name.text()).isPresent()) {
      found.take(name.span(), TokenType.ENUM_MEMBER, TokenModifier.DEFAULT_LIBRARY);
    } else if (Verb.of(name.text()).isPresent()) {
      found.take(name.span(), TokenType.FUNCTION, TokenModifier.DEFAULT_LIBRARY);
    }
  }

  private boolean isFact(String word) {
    return inStage
        ? FactWord.STAGE.contains(word)
        : section
            .filter(opening -> LineStartOffers.words(opening).anyMatch(word::equals))
            .isPresent();
  }

  private void fact(Line.StatementLine fact) {
    Word head = fact.head();
    found.take(head.span(), TokenType.PROPERTY);
    Stream<Group> groups = Stream.concat(
        fact.objects().stream(),
        fact.clauses().stream().flatMap(clause -> clause.groups().stream()));
    names(groups.toList()).forEach(name -> {
      if (isOfList(fact, name)) {
        found.take(name.span(), TokenType.ENUM_MEMBER, TokenModifier.DEFAULT_LIBRARY);
      } else if (FactWord.TOOL.contains(head.text()) && TOOL_PROPERTIES.contains(name.text())) {
        found.take(name.span(), TokenType.PROPERTY);
      }
    });
    names(fact.objects()).findFirst().ifPresent(name -> first(head, name));
  }

  private void first(Word head, Atom.NameAtom name) {
    if (head.text().equals(Acceptance.WORD)) {
      found.take(name.span(), TokenType.DECORATOR);
    } else if (head.text().equals("withdraw") && FactWord.FORMULA.contains(name.text())) {
      found.take(name.span(), TokenType.PROPERTY);
    }
  }

  private static boolean isOfList(Line.StatementLine fact, Atom.NameAtom name) {
    String word = name.text();
    return switch (fact.head().text()) {
      case "contains" -> COMPONENTS.contains(word);
      case "threshold" -> Threshold.named(word).isPresent();
      case "measured" -> Measurement.words().contains(word) || Verb.of(word).isPresent();
      case "expect" -> Expectation.isModelled(word);
      case "withdraw" ->
        names(fact.objects())
            .findFirst()
            .filter(kind -> isOfWithdrawn(kind.text(), word))
            .isPresent();
      default -> isListed(fact.head().text(), word);
    };
  }

  private static boolean isOfWithdrawn(String fact, String word) {
    return fact.equals("expect") ? Expectation.isModelled(word) : isListed(fact, word);
  }

  private static boolean isListed(String fact, String word) {
    return Vocabulary.of(fact).stream().anyMatch(term -> term.word().equals(word));
  }

  /** What every formula has: its charge and its finished weight. */
  private void basis(Clause clause) {
    if (clause.word() == Connective.OF) {
      names(clause.groups())
          .filter(name -> BASES.contains(name.text()) || isCentre(name))
          .forEach(name -> found.take(
              name.span(),
              TokenType.PARAMETER,
              TokenModifier.READONLY,
              TokenModifier.DEFAULT_LIBRARY));
    }
  }

  private boolean isCentre(Atom.NameAtom name) {
    return section.filter(SectionWord.PRODUCT::equals).isPresent()
        && name.text().equals("centre");
  }

  private void listed(List<Clause> clauses, Connective connective, List<Vocabulary.Term> terms) {
    clauses.stream()
        .filter(clause -> clause.word() == connective)
        .forEach(clause -> words(clause.groups(), terms));
  }

  private void words(List<Group> groups, List<Vocabulary.Term> terms) {
    names(groups)
        .filter(name -> terms.stream().anyMatch(term -> term.word().equals(name.text())))
        .forEach(
            name -> found.take(name.span(), TokenType.ENUM_MEMBER, TokenModifier.DEFAULT_LIBRARY));
  }

  private static Stream<Atom.NameAtom> names(List<Group> groups) {
    return groups.stream()
        .flatMap(group -> group.atoms().stream())
        .flatMap(atom -> atom instanceof Atom.NameAtom name ? Stream.of(name) : Stream.empty());
  }
}
