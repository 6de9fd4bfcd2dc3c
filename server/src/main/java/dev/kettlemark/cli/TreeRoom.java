package dev.kettlemark.cli;

import dev.kettlemark.library.Document;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Of how much of a library the trees are held from reading to checking.
 *
 * <p>A tree takes some thirty times the memory of its text. Of a large library most are let go when the names that
 * they declare are known, and read a second time when they are checked: it takes the same time, and half the memory.
 */
final class TreeRoom {

  /** Some three thousand formulas of forty lines, or 150 MB. */
  static final long USUAL = 4_000_000;

  private final AtomicLong left;

  /**
   * Creates room.
   *
   * @param characters of texts whose trees are held, from 0
   */
  TreeRoom(long characters) {
    left = new AtomicLong(characters);
  }

  /** Lets go of the trees of a document that finds no room any more; by several threads at a time. */
  Document held(Document document) {
    if (left.addAndGet(-document.text().source().length()) < 0) {
      document.letGo();
    }
    return document;
  }
}
