package dev.kettlemark.sheets;

import dev.kettlemark.sheets.SheetFigure.Reach;

/**
 * How one figure stands to another.
 *
 * @param by how much the second is above the first, each at its best figure; 0 where one is unknown
 */
public record Difference(Kind kind, double by) {

  /** What may be said of two figures. */
  public enum Kind {
    /** As far as anybody is shown, they are the same. */
    NONE,
    /** Each lies in the band of the other, so no one can tell them apart. */
    WITHIN,
    /** Their bands meet, but not at their best figures. */
    OPEN,
    MORE,
    LESS,
    UNKNOWN
  }

  /** Compares two figures of one unit. */
  public static Difference of(SheetFigure first, SheetFigure second) {
    return first
        .reach()
        .toOptional()
        .flatMap(one -> second
            .reach()
            .toOptional()
            .map(other -> of(one, other, Math.max(first.decimals(), second.decimals()))))
        .orElseGet(() -> new Difference(Kind.UNKNOWN, 0));
  }

  private static Difference of(Reach one, Reach other, int decimals) {
    double by = other.best() - one.best();
    double seen = Math.pow(10, -decimals) / 2;
    if (Math.abs(by) < seen
        && Math.abs(other.low() - one.low()) < seen
        && Math.abs(other.high() - one.high()) < seen) {
      return new Difference(Kind.NONE, by);
    }
    if (holds(one, other.best()) && holds(other, one.best())) {
      return new Difference(Kind.WITHIN, by);
    }
    boolean isMeeting = one.low() <= other.high() && other.low() <= one.high();
    if (isMeeting) {
      return new Difference(Kind.OPEN, by);
    }
    return new Difference(by > 0 ? Kind.MORE : Kind.LESS, by);
  }

  private static boolean holds(Reach reach, double figure) {
    return reach.low() <= figure && figure <= reach.high();
  }

  /** The same seen from the other side. */
  public Difference mirrored() {
    Kind other = switch (kind) {
      case MORE -> Kind.LESS;
      case LESS -> Kind.MORE;
      default -> kind;
    };
    return new Difference(other, 0 - by);
  }

  /** Whether both are the same, as far as anybody can know. */
  public boolean isNone() {
    return kind == Kind.NONE || kind == Kind.WITHIN;
  }

  /** Whether they are surely not the same. */
  public boolean isSure() {
    return kind == Kind.MORE || kind == Kind.LESS;
  }
}
