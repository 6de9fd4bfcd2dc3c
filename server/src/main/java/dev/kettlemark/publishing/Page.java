package dev.kettlemark.publishing;

import java.time.LocalDate;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A page of a published library.
 *
 * @param path below the folder
 * @param item the name of what it is of
 * @param text works the page out, and gives its text as made out on a day; nothing of it is kept, so that
 *     a library of any size is published in the room of one page
 */
public record Page(String path, String item, Supplier<Function<LocalDate, String>> text) {

  /** A page as it stands on the disk, with the day on which it was made. */
  public record Made(String text, Manifest.Written written) {}

  /**
   * The page, with the day of the last publication if nothing else has changed since.
   *
   * <p>Otherwise each morning would write all pages anew.
   */
  public Made made(Manifest before, LocalDate today) {
    Function<LocalDate, String> texts = text.get();
    return before
        .page(path)
        .map(old -> {
          Made same = on(old.day(), texts);
          boolean isOfToday = old.day().equals(today);
          return isOfToday || same.written().equals(old) ? same : on(today, texts);
        })
        .orElseGet(() -> on(today, texts));
  }

  private static Made on(LocalDate day, Function<LocalDate, String> text) {
    String made = text.apply(day);
    return new Made(made, new Manifest.Written(Manifest.hash(made), day));
  }
}
