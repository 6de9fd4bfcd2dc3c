package dev.kettlemark.library;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.reading.Reading;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Lazy;
import dev.kettlemark.text.Span;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A section in its document, with what it declares.
 *
 * <p>Two entries are equal if they are the same section of the same document, wherever it starts: an
 * edit further up moves a section, but changes nothing that was computed from it.
 *
 * @param uri the document
 * @param placed the section and where it starts
 * @param content what it says, read when it is first asked for
 */
public record Entry(String uri, PlacedSection placed, Content content) {

  /** What a section says and by what it is found, for as long as the section is in the text. */
  record Content(Lazy<Reading> reading, Lazy<Optional<Sign>> sign) {

    static Content of(Section section, boolean builtIn) {
      Lazy<Reading> reading = Lazy.of(() -> Reading.of(section));
      return new Content(
          reading,
          Lazy.of(() -> builtIn
              ? Sign.ofPantry(section)
              : reading.get().declaration().map(declaration -> Sign.of(section, declaration))));
    }
  }

  public Section section() {
    return placed.section();
  }

  public Reading reading() {
    return content.reading().get();
  }

  public Optional<Declaration> declaration() {
    return reading().declaration();
  }

  /** By what the library finds it; empty where it declares nothing. */
  public Optional<Sign> sign() {
    return content.sign().get();
  }

  /** Lets go of the tree and of what it declares, until somebody asks again. */
  void letGo() {
    section().letGo();
    content.reading().forget();
  }

  /** Whether it declares a formula, by itself and not as a variant. */
  boolean isFormula() {
    return declaration().filter(Formula.class::isInstance).isPresent();
  }

  /** A stretch of the section that stays right when the section moves. */
  public Origin origin(Span span) {
    return new Origin(uri, section(), span);
  }

  /** The line that opens the section. */
  public Origin heading() {
    return origin(section().lines().get(0).span());
  }

  /** A stretch of the section in the document's own offsets. */
  public Place place(Span span) {
    return new Place(uri, span.shiftedBy(placed.offset()));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Entry that && uri.equals(that.uri) && section().equals(that.section());
  }

  @Override
  public int hashCode() {
    return section().hashCode();
  }
}
