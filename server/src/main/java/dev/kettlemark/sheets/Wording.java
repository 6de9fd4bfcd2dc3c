package dev.kettlemark.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of one language. */
final class Wording {

  /** The words of sheets, and those of the other pages that look like them. */
  private static final List<String> FILES = List.of(
      "/dev/kettlemark/sheets/words_%s.properties", "/dev/kettlemark/sheets/pages_%s.properties");

  /** What the program remarks; English stands in the code. */
  private static final String REMARKS = "/dev/kettlemark/sheets/remarks_%s.properties";

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

  private static final Map<String, Wording> READ = new ConcurrentHashMap<>();

  private final Map<String, String> words;

  /** Each message cut once; the messages of a language are few. */
  private final Map<String, List<Piece>> pieces = new ConcurrentHashMap<>();

  private Wording(Map<String, String> words) {
    this.words = words;
  }

  /** Every language that sheets are written in. */
  static List<String> languages() {
    return List.of("en", "de", "fr");
  }

  /** The words of a locale; empty for a language that there are none in. */
  static Optional<Wording> of(Locale locale) {
    String language = locale.getLanguage();
    return languages().contains(language)
        ? Optional.of(READ.computeIfAbsent(language, Wording::read))
        : Optional.empty();
  }

  private static Wording read(String language) {
    Properties properties = new Properties();
    FILES.forEach(file -> read(file.formatted(language), properties));
    if (!language.equals("en")) {
      read(REMARKS.formatted(language), properties);
    }
    Map<String, String> words = new TreeMap<>();
    properties.stringPropertyNames().forEach(key -> words.put(key, properties.getProperty(key)));
    return new Wording(words);
  }

  private static void read(String name, Properties properties) {
    try (InputStream in = Wording.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not in the program");
      }
      properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** All messages by key. */
  Map<String, String> all() {
    return Map.copyOf(words);
  }

  Optional<String> find(String key) {
    return Optional.ofNullable(words.get(key));
  }

  /** A message without places. */
  String text(String key) {
    return find(key).orElseThrow(() -> new IllegalStateException("no words for " + key));
  }

  /** A piece of a message: its own text, or the number of a place. */
  record Piece(String text, Optional<Integer> place) {}

  /** A message cut at its places. */
  List<Piece> pieces(String message) {
    return pieces.computeIfAbsent(message, Wording::cut);
  }

  private static List<Piece> cut(String message) {
    List<Piece> pieces = new ArrayList<>();
    Matcher place = PLACE.matcher(message);
    int from = 0;
    while (place.find()) {
      pieces.add(new Piece(message.substring(from, place.start()), Optional.empty()));
      pieces.add(new Piece("", Optional.of(Integer.parseInt(place.group(1)))));
      from = place.end();
    }
    pieces.add(new Piece(message.substring(from), Optional.empty()));
    return List.copyOf(pieces);
  }
}
