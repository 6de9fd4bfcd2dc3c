package dev.kettlemark.publishing;

import java.time.LocalDate;
import java.util.function.Function;

/**
 * A page of a published library.
 *
 * @param path below the folder
 * @param item the name of what it is of
 * @param text its text as made out on a day; the same for the same day
 */
public record Page(String path, String item, Function<LocalDate, String> text) {

  /** A page as it stands on the disk, with the day on which it was made. */
  public record Made(String text, Manifest.Written written) {}

  /**
   * The page, with the day of the last publication if nothing else has changed since.
   *
   * <p>Otherwise each morning would write all pages anew.
   */
  public Made made(Manifest before, LocalDate today) {
    return before
        .page(path)
        .map(old -> {
          Made same = on(old.day());
          return same.written().equals(old) ? same : on(today);
        })
        .orElseGet(() -> on(today));
  }

  private Made on(LocalDate day) {
    String made = text.apply(day);
    return new Made(made, new Manifest.Written(FileNames.hash(made), day));
  }
}
