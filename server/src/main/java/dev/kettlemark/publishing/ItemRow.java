package dev.kettlemark.publishing;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the list of a published library tells of one of its formulas, as the reader sees it; an empty text
 * where there is nothing to tell.
 */
record ItemRow(
    String name,
    String sort,
    String title,
    String code,
    String version,
    String since,
    String status,
    String yield,
    String allergens,
    String claims) {

  /** One line of a file, in which no text can end its place. */
  String line() {
    return fields().stream()
        .map(field -> URLEncoder.encode(field, StandardCharsets.UTF_8))
        .collect(Collectors.joining("\t"));
  }

  /** Reads such a line; empty where it is none. */
  static Optional<ItemRow> of(String line) {
    try {
      List<String> f = Arrays.stream(line.split("\t", -1))
          .map(field -> URLDecoder.decode(field, StandardCharsets.UTF_8))
          .toList();
      return f.size() == 10
          ? Optional.of(new ItemRow(
              f.get(0), f.get(1), f.get(2), f.get(3), f.get(4), f.get(5), f.get(6), f.get(7),
              f.get(8), f.get(9)))
          : Optional.empty();
    } catch (IllegalArgumentException broken) {
      return Optional.empty();
    }
  }

  private List<String> fields() {
    return List.of(name, sort, title, code, version, since, status, yield, allergens, claims);
  }
}
