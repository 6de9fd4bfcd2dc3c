package dev.kettlemark.sheets;

import dev.kettlemark.sheets.SheetContent.Head;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A page that looks like a sheet and is none: two formulas beside each other, or the answer to a question.
 *
 * @param content the sheet that it would be, with a head and no parts of its own
 * @param title what stands at its head
 * @param kind what sort of page it is
 * @param marks short facts below the kind
 * @param sections in order
 * @param foot what holds of all of it
 * @param size how much paper it takes
 */
public record Leaf(
    SheetContent content,
    Phrase title,
    Phrase kind,
    List<Phrase> marks,
    List<Section> sections,
    List<Block> foot,
    Size size) {

  /** How much paper a page takes. */
  public enum Size {
    PAGE,
    /** Half a page: ISO 216, A5. */
    HALF
  }

  /**
   * A part under a heading.
   *
   * @param word by which anchors name it
   */
  public record Section(String word, Phrase heading, List<Block> blocks) {

    public Section {
      blocks = List.copyOf(blocks);
    }
  }

  public Leaf {
    marks = List.copyOf(marks);
    sections = List.copyOf(sections);
    foot = List.copyOf(foot);
  }

  /** A page in one language; empty where there are no words in that language. */
  public static Optional<Leaf> of(
      String name,
      Locale locale,
      LocalDate day,
      Phrase title,
      Phrase kind,
      List<Phrase> marks,
      List<Section> sections,
      Size size) {
    SheetRequest request = SheetRequest.of(name, SheetReader.PRODUCTION, locale);
    return Speech.of(request).map(speech -> {
      Head head = new Head(
          request,
          name,
          speech.text(title),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          false,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          day);
      return new Leaf(
          new SheetContent(head, List.of(), speech),
          title,
          kind,
          marks,
          sections.stream().filter(section -> !section.blocks().isEmpty()).toList(),
          List.of(Block.Lines.of(Phrase.words("compliance.check"))),
          size);
    });
  }

  /** A phrase in the language of the page. */
  public String text(Phrase phrase) {
    return content.speech().text(phrase);
  }

  /** Every figure in order of reading. */
  public Stream<SheetFigure> figures() {
    return sections.stream().flatMap(section -> section.blocks().stream()).flatMap(Block::figures);
  }
}
