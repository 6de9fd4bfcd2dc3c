package dev.kettlemark.library;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The values of thresholds: a house's own, or else the usual ones.
 *
 * <p>The usual ones are written like those of a house, in a text that is shipped with the program.
 */
public final class Thresholds {

  /** The text with the usual values. */
  public static final String FILE = "/dev/kettlemark/thresholds/usual.kettle";

  private static final House USUAL = read();

  /** The usual values, each read from its line once. */
  private static final Map<Threshold<?>, Object> USUAL_VALUES = new ConcurrentHashMap<>();

  private Thresholds() {}

  /** The line with the usual value. */
  public static House.Setting usual(Threshold<?> threshold) {
    return USUAL
        .setting(threshold)
        .orElseThrow(
            () -> new IllegalStateException("the program lacks the threshold " + threshold.word()));
  }

  /** What holds in a house; the usual value without one. */
  public static <T> T of(Optional<House> house, Threshold<T> threshold) {
    return house.flatMap(own -> own.threshold(threshold)).orElseGet(() -> usualValue(threshold));
  }

  @SuppressWarnings("unchecked") // A threshold's value has its type.
  private static <T> T usualValue(Threshold<T> threshold) {
    return (T) USUAL_VALUES.computeIfAbsent(
        threshold,
        key -> USUAL
            .threshold(threshold)
            .orElseThrow(() ->
                new IllegalStateException("the program lacks the threshold " + threshold.word())));
  }

  /**
   * What holds for a document.
   *
   * <p>The answer is the bare value, so that a house may change in all else and no result that asked
   * is computed again.
   */
  public static <T> Question<T> holding(String uri, Threshold<T> threshold) {
    return new Holding<>(uri, threshold);
  }

  private record Holding<T>(String uri, Threshold<T> threshold) implements Question<T> {

    @Override
    public T ask(Snapshot snapshot) {
      Optional<House> house =
          snapshot.houseFor(uri).flatMap(Entry::declaration).flatMap(Thresholds::house);
      return of(house, threshold);
    }
  }

  private static Optional<House> house(Declaration declaration) {
    return declaration instanceof House house ? Optional.of(house) : Optional.empty();
  }

  private static House read() {
    return Document.builtIn("kettlemark-thresholds:/usual.kettle", text()).entries().stream()
        .flatMap(entry -> entry.declaration().flatMap(Thresholds::house).stream())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the program lacks its thresholds"));
  }

  private static String text() {
    try (InputStream stream = Thresholds.class.getResourceAsStream(FILE)) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks the file " + FILE);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
