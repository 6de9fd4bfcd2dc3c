package dev.kettlemark.sheets;

import dev.kettlemark.pictures.Picture;
import dev.kettlemark.pictures.PictureKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a part of a sheet is laid out of. */
public sealed interface Block {

  /** Every figure in it, in order of reading. */
  Stream<SheetFigure> figures();

  /** Sentences, each on a line of its own. */
  record Lines(List<Phrase> lines) implements Block {

    public Lines {
      lines = List.copyOf(lines);
    }

    public static Lines of(Phrase... lines) {
      return new Lines(List.of(lines));
    }

    @Override
    public Stream<SheetFigure> figures() {
      return lines.stream().flatMap(Phrase::figures);
    }
  }

  /** Points in no order. */
  record Points(List<Phrase> points) implements Block {

    public Points {
      points = List.copyOf(points);
    }

    @Override
    public Stream<SheetFigure> figures() {
      return points.stream().flatMap(Phrase::figures);
    }
  }

  /**
   * What may hurt somebody.
   *
   * @param signs whether each has its drawing, and on which side of its text
   */
  record Cautions(List<Caution> cautions, Signs signs) implements Block {

    /** Where a drawing stands; the text is the information, with or without it. */
    enum Signs {
      NONE,
      BEFORE,
      BEHIND
    }

    public Cautions {
      cautions = List.copyOf(cautions);
    }

    @Override
    public Stream<SheetFigure> figures() {
      return cautions.stream().map(Caution::text).flatMap(Phrase::figures);
    }
  }

  /** A caution by the word of the language, and what it says. */
  record Caution(String word, Phrase text) {}

  /**
   * A heading inside a part.
   *
   * @param mark the stage that it opens, where it does
   */
  record Heading(Phrase phrase, Optional<Mark> mark) implements Block {

    Heading(Phrase phrase) {
      this(phrase, Optional.empty());
    }

    @Override
    public Stream<SheetFigure> figures() {
      return phrase.figures();
    }
  }

  /**
   * Steps in their order.
   *
   * @param stage the number of the stage, which all its steps carry in front of their own
   */
  record Steps(int stage, List<Step> steps) implements Block {

    public Steps {
      steps = List.copyOf(steps);
    }

    @Override
    public Stream<SheetFigure> figures() {
      return steps.stream()
          .flatMap(step -> Stream.concat(
              step.text().figures(), step.remarks().stream().flatMap(Phrase::figures)));
    }
  }

  /**
   * One step with what a reader should know of it.
   *
   * @param mark the step of the text that it tells, where it tells one
   */
  record Step(Phrase text, List<Phrase> remarks, Optional<Mark> mark) {

    public Step {
      remarks = List.copyOf(remarks);
    }

    Step(Phrase text, List<Phrase> remarks) {
      this(text, remarks, Optional.empty());
    }
  }

  /** A word and what holds of it, for each line. */
  record Terms(List<Term> terms) implements Block {

    public Terms {
      terms = List.copyOf(terms);
    }

    @Override
    public Stream<SheetFigure> figures() {
      return terms.stream().flatMap(term -> term.told().figures());
    }
  }

  /** One line of {@link Terms}. */
  record Term(Phrase word, Phrase told) {}

  /** A table. */
  record Grid(Phrase caption, List<Column> columns, List<Row> rows) implements Block {

    public Grid {
      columns = List.copyOf(columns);
      rows = List.copyOf(rows);
    }

    @Override
    public Stream<SheetFigure> figures() {
      return Stream.of(
              Stream.of(caption),
              columns.stream().map(Column::heading),
              rows.stream().flatMap(row -> row.cells().stream()))
          .flatMap(phrases -> phrases)
          .flatMap(Phrase::figures);
    }
  }

  /** A column: figures stand to the right, and a blank is for the reader's pen. */
  record Column(Phrase heading, Holds holds) {

    /** What stands in a column. */
    public enum Holds {
      TEXT,
      FIGURE,
      BLANK
    }

    public static Column text(String key) {
      return new Column(Phrase.words(key), Holds.TEXT);
    }

    public static Column figure(String key) {
      return new Column(Phrase.words(key), Holds.FIGURE);
    }

    static Column blank(String key) {
      return new Column(Phrase.words(key), Holds.BLANK);
    }
  }

  /**
   * A row: one phrase for each column; a group has one phrase for all, and one that goes across has a word
   * and one phrase for all other columns.
   *
   * @param mark the line or stage of the text that it tells, where it tells one
   */
  record Row(List<Phrase> cells, Rank rank, Optional<Mark> mark) {

    /** How a row stands among the others. */
    public enum Rank {
      PLAIN,
      GROUP,
      ACROSS,
      TOTAL
    }

    public Row {
      cells = List.copyOf(cells);
    }

    public static Row of(Phrase... cells) {
      return new Row(List.of(cells), Rank.PLAIN, Optional.empty());
    }

    static Row line(List<Phrase> cells, Mark mark) {
      return new Row(cells, Rank.PLAIN, Optional.of(mark));
    }

    /** A heading that leads to no line of a text. */
    public static Row group(Phrase heading) {
      return new Row(List.of(heading), Rank.GROUP, Optional.empty());
    }

    static Row group(Phrase heading, Mark mark) {
      return new Row(List.of(heading), Rank.GROUP, Optional.of(mark));
    }

    static Row across(Phrase word, Phrase told) {
      return new Row(List.of(word, told), Rank.ACROSS, Optional.empty());
    }

    static Row total(Phrase... cells) {
      return new Row(List.of(cells), Rank.TOTAL, Optional.empty());
    }
  }

  /**
   * A picture, which tells no figure that the rest of the sheet does not.
   *
   * @param isGoingOn whether it belongs to the picture before it
   */
  record Drawing(PictureKind kind, Picture picture, boolean isGoingOn) implements Block {
    @Override
    public Stream<SheetFigure> figures() {
      return Stream.empty();
    }
  }
}
