package dev.kettlemark.publishing;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What a publication has written: the only word on which of the files in its folder are its own.
 *
 * @param pages by path below the folder
 */
public record Manifest(Map<String, Written> pages, List<ItemRow> items) {

  /** The name of its file. */
  public static final String FILE = "kettlemark-site.txt";

  private static final String HEAD = "kettlemark site 1";
  private static final String PAGE = "page\t";
  private static final String ITEM = "item\t";

  /** Whatever else a file says, no page of ours has another path. */
  private static final Pattern PATH = Pattern.compile("([a-z0-9-]+/)?[a-z0-9-]+\\.html");

  /** Nothing published so far. */
  public static final Manifest NONE = new Manifest(Map.of(), List.of());

  public Manifest {
    pages = new TreeMap<>(pages);
    items = List.copyOf(items);
  }

  /**
   * A page as it was written.
   *
   * @param hash of its text
   * @param day on which that text was made
   */
  public record Written(String hash, LocalDate day) {}

  /** Whether a path may be one of ours. */
  public static boolean isPage(String path) {
    return PATH.matcher(path).matches();
  }

  /** The hash by which a page is known again. */
  public static String hash(String text) {
    return hash(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The same of a text as it lies on the disk. */
  public static String hash(byte[] text) {
    return FileNames.hash(text);
  }

  public Optional<Written> page(String path) {
    return Optional.ofNullable(pages.get(path));
  }

  /** The text of the file. */
  public String text() {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    pages.forEach((path, written) -> text.append(PAGE)
        .append(path)
        .append('\t')
        .append(written.hash())
        .append('\t')
        .append(written.day())
        .append('\n'));
    items.forEach(item -> text.append(ITEM).append(item.line()).append('\n'));
    return text.toString();
  }

  /** Reads a file; empty where it is not one of ours. Lines that make no sense claim nothing. */
  public static Optional<Manifest> of(String text) {
    List<String> lines = text.lines().toList();
    if (lines.isEmpty() || !lines.get(0).equals(HEAD)) {
      return Optional.empty();
    }
    Map<String, Written> pages = new LinkedHashMap<>();
    List<ItemRow> items = new ArrayList<>();
    for (String line : lines) {
      if (line.startsWith(PAGE)) {
        page(line.substring(PAGE.length()), pages);
      } else if (line.startsWith(ITEM)) {
        ItemRow.of(line.substring(ITEM.length())).ifPresent(items::add);
      }
    }
    return Optional.of(new Manifest(pages, items));
  }

  private static void page(String line, Map<String, Written> pages) {
    String[] fields = line.split("\t", -1);
    if (fields.length != 3 || !isPage(fields[0])) {
      return;
    }
    try {
      pages.put(fields[0], new Written(fields[1], LocalDate.parse(fields[2])));
    } catch (DateTimeParseException broken) {
      pages.put(fields[0], new Written(fields[1], LocalDate.EPOCH));
    }
  }
}
