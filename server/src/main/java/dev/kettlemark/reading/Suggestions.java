package dev.kettlemark.reading;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Words near a word that nobody knows. */
public final class Suggestions {

  /** More than this many only confuse. */
  private static final int MOST = 4;

  /** One that is so many letters further off than the nearest is not what was meant. */
  private static final int BEHIND_THE_NEAREST = 2;

  private Suggestions() {}

  /**
   * The nearest known words, best first; none that differ in more than a third of the letters, and
   * none that is far-fetched beside a nearer one.
   *
   * @param word what was written
   * @param known what could have been meant
   */
  public static List<String> near(String word, Collection<String> known) {
    int limit = Math.max(1, word.length() / 3);
    record Candidate(String word, int distance) {}
    List<Candidate> near = known.stream()
        .filter(candidate -> Math.abs(candidate.length() - word.length()) <= limit)
        .map(candidate -> new Candidate(candidate, distance(word, candidate, limit)))
        .filter(candidate -> candidate.distance() <= limit)
        .sorted(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
        .toList();
    return near.stream()
        .filter(candidate -> candidate.distance() <= near.get(0).distance() + BEHIND_THE_NEAREST)
        .limit(MOST)
        .map(Candidate::word)
        .toList();
  }

  /** {@code "; did you mean `a` or `b`?"}, or nothing where nothing is near. */
  public static String sentence(String word, Collection<String> known) {
    List<String> near = near(word, known);
    return near.isEmpty()
        ? ""
        : "; did you mean "
            + near.stream().map(n -> "`" + n + "`").collect(Collectors.joining(" or "))
            + "?";
  }

  /** Edits between two words, a swap of neighbours counting once; gives up behind the limit. */
  private static int distance(String one, String other, int limit) {
    int[] beforeLast = new int[other.length() + 1];
    int[] last = new int[other.length() + 1];
    int[] row = new int[other.length() + 1];
    for (int j = 0; j <= other.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= one.length(); i++) {
      row[0] = i;
      int best = i;
      for (int j = 1; j <= other.length(); j++) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
        if (i > 1
            && j > 1
            && one.charAt(i - 1) == other.charAt(j - 2)
            && one.charAt(i - 2) == other.charAt(j - 1)) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
        best = Math.min(best, row[j]);
      }
      if (best > limit) {
        return limit + 1;
      }
      int[] spare = beforeLast;
      beforeLast = last;
      last = row;
      row = spare;
    }
    return last[other.length()];
  }
}
