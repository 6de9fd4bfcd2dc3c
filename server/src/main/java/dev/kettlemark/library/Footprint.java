package dev.kettlemark.library;

/**
 * The parts of a library that a result depends on, by itself or by what it asked.
 *
 * <p>A Bloom filter: it holds every part that was added, and may seem to hold one that was not. A result
 * is then looked at once more than it need be, and found to be right still. For the some two hundred
 * parts of a formula that happens to one part in a few thousand, in half a kilobyte.
 */
final class Footprint {

  private static final int BITS = 4096;

  private final long[] words = new long[BITS / Long.SIZE];

  void add(Part part) {
    int mark = mark(part);
    set(mark);
    set(mark >>> 16);
  }

  void addAll(Footprint other) {
    for (int i = 0; i < words.length; i++) {
      words[i] |= other.words[i];
    }
  }

  /** Whether it may hold one of some parts, each given by its {@link #mark}. */
  boolean mayHoldAny(int[] marks) {
    for (int mark : marks) {
      if (isSet(mark) && isSet(mark >>> 16)) {
        return true;
      }
    }
    return false;
  }

  /** The two places of a part in a footprint, one in each half. */
  static int mark(Part part) {
    return spread(part.hashCode());
  }

  /** The finaliser of MurmurHash3: each bit of the hash counts in both halves. */
  private static int spread(int hash) {
    int mixed = (hash ^ (hash >>> 16)) * 0x85ebca6b;
    mixed = (mixed ^ (mixed >>> 13)) * 0xc2b2ae35;
    return mixed ^ (mixed >>> 16);
  }

  private void set(int bit) {
    words[(bit & (BITS - 1)) >>> 6] |= 1L << bit;
  }

  private boolean isSet(int bit) {
    return (words[(bit & (BITS - 1)) >>> 6] & (1L << bit)) != 0;
  }
}
