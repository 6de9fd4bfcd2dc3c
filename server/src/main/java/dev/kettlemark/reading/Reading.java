package dev.kettlemark.reading;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one section says.
 *
 * @param declaration empty where the section has no name or stands before the first section word
 * @param problems lines that could not be understood
 */
public record Reading(Optional<Declaration> declaration, List<ReadingProblem> problems) {

  public Reading {
    problems = List.copyOf(problems);
  }

  /** Reads a section; a total function of the section alone. */
  public static Reading of(Section section) {
    List<ReadingProblem> problems = new ArrayList<>();
    Optional<SectionWord> keyword = section.keyword();
    if (keyword.isEmpty()) {
      OrphanLines.report(section, problems);
      return new Reading(Optional.empty(), afresh(problems, section));
    }
    Optional<Heading> heading = Heading.of(section, problems);
    Optional<Declaration> declaration =
        heading.map(h -> declaration(keyword.get(), h, section, problems));
    return new Reading(declaration, afresh(problems, section));
  }

  /** What is odd on a line that could not even be read mostly follows from that, and is not told. */
  private static List<ReadingProblem> afresh(List<ReadingProblem> problems, Section section) {
    if (problems.isEmpty() || section.problems().isEmpty()) {
      return problems;
    }
    Source source = Source.of(section.text());
    Set<Integer> broken = section.problems().stream()
        .map(problem -> source.lineAt(problem.span().start()))
        .collect(Collectors.toSet());
    return problems.stream()
        .filter(problem -> !broken.contains(source.lineAt(problem.span().start())))
        .toList();
  }

  private static Declaration declaration(
      SectionWord keyword, Heading heading, Section section, List<ReadingProblem> problems) {
    Body body = new Body(section, problems);
    return switch (keyword) {
      case HOUSE -> new HouseReader(heading, body).read();
      case INGREDIENT -> new IngredientReader(heading, body).read();
      case FORMULA -> new FormulaReader(heading, body).formula();
      case VARIANT -> new FormulaReader(heading, body).variant();
      case PRODUCT -> new ProductReader(heading, body).read();
      case TRIAL -> new CardReader(heading, body).trial();
      case SHEET -> new CardReader(heading, body).sheet();
      case STAGE -> throw new IllegalStateException("a stage opens no section");
    };
  }
}
