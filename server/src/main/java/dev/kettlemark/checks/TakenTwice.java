package dev.kettlemark.checks;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Reports a stage of which more is taken than it leaves.
 *
 * <p>Parts are exact fractions, so three thirds are a whole and nothing is rounded.
 */
public final class TakenTwice implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("taken-twice", "more is taken of a stage than there is");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .map(computed -> computed.formula())
        .flatMap(formula -> formula.stages().stream()
            .map(Stage::name)
            .map(Located::value)
            .distinct()
            .flatMap(name -> check(subject, name, takes(formula, name)).stream()))
        .toList();
  }

  private static List<TakeLine> takes(Formula formula, String name) {
    return formula.stages().stream()
        .flatMap(stage -> stage.takes().stream())
        .filter(take -> take.stage().value().equals(name))
        .toList();
  }

  private static Optional<Finding> check(Subject subject, String name, List<TakeLine> takes) {
    BigFraction sum = sum(takes);
    if (sum.compareTo(BigFraction.ONE) <= 0) {
      return Optional.empty();
    }
    TakeLine last = takes.get(takes.size() - 1);
    Finding finding = INFO.at(
            last.span(),
            "the parts taken of `%s` add up to %s %%",
            name,
            Display.trimmed(sum.multiply(100).doubleValue(), 1))
        .because("there is no more of it than all");
    for (TakeLine earlier : takes.subList(0, takes.size() - 1)) {
      finding = finding.withRelated(subject.entry().origin(earlier.span()), "taken here as well");
    }
    boolean allHere = takes.stream().allMatch(take -> subject.isWrittenHere(take.span()));
    return Optional.of(allHere ? finding.withFixes(fixes(subject.text(), takes)) : finding);
  }

  private static List<Fix> fixes(String text, List<TakeLine> takes) {
    BigFraction equal = new BigFraction(1, takes.size());
    Fix share = new Fix(
        "Take `" + words(equal) + "` each time",
        takes.stream().map(take -> rewrite(text, take, equal)).toList());
    TakeLine last = takes.get(takes.size() - 1);
    BigFraction rest = BigFraction.ONE.subtract(sum(takes.subList(0, takes.size() - 1)));
    Stream<Fix> takeRest = rest.signum() > 0
        ? Stream.of(
            new Fix("Take the rest, `" + words(rest) + "`", List.of(rewrite(text, last, rest))))
        : Stream.empty();
    return Stream.concat(takeRest, Stream.of(share)).toList();
  }

  /** Changes the words before the name, and leaves the name in its column where they fit. */
  private static TextEdit rewrite(String text, TakeLine take, BigFraction share) {
    int start = take.span().start();
    int name = take.stage().span().start();
    String before = text.substring(start, name);
    String words = words(share);
    String padded = words + " ".repeat(Math.max(1, before.length() - words.length()));
    return new TextEdit(new Span(start, name), padded);
  }

  private static String words(BigFraction share) {
    return "part " + share.getNumerator() + "/" + share.getDenominator() + " of";
  }

  private static BigFraction sum(List<TakeLine> takes) {
    return takes.stream().map(TakeLine::share).reduce(BigFraction.ZERO, BigFraction::add);
  }
}
