package dev.kettlemark.sheets;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hipparchus.fraction.BigFraction;

/**
 * What is to be shown, to whom, and how much of it.
 *
 * @param subject the name of a formula, a variant or a product
 * @param locale language and region
 * @param shows what stands beside grams and °C: {@code volumes}, {@code fahrenheit}
 * @param size for how many pieces or what charge; empty for what the source says
 * @param issue what the sheet itself declares
 */
public record SheetRequest(
    String subject,
    SheetReader reader,
    Locale locale,
    Set<String> shows,
    Optional<Size> size,
    Issue issue) {

  /** How much is to be made. */
  public sealed interface Size {

    /** So many pieces. */
    record Pieces(BigFraction count) implements Size {}

    /** So many grams weighed in. */
    record Charge(BigFraction grams) implements Size {}
  }

  /**
   * What a declared sheet says of itself.
   *
   * @param forVersion for which version of the subject it was issued
   * @param notesIn the language in which its notes are written
   */
  public record Issue(
      Optional<String> name,
      Optional<String> title,
      Optional<BigFraction> forVersion,
      List<String> notes,
      Optional<Locale> notesIn) {

    /** That of a sheet that nobody has declared. */
    public static final Issue NONE = new Issue(
        Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());

    public Issue {
      notes = List.copyOf(notes);
    }
  }

  public SheetRequest {
    shows = Set.copyOf(shows);
  }

  /** A sheet of a formula or product that no declaration speaks of. */
  public static SheetRequest of(String subject, SheetReader reader, Locale locale) {
    return new SheetRequest(subject, reader, locale, Set.of(), Optional.empty(), Issue.NONE);
  }

  /** What a declaration asks for; empty where it names no subject or no reader that is known. */
  public static Optional<SheetRequest> of(Sheet sheet) {
    Optional<SheetReader> reader = sheet.reader().flatMap(r -> SheetReader.of(r.value()));
    Locale locale =
        sheet.language().map(tag -> Locale.forLanguageTag(tag.value())).orElse(Locale.UK);
    return sheet
        .subject()
        .flatMap(subject -> reader.map(r -> new SheetRequest(
            subject.value(),
            r,
            locale,
            sheet.facts().wordsOf("show").stream().map(Located::value).collect(Collectors.toSet()),
            sheet
                .facts()
                .first("makes")
                .flatMap(makes -> makes.objectFigure(Unit.Dimension.COUNT))
                .map(count -> new Size.Pieces(count.value().middleInBase())),
            issue(sheet, locale))));
  }

  private static Issue issue(Sheet sheet, Locale locale) {
    return new Issue(
        Optional.of(sheet.name().value()),
        sheet
            .facts()
            .first("title")
            .flatMap(fact -> fact.text())
            .map(Located::value)
            .or(sheet::title),
        sheet.facts().first("version").flatMap(FormulaVersion::number),
        sheet
            .facts()
            .all("note")
            .flatMap(fact -> fact.text().stream())
            .map(Located::value)
            .toList(),
        Optional.of(locale));
  }

  public SheetRequest forReader(SheetReader other) {
    return new SheetRequest(subject, other, locale, shows, size, issue);
  }

  public SheetRequest in(Locale other) {
    return new SheetRequest(subject, reader, other, shows, size, issue);
  }

  public SheetRequest making(Size other) {
    return new SheetRequest(subject, reader, locale, shows, Optional.of(other), issue);
  }

  /** Whether volumes stand beside weights. */
  boolean showsVolumes() {
    return reader == SheetReader.HOME || shows.contains("volumes");
  }
}
