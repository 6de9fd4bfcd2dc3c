package dev.kettlemark.cli;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.WhiteExchange;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer egg-white}: fresh for dried and back. */
@Command(
    name = "egg-white",
    header = "How much dried egg white for fresh, or something else that whips?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Between fresh and dried egg white the protein stays the same, or with --solids the dry solids,"
          + " and water makes up the rest, so that the whole weighs the same. Anything else counts by"
          + " what the library says of it: stands-in-for egg-white at a share."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  kettlemark answer egg-white 134 g --to dried",
      "  kettlemark answer egg-white 134 g --to aquafaba --format card"
    })
final class AnswerEggWhiteCommand extends AnswerVerb {

  private static final String FRESH = "egg-white";
  private static final String DRIED = "egg-white-powder";

  @Parameters(
      index = "0",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What the recipe asks for, such as 134 g.")
  private Optional<String> weight = Optional.empty();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "KIND",
      description = "What is at hand: dried, fresh, or an ingredient that whips.")
  private String to = "";

  @Option(
      names = "--from",
      paramLabel = "KIND",
      description = "What the recipe asks for; fresh if not given, dried for --to fresh.")
  private Optional<String> from = Optional.empty();

  @Option(names = "--solids", description = "Keep the dry solids instead of the protein.")
  private boolean solids;

  AnswerEggWhiteCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    Shelf shelf = shelf(folder());
    Material fresh = material(shelf, name(to));
    Material old =
        material(shelf, name(from.orElse(fresh.name().equals(FRESH) ? "dried" : "fresh")));
    Mass mass = Mass.ofGrams(AmountPhrase.grams(weight.orElse("")).doubleValue());
    return tell(
        answer(shelf, mass, old, fresh),
        answer -> Asked.of("egg-white", answer, Display.mass(mass), shown(old), shown(fresh))
            .replacing(old, fresh));
  }

  private static String name(String kind) {
    return switch (kind.toLowerCase(Locale.ROOT)) {
      case "fresh" -> FRESH;
      case "dried" -> DRIED;
      default -> kind;
    };
  }

  private static String shown(Material material) {
    return material.ingredient().map(i -> i.shownName()).orElse(material.name());
  }

  private Outcome<Answer> answer(Shelf shelf, Mass mass, Material old, Material fresh) {
    boolean isEgg = List.of(FRESH, DRIED).containsAll(List.of(old.name(), fresh.name()));
    if (isEgg) {
      WhiteExchange.Equal equal = solids ? WhiteExchange.Equal.SOLIDS : WhiteExchange.Equal.PROTEIN;
      return WhiteExchange.of(mass, old, fresh, equal);
    }
    return shelf.standIns(old.name()).stream()
        .filter(standIn -> standIn.material().name().equals(fresh.name()))
        .findFirst()
        .map(standIn -> WhiteExchange.of(mass, old, standIn))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "nobody has said how much `%s` stands for `%s`; `stands-in-for %s at 75 %%` would,"
                + " with your own figure",
            fresh.name(),
            old.name(),
            old.name()));
  }

  private static Material material(Shelf shelf, String name) {
    return shelf
        .material(name)
        .orElseThrow(
            () -> new UsageMistake("the library has no ingredient `" + Visible.of(name) + "`"));
  }
}
