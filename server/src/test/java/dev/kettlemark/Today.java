package dev.kettlemark;

import java.time.LocalDate;

/** The day of all tests, so that none of them ends with a day. */
public final class Today {

  public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private Today() {}
}
