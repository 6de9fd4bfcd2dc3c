package dev.kettlemark.checks;

import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a cut whose pieces do not weigh what they should.
 *
 * <p>Length by width by the height of the frame by the density: the frame counts as filled to its rim.
 * An error where the density is written in the formula, a warning where it is estimated.
 */
public final class CutOffWeight implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("cut-off-weight", "cut pieces do not weigh what they should");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return WantedPiece.of(subject).flatMap(piece -> check(subject, piece)).stream()
        .toList();
  }

  private static Optional<Finding> check(Subject subject, WantedPiece piece) {
    double error = subject.threshold(Threshold.CUT_WEIGHT_ERROR).fraction();
    return piece.cut().flatMap(cut -> CutGrid.of(piece.formula(), cut)).flatMap(grid -> {
      Band<Mass> cut = piece.density().band().map(density -> grid.volume().times(density));
      double wanted = piece.mass().grams();
      boolean isOff =
          cut.low().grams() > wanted * (1 + error) || cut.high().grams() < wanted * (1 - error);
      return isOff ? Optional.of(finding(subject, piece, grid, cut)) : Optional.empty();
    });
  }

  private static Finding finding(Subject subject, WantedPiece piece, CutGrid grid, Band<Mass> cut) {
    double middle = (cut.low().grams() + cut.high().grams()) / 2;
    boolean isFormula = subject.formula().isPresent();
    Span place = isFormula ? grid.first().span() : piece.weight();
    Finding finding = OtherPlace.tool(
        INFO.at(
                place,
                "a piece of %s x %s x %s mm weighs %s, not %s",
                Display.trimmed(grid.length(), 1),
                Display.trimmed(grid.width(), 1),
                Display.trimmed(grid.frame().height(), 1),
                weight(cut),
                Display.mass(piece.mass()))
            .as(piece.density().written() ? Severity.ERROR : Severity.WARNING)
            .because("every piece misses its weight, and the batch gives another number of them"),
        subject,
        grid.frame().name().value());
    Optional<Fix> longer = isFormula && subject.isWrittenHere(grid.first().span())
        ? Optional.of(longer(grid, piece.mass().grams() / middle))
        : Optional.empty();
    Optional<Fix> weighs = subject.isWrittenHere(piece.weight())
        ? Optional.of(Fix.replace(
            "Write " + Display.grams(middle) + " g a piece",
            piece.weight(),
            Display.grams(middle) + " g"))
        : Optional.empty();
    return finding.withFixes(Stream.concat(longer.stream(), weighs.stream()).toList());
  }

  private static Fix longer(CutGrid grid, double factor) {
    double unit = grid.length() / grid.first().value().middle().doubleValue();
    int decimals = unit > 5 ? 1 : 0;
    String figure = Display.trimmed(grid.first().value().middle().doubleValue() * factor, decimals);
    return Fix.replace("Cut " + figure + " long", grid.first().span(), figure);
  }

  private static String weight(Band<Mass> band) {
    String low = Display.grams(band.low().grams());
    String high = Display.grams(band.high().grams());
    return (low.equals(high) ? low : low + "–" + high) + " g";
  }
}
