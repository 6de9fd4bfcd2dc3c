package dev.kettlemark.checks;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.stream.Stream;

/** Reports a piece that leaves much of the cavity of its mould empty, at any density of the band. */
public final class HalfFilledCavity implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.information("half-filled-cavity", "a piece leaves much of its mould empty");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Ratio least = subject.threshold(Threshold.CAVITY_FILL);
    return WantedPiece.of(subject).stream()
        .flatMap(piece -> piece
            .cavity()
            .filter(mould -> piece.volume().high().dividedBy(mould.cavity()).compareTo(least) < 0)
            .map(mould -> finding(subject, piece, mould))
            .stream())
        .toList();
  }

  private static Finding finding(Subject subject, WantedPiece piece, House.Mould mould) {
    Band<Ratio> fill = piece.volume().map(volume -> volume.dividedBy(mould.cavity()));
    return OtherPlace.tool(
            INFO.at(
                    piece.weight(),
                    "%s fills %s of `%s`",
                    Display.mass(piece.mass()),
                    Display.estimate(fill),
                    mould.name().value())
                .because("the piece is flat and thin; fill more, or take a smaller mould"),
            subject,
            mould.name().value())
        .withFixes(
            Stream.concat(OverfilledCavity.others(subject, piece), fuller(subject, piece, mould))
                .toList());
  }

  private static Stream<Fix> fuller(Subject subject, WantedPiece piece, House.Mould mould) {
    double grams = mould.cavity().times(piece.density().band().low()).grams();
    String weight = Display.trimmed(Math.floor(grams * 10) / 10, 1) + " g";
    return Stream.of(piece.weight())
        .filter(subject::isWrittenHere)
        .map(span -> Fix.replace("Fill " + weight, span, weight));
  }
}
