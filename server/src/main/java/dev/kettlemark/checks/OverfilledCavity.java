package dev.kettlemark.checks;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a piece that its mould does not hold.
 *
 * <p>An error where it overflows at any density of the band; a warning where it does so at more
 * than half of it, if the density is written, and else worth knowing.
 */
public final class OverfilledCavity implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("overfilled-cavity", "a piece is larger than the cavity of its mould");

  /** A cavity is told to a tenth of a millilitre at best. */
  private static final double ROUNDING = 1.001;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return WantedPiece.of(subject).stream()
        .flatMap(piece -> piece
            .cavity()
            .filter(mould -> piece.volume().high().compareTo(mould.cavity().times(ROUNDING)) > 0)
            .map(mould -> finding(subject, piece, mould))
            .stream())
        .toList();
  }

  private static Finding finding(Subject subject, WantedPiece piece, House.Mould mould) {
    boolean overflows = piece.volume().isWhollyAbove(mould.cavity());
    double middle = piece.mass().grams()
        * 2
        / (piece.density().band().low().gramsPerMillilitre()
            + piece.density().band().high().gramsPerMillilitre());
    boolean isLikely =
        piece.density().written() && middle > mould.cavity().millilitres() * ROUNDING;
    Severity straddling = isLikely ? Severity.WARNING : Severity.INFORMATION;
    Finding finding = OtherPlace.tool(
        INFO.at(
                piece.weight(),
                "%s at %s takes %s, and `%s` holds %s",
                Display.mass(piece.mass()),
                Display.density(piece.density().band()),
                volume(piece.volume()),
                mould.name().value(),
                volume(Band.of(mould.cavity())))
            .as(overflows ? Severity.ERROR : straddling)
            .because("what does not fit runs over the rim, and the pieces stick together"),
        subject,
        mould.name().value());
    return finding.withFixes(fixes(subject, piece, mould));
  }

  private static List<Fix> fixes(Subject subject, WantedPiece piece, House.Mould mould) {
    Optional<Fix> less = Optional.of(piece.weight())
        .filter(subject::isWrittenHere)
        .map(span -> {
          double grams = mould.cavity().times(piece.density().band().low()).grams();
          String weight = Display.trimmed(Math.floor(grams * 10) / 10, 1) + " g";
          return Fix.replace("Fill " + weight, span, weight);
        });
    return Stream.concat(less.stream(), others(subject, piece)).toList();
  }

  /** The moulds of the house that the piece fills well. */
  static Stream<Fix> others(Subject subject, WantedPiece piece) {
    Volume least = piece.volume().high();
    double fill = subject.threshold(Threshold.CAVITY_FILL).fraction();
    return piece.mould().stream()
        .filter(name -> subject.isWrittenHere(name.span()))
        .flatMap(name -> piece
            .moulds()
            .filter(other -> other.cavity().compareTo(least) >= 0)
            .filter(other -> least.dividedBy(other.cavity()).fraction() >= fill)
            .map(other -> other.name().value())
            .filter(other -> !other.equals(name.value()))
            .map(other -> Fix.replace("Take `" + other + "`", name.span(), other)));
  }

  static String volume(Band<Volume> band) {
    String low = Display.fixed(band.low().millilitres(), 1);
    String high = Display.fixed(band.high().millilitres(), 1);
    return (low.equals(high) ? low : low + "–" + high) + " mL";
  }
}
