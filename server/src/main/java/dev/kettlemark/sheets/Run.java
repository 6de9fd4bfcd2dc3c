package dev.kettlemark.sheets;

import java.util.Optional;

/**
 * A stretch of shown text of one kind.
 *
 * @param figure what it shows, where it is a figure
 * @param language where it is another than the sheet's
 */
record Run(String text, Kind kind, Optional<SheetFigure> figure, Optional<String> language) {

  /** How a stretch is told apart. */
  enum Kind {
    PLAIN,
    MARKED,
    FIGURE,
    /** Words of another language than the sheet's. */
    FOREIGN
  }

  static Run plain(String text) {
    return new Run(text, Kind.PLAIN, Optional.empty(), Optional.empty());
  }

  static Run foreign(String text, String language) {
    return new Run(text, Kind.FOREIGN, Optional.empty(), Optional.of(language));
  }

  static Run figure(String text, SheetFigure figure) {
    return new Run(text, Kind.FIGURE, Optional.of(figure), Optional.empty());
  }

  /** The same told apart from the text around it. */
  Run marked() {
    return new Run(text, Kind.MARKED, figure, language);
  }

  Run saying(String other) {
    return new Run(other, kind, figure, language);
  }
}
