package dev.kettlemark.checks;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reports a display name that promises something of animals on what claims to be vegan.
 *
 * <p>A set blend is no gelatine, and the names of milk products are reserved by law in the European Union.
 */
public final class AnimalNameOnVegan implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("animal-name-on-vegan", "the name promises what a vegan food does not hold");

  /** Regulation (EU) No 1308/2013, annex VII, part III, for milk products; the others mislead. */
  private static final Pattern ANIMAL = Pattern.compile(
      "(?i)(?<![\\p{L}-])(gelatine?|honey|eggs?|milk|butter|cream|yogh?urt|cheese|whey)(?![\\p{L}-])");

  /** What takes the word back, and the traditional names of Decision 2010/791/EU. */
  private static final Pattern NOT_MEANT_BEFORE = Pattern.compile(
      "(?i)(without|no|free of|free from|instead of|like|not|cocoa|coconut|peanut|nut|shea|"
          + "honey or|or)\\s+(\\p{L}+\\s+(and|or|,)\\s+)*$");

  private static final Pattern NOT_MEANT_BEHIND =
      Pattern.compile("(?i)^(-free|\\s+free\\b|\\s+of\\s+tartar|\\s+replacer|\\s+substitute)");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<StatedWords> claim = subject.label().stream()
        .flatMap(label -> StatedWords.of(subject, label, "claim").stream())
        .filter(stated -> stated.word().value().equals("vegan"))
        .findFirst();
    Optional<String> title = subject.declaration().flatMap(Declaration::title);
    return claim
        .flatMap(word -> title
            .flatMap(AnimalNameOnVegan::found)
            .map(animal -> finding(subject, word, title.orElse(""), animal)))
        .stream()
        .toList();
  }

  private static Optional<String> found(String title) {
    Matcher matcher = ANIMAL.matcher(title);
    while (matcher.find()) {
      boolean isMeant =
          !NOT_MEANT_BEFORE.matcher(title.substring(0, matcher.start())).find()
              && !NOT_MEANT_BEHIND.matcher(title.substring(matcher.end())).find();
      if (isMeant) {
        return Optional.of(matcher.group());
      }
    }
    return Optional.empty();
  }

  private static Finding finding(Subject subject, StatedWords claim, String title, String animal) {
    return INFO.at(
            place(subject, title, animal),
            "the name says %s, and the claim says vegan",
            animal.toLowerCase(Locale.ROOT))
        .because("a name must not promise what is not in it")
        .withRelated(subject.entry().origin(claim.word().span()), "the claim")
        .withFixes(claim.withdraw().stream().toList());
  }

  /** The word in the heading, or else the heading's name. */
  private static Span place(Subject subject, String title, String animal) {
    Span heading = subject.section().lines().get(0).span();
    int quoted = subject.text().indexOf(title, heading.start());
    if (quoted < 0 || quoted >= heading.end()) {
      return heading;
    }
    int word = subject.text().indexOf(animal, quoted);
    return new Span(word, word + animal.length());
  }
}
