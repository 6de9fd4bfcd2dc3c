package dev.kettlemark.sheets;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A part of a sheet under its heading. */
public record Part(Kind kind, List<Block> blocks) {

  /** The parts that sheets have; not every reader gets all of them. */
  public enum Kind {
    ABOUT,
    CAUTIONS,
    YIELD,
    FORMULA,
    EQUIPMENT,
    METHOD,
    CONTROL,
    LIMITS,
    TIME,
    FIGURES,
    ALLERGENS,
    LABEL,
    KEEPING,
    TROUBLE,
    EGG,
    SWAPS,
    ALTITUDE,
    EVIDENCE,
    COST,
    NOTES,
    COMPLIANCE;

    /** The word by which messages and anchors name it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Part {
    blocks = List.copyOf(blocks);
  }

  Stream<SheetFigure> figures() {
    return blocks.stream().flatMap(Block::figures);
  }
}
