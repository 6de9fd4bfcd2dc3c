package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports two language editions of one sheet that do not say the same.
 *
 * <p>Words cannot be compared, but the number of notes, the figures in them, and the pieces can. Editions
 * that show other units are not compared by their figures.
 */
public final class UnevenEditions implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("uneven-editions", "two language editions of a sheet differ");

  private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Sheet sheet ? Optional.of(sheet) : Optional.empty())
        .stream()
        .flatMap(sheet -> sheet.subject().stream()
            .flatMap(name -> subject.ask(Lookup.sheetsOf(name.value())).stream()))
        .flatMap(entry -> check(subject, entry).stream())
        .toList();
  }

  private static Optional<Finding> check(Subject subject, Entry entry) {
    Sheet here = (Sheet) subject.declaration().orElseThrow();
    return entry
        .declaration()
        .flatMap(d -> d instanceof Sheet sheet ? Optional.of(sheet) : Optional.empty())
        .filter(there -> isOtherEdition(here, there))
        .flatMap(there -> difference(here, there)
            .map(difference -> INFO.at(
                    here.name().span(),
                    "%s than in `%s`",
                    difference,
                    there.name().value())
                .because("one of the two was changed and the other forgotten")
                .withRelated(entry.origin(there.name().span()), "the other edition")));
  }

  private static boolean isOtherEdition(Sheet here, Sheet there) {
    return here.reader().map(Located::value).equals(there.reader().map(Located::value))
        && here.language().isPresent()
        && there.language().isPresent()
        && !language(here).equals(language(there));
  }

  private static String language(Sheet sheet) {
    return sheet.language().map(tag -> ShownSheet.language(tag.value())).orElse("");
  }

  private static Optional<String> difference(Sheet here, Sheet there) {
    int fewer = notes(there).size() - notes(here).size();
    if (fewer > 0) {
      return Optional.of(fewer == 1 ? "one note less" : fewer + " notes less");
    }
    if (!pieces(here).equals(pieces(there))) {
      return Optional.of("another number of pieces");
    }
    boolean isComparable = fewer == 0 && shown(here).equals(shown(there));
    return isComparable && !figures(here).equals(figures(there))
        ? Optional.of("other figures in the notes")
        : Optional.empty();
  }

  private static List<String> shown(Sheet sheet) {
    return sheet.facts().wordsOf("show").stream().map(Located::value).sorted().toList();
  }

  private static List<String> notes(Sheet sheet) {
    return sheet
        .facts()
        .all("note")
        .flatMap(note -> note.text().stream())
        .map(Located::value)
        .toList();
  }

  private static Optional<BigFraction> pieces(Sheet sheet) {
    return sheet
        .facts()
        .first("makes")
        .flatMap(makes -> makes.objectFigure(Unit.Dimension.COUNT))
        .map(figure -> figure.value().middleInBase());
  }

  /** All figures of the notes in order of size; a comma is a decimal mark in other languages. */
  private static List<BigDecimal> figures(Sheet sheet) {
    return notes(sheet).stream()
        .flatMap(UnevenEditions::figures)
        .sorted()
        .map(BigDecimal::stripTrailingZeros)
        .toList();
  }

  private static Stream<BigDecimal> figures(String note) {
    return FIGURE
        .matcher(note)
        .results()
        .map(MatchResult::group)
        .map(figure -> new BigDecimal(figure.replace(',', '.')));
  }
}
