package dev.kettlemark.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a verb or a fact takes, as the reference of the language writes it.
 *
 * @param word the verb or the fact word
 * @param written patterns in backticks, one for each way to write it, or a word for what a list holds
 * @param meaning one clause, and what holds where a fact is missing
 */
public record Form(String word, String written, String meaning) {

  private static final Pattern PATTERN = Pattern.compile("`([^`]+)`");

  /** A bracket with all it holds, or a word. */
  private static final Pattern PIECE = Pattern.compile("\\[[^]]*]|\\S+");

  private static final Pattern WORD = Pattern.compile("[a-z]+");

  /** Words that open a part as connectives do: the properties of tools. */
  private static final Set<String> PROPERTIES =
      Set.of("reads", "holds", "whips", "weighs", "has", "measures", "every");

  private static final Set<String> CONNECTIVES =
      Arrays.stream(Connective.values()).map(Connective::word).collect(Collectors.toSet());

  /**
   * One way to write it.
   *
   * @param label the word and what it takes
   * @param parts what the cursor can be at, in order
   */
  public record Alternative(String label, List<Part> parts) {

    public Alternative {
      parts = List.copyOf(parts);
    }
  }

  /**
   * A clause of an alternative, or what stands before its first clause.
   *
   * @param start where it starts in the label
   * @param end where it ends in the label
   * @param openers the words in it that open a clause, in order
   */
  public record Part(int start, int end, List<String> openers) {

    public Part {
      openers = List.copyOf(openers);
    }

    /** Whether it is the clause that a word opens. */
    public boolean opensWith(String opener) {
      return !openers.isEmpty() && openers.get(0).equals(opener);
    }
  }

  /** Every way to write it, at least one. */
  public List<Alternative> alternatives() {
    List<String> patterns = new ArrayList<>(
        switch (written.replaceAll("[;,].*", "").strip()) {
          case "words" -> List.of("WORD, …");
          case "one word" -> List.of("WORD");
          case "names" -> List.of("NAME, …");
          case "quotes" -> List.of("\"TEXT\"");
          case "words or quotes" -> List.of("WORD, …", "\"TEXT\"");
          default -> List.of();
        });
    Matcher found = PATTERN.matcher(written);
    while (found.find()) {
      patterns.add(found.group(1));
    }
    return patterns.stream().map(this::alternative).toList();
  }

  /** Whether a word opens a clause or a property. */
  public static boolean opens(String word) {
    return CONNECTIVES.contains(word) || PROPERTIES.contains(word);
  }

  /** What stands behind a connective in a step, such as {@code SPEED}; empty where it usually has none. */
  public Optional<String> behind(Connective connective) {
    Pattern clause = Pattern.compile("(?<![a-z])" + connective.word() + " ([A-Z]+)");
    Matcher found = clause.matcher(written);
    return found.find() ? Optional.of(found.group(1)) : Optional.empty();
  }

  /** The connectives that open its parts, in order. */
  public List<Connective> connectives() {
    return alternatives().stream()
        .flatMap(alternative -> alternative.parts().stream())
        .flatMap(part -> part.openers().stream().limit(1))
        .filter(CONNECTIVES::contains)
        .map(Connective::ofWord)
        .distinct()
        .toList();
  }

  private Alternative alternative(String pattern) {
    String label = word + " " + pattern;
    List<Part> parts = new ArrayList<>();
    Matcher piece = PIECE.matcher(label).region(word.length(), label.length());
    boolean isOpen = false;
    while (piece.find()) {
      List<String> openers = openers(piece.group()).toList();
      boolean isBracket = piece.group().startsWith("[");
      if (isOpen && !isBracket && openers.isEmpty()) {
        Part last = parts.remove(parts.size() - 1);
        parts.add(new Part(last.start(), piece.end(), last.openers()));
      } else {
        parts.add(new Part(piece.start(), piece.end(), openers));
      }
      isOpen = !isBracket;
    }
    return new Alternative(label, parts);
  }

  private static Stream<String> openers(String piece) {
    return WORD.matcher(piece).results().map(word -> word.group()).filter(Form::opens);
  }
}
