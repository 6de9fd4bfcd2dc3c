package dev.kettlemark.sheets;

import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a sheet holds for one reader, in order, not yet in any form.
 *
 * @param parts those that this reader gets and that there is something to say in
 */
public record SheetContent(Head head, List<Part> parts, Speech speech) {

  /**
   * What a sheet is of.
   *
   * @param name by which the source calls the subject
   * @param titleIn the language of the title, where it is another than the sheet's
   * @param version as the source counts it
   * @param issuedFor the version that the sheet was declared for
   * @param isStale whether that is another one
   * @param day on which the sheet was made
   */
  public record Head(
      SheetRequest request,
      String name,
      String title,
      Optional<String> titleIn,
      Optional<String> code,
      Optional<String> version,
      Optional<LocalDate> since,
      Optional<String> issuedFor,
      boolean isStale,
      Optional<String> house,
      Optional<String> status,
      Optional<String> author,
      LocalDate day) {}

  public SheetContent {
    parts = List.copyOf(parts);
  }

  /** The content of a sheet; unknown, with the reason, where it cannot be worked out. */
  public static Outcome<SheetContent> of(Snapshot snapshot, SheetRequest request) {
    Optional<Speech> speech = Speech.of(request);
    if (speech.isEmpty()) {
      return Outcome.unknown(
          Reason.NOT_MODELLED,
          "there are no words for sheets in `%s`; there are in %s",
          request.locale().toLanguageTag(),
          String.join(", ", Wording.languages()));
    }
    return Shown.of(snapshot, request)
        .map(shown -> new SheetContent(head(shown), parts(shown), speech.get()));
  }

  /** Why a sheet cannot be worked out; empty where it can. Far cheaper than the sheet. */
  public static Optional<String> hindrance(Snapshot snapshot, SheetRequest request) {
    if (Speech.of(request).isEmpty()) {
      return because(of(snapshot, request));
    }
    return because(Shown.of(snapshot, request));
  }

  private static Optional<String> because(Outcome<?> outcome) {
    return outcome instanceof Outcome.Unknown<?> unknown
        ? Optional.of(unknown.because())
        : Optional.empty();
  }

  private static Head head(Shown shown) {
    Optional<FormulaVersion> version = shown.version();
    Locale locale = shown.request().locale();
    return new Head(
        shown.request(),
        shown.subject().name().value(),
        shown.title().in(locale),
        Optional.of(shown.title()).filter(title -> title.isForeignIn(locale)).map(Title::language),
        shown.factWord("code"),
        version.flatMap(FormulaVersion::number).map(n -> Display.trimmed(n.doubleValue(), 3)),
        version.flatMap(FormulaVersion::since),
        shown.request().issue().forVersion().map(n -> Display.trimmed(n.doubleValue(), 3)),
        shown.isStale(),
        shown.house().map(house -> house.shownName()),
        shown.factWord("status"),
        shown
            .allFacts()
            .flatMap(facts -> facts.first("author").stream())
            .flatMap(line -> line.text().stream())
            .map(Located::value)
            .findFirst(),
        Lookup.today().ask(shown.snapshot()));
  }

  private static List<Part> parts(Shown shown) {
    List<Part> parts = new ArrayList<>();
    for (SheetPart part : SheetPart.inOrder()) {
      List<Block> blocks = part.of(shown);
      if (!blocks.isEmpty()) {
        parts.add(new Part(part.kind(), blocks));
      }
    }
    return parts;
  }

  /** The same as made out on another day. */
  public SheetContent madeOutOn(LocalDate day) {
    Head made = new Head(
        head.request(),
        head.name(),
        head.title(),
        head.titleIn(),
        head.code(),
        head.version(),
        head.since(),
        head.issuedFor(),
        head.isStale(),
        head.house(),
        head.status(),
        head.author(),
        day);
    return new SheetContent(made, parts, speech);
  }

  public Optional<Part> part(Part.Kind kind) {
    return parts.stream().filter(part -> part.kind() == kind).findFirst();
  }

  /** Every figure once, by its id, in order of reading. */
  public List<SheetFigure> figures() {
    Map<String, SheetFigure> byId = new LinkedHashMap<>();
    allFigures().forEach(figure -> byId.putIfAbsent(figure.id(), figure));
    return List.copyOf(byId.values());
  }

  /** Every figure as often as it is told. */
  Stream<SheetFigure> allFigures() {
    return parts.stream().flatMap(Part::figures);
  }
}
