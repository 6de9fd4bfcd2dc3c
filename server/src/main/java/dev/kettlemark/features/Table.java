package dev.kettlemark.features;

/**
 * The tables that lines of one kind form.
 *
 * <p>Each says at which column its cells start at the earliest, and whether a long cell moves the next
 * one on all rows or on its own row only.
 */
enum Table {
  /** The line that opens a section or a stage. */
  HEADING(false, 0, 0, 0),
  /** Figure, unit, basis, name, circumstances; {@link Columns} places them by the decimal point. */
  AMOUNT(true, Table.INDENT, 0, 0),
  /** A fact or a step with nothing to align. */
  PLAIN(false, Table.INDENT, Table.FACT, 0),
  /** {@code version 6 on 2026-03-05}. */
  DATED(false, Table.INDENT, Table.FACT, 0),
  /** {@code density 1.42 g/mL from "source"}. */
  SOURCED(false, Table.INDENT, Table.FACT, Table.SECOND),
  /** {@code coat 30 % of finished couverture-milk-38}. */
  PART(true, Table.INDENT, Table.FACT, Table.SECOND),
  /** {@code lot heather-honey "H-25-03"}. */
  LOT(true, Table.INDENT, Table.FACT, Table.SECOND),
  /** {@code measured 803 g weight of first-syrup}. */
  MEASURED(true, Table.INDENT, Table.FACT, 24),
  /** {@code replace honey by 14.00 % agave-syrup}. */
  REPLACED(true, Table.INDENT, Table.FACT, 0),
  /** {@code add 0.30 % of liquid xanthan-gum in foam}. */
  ADDED(true, Table.INDENT, Table.FACT, 0),
  /** {@code bowl planetary-7 holds 6.9 L whips 150-2600 g}, and the other facts of a house. */
  TOOL(true, Table.INDENT, 14, 0);

  private static final int INDENT = 2;

  /** Column behind the fact word or verb: the indentation and the longest usual word. */
  private static final int FACT = 12;

  /** Column of what stands behind a fact's first figure or name. */
  private static final int SECOND = 32;

  private final boolean elastic;
  private final int firstStop;
  private final int secondStop;
  private final int thirdStop;

  Table(boolean elastic, int firstStop, int secondStop, int thirdStop) {
    this.elastic = elastic;
    this.firstStop = firstStop;
    this.secondStop = secondStop;
    this.thirdStop = thirdStop;
  }

  /** Whether a long cell moves the next one on all rows of the table. */
  boolean isElastic() {
    return elastic;
  }

  /** The column at which a cell starts at the earliest; further cells follow as they come. */
  int stop(int cell) {
    return switch (cell) {
      case 0 -> firstStop;
      case 1 -> secondStop;
      case 2 -> thirdStop;
      default -> 0;
    };
  }
}
