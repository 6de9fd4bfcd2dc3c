package dev.kettlemark.cli;

import dev.kettlemark.scaling.Target;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.Option;

/** The options that say what a batch is wanted for; exactly one way at a time. */
final class WantedOptions {

  @Option(
      names = "--charge",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "So much weighed in, as 2.5kg.")
  private Optional<String> charge = Optional.empty();

  @Option(
      names = "--finished",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "So much left after cook-off and loss, as 1618.75g.")
  private Optional<String> finished = Optional.empty();

  @Option(
      names = "--pieces",
      paramLabel = "COUNT",
      description = "So many pieces; for a formula with --piece-weight.")
  private Optional<String> pieces = Optional.empty();

  @Option(
      names = "--piece-weight",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What one piece weighs, as 42g.")
  private Optional<String> pieceWeight = Optional.empty();

  @Option(
      names = "--moulds",
      paramLabel = "COUNTx MOULD",
      parameterConsumer = AmountPhrase.CountWords.class,
      description = "So many moulds of the house filled, as 4x dome-24.")
  private Optional<String> moulds = Optional.empty();

  @Option(
      names = "--frames",
      paramLabel = "COUNTx FRAME",
      parameterConsumer = AmountPhrase.CountWords.class,
      description = "So many frames of the house filled, as 2x frame-slab.")
  private Optional<String> frames = Optional.empty();

  @Option(
      names = "--bowl",
      paramLabel = "BOWL",
      description = "As much as a bowl of the house can whip.")
  private Optional<String> bowl = Optional.empty();

  @Option(
      names = "--have",
      paramLabel = "WEIGHT INGREDIENT",
      parameterConsumer = AmountPhrase.AmountOfWords.class,
      description = "As much as there is of one ingredient, as \"210 g roasted-hazelnut\".")
  private Optional<String> have = Optional.empty();

  @Option(
      names = "--loss",
      paramLabel = "SHARE",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What is lost in handling, as a share of what was cooked, as 4%%; with"
          + " --finished, --pieces, --moulds or --frames. No loss if not given.")
  private Optional<String> loss = Optional.empty();

  /** What a formula is taken to. */
  Target target() {
    oneWay();
    if (loss.isPresent() && (charge.isPresent() || bowl.isPresent() || have.isPresent())) {
      throw new UsageMistake("--loss goes with --finished, --pieces, --moulds or --frames");
    }
    if (pieceWeight.isPresent() && pieces.isEmpty()) {
      throw new UsageMistake("--piece-weight goes with --pieces");
    }
    return direct().or(this::filled).orElseGet(this::piecesOfWeight);
  }

  /** How many pieces of a product are wanted; its own lines say what a piece weighs and loses. */
  BigFraction productPieces() {
    oneWay();
    if (pieces.isEmpty() || pieceWeight.isPresent() || loss.isPresent()) {
      throw new UsageMistake(
          "a product is scaled by --pieces alone; its own lines give the weight and the loss");
    }
    return AmountPhrase.count(pieces.get());
  }

  private Optional<Target> direct() {
    return charge
        .<Target>map(text -> new Target.Charge(AmountPhrase.grams(text)))
        .or(() -> finished.map(text -> new Target.Finished(AmountPhrase.grams(text), share())))
        .or(() -> bowl.map(Target.BowlLimit::new))
        .or(() -> have.map(AmountPhrase::weighed)
            .map(amount -> new Target.InHand(amount.name(), amount.figure())));
  }

  private Optional<Target> filled() {
    return moulds
        .map(AmountPhrase::counted)
        .<Target>map(many -> new Target.Moulds(many.name(), many.figure().intValue(), share()))
        .or(() -> frames
            .map(AmountPhrase::counted)
            .map(many -> new Target.Frames(many.name(), many.figure().intValue(), share())));
  }

  private Target piecesOfWeight() {
    if (pieceWeight.isEmpty()) {
      throw new UsageMistake("a formula does not say what a piece weighs; add --piece-weight");
    }
    return new Target.Pieces(
        AmountPhrase.count(pieces.orElseThrow()), AmountPhrase.grams(pieceWeight.get()), share());
  }

  private BigFraction share() {
    return loss.map(AmountPhrase::share).orElse(BigFraction.ZERO);
  }

  private void oneWay() {
    List<Optional<String>> ways = List.of(charge, finished, pieces, moulds, frames, bowl, have);
    long given = ways.stream().flatMap(Optional::stream).count();
    if (given != 1) {
      throw new UsageMistake((given == 0 ? "say what is wanted: " : "say only one of ")
          + Stream.of("charge", "finished", "pieces", "moulds", "frames", "bowl", "have")
              .map(way -> "--" + way)
              .reduce((one, other) -> one + ", " + other)
              .orElseThrow());
    }
  }
}
