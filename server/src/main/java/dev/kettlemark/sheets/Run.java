package dev.kettlemark.sheets;

import java.util.Optional;

/**
 * A stretch of shown text of one kind.
 *
 * @param figure what it shows, where it is a figure
 */
record Run(String text, Kind kind, Optional<SheetFigure> figure) {

  /** How a stretch is told apart. */
  enum Kind {
    PLAIN,
    MARKED,
    FIGURE,
    /** English words on a sheet of another language. */
    ENGLISH
  }

  static Run plain(String text) {
    return new Run(text, Kind.PLAIN, Optional.empty());
  }

  Run saying(String other) {
    return new Run(other, kind, figure);
  }
}
