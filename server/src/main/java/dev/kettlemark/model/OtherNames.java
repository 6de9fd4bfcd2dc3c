package dev.kettlemark.model;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What something is called in other languages: {@code names in de "Kristallzucker"}.
 *
 * @param byLanguage the first name in each language, by its code in ISO 639
 */
public record OtherNames(Map<String, String> byLanguage) {

  /** Those of what has none. */
  public static final OtherNames NONE = new OtherNames(Map.of());

  public OtherNames {
    byLanguage = Map.copyOf(byLanguage);
  }

  /** The names that {@code names} lines give, each behind its own {@code in}. */
  public static OtherNames of(Stream<Statement> lines) {
    Map<String, String> names = new HashMap<>();
    lines
        .filter(line -> line.is("names"))
        .flatMap(line -> line.clauses().stream())
        .filter(clause -> clause.word() == Connective.IN)
        .forEach(clause -> language(clause)
            .ifPresent(language ->
                texts(clause).findFirst().ifPresent(text -> names.putIfAbsent(language, text))));
    return new OtherNames(names);
  }

  /** The language that a line says it is written in: {@code note in de "…"}. */
  public static Optional<String> languageOf(Statement line) {
    return line.clauses().stream()
        .filter(clause -> clause.word() == Connective.IN)
        .flatMap(clause -> language(clause).stream())
        .findFirst();
  }

  /** The name in the language of a locale. */
  public Optional<String> in(Locale locale) {
    return Optional.ofNullable(byLanguage.get(locale.getLanguage()));
  }

  public OtherNames map(UnaryOperator<String> change) {
    return new OtherNames(byLanguage.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, name -> change.apply(name.getValue()))));
  }

  private static Optional<String> language(StatementClause clause) {
    return values(clause).stream()
        .flatMap(o -> o instanceof Operand.Name name ? Stream.of(name.word()) : Stream.empty())
        .map(tag -> Locale.forLanguageTag(tag).getLanguage())
        .filter(language -> !language.isEmpty())
        .findFirst();
  }

  private static Stream<String> texts(StatementClause clause) {
    return values(clause).stream()
        .flatMap(o -> o instanceof Operand.Text text ? Stream.of(text.text()) : Stream.empty());
  }

  private static List<Operand> values(StatementClause clause) {
    return clause.operands().stream().map(Located::value).toList();
  }
}
