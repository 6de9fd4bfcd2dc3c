package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.AgentHeat;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Reach;
import dev.kettlemark.cards.AnswerCard;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.quantity.Display;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer reach}: how an agent gets as hot as it needs. */
@Command(
    name = "reach",
    header = "How does an agent get as hot as it needs?",
    sortOptions = false,
    description = {
      "",
      "For an ingredient that hydrates or activates above some temperature, where a hot mass meets it."
          + " Tells three ways: a hotter syrup, more syrup, a warmer bowl. The low end of the band"
          + " counts, with bowl and loss."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n")
final class AnswerReachCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "A formula or variant.")
  private String formula = "";

  @Parameters(index = "1", paramLabel = "AGENT", description = "The ingredient.")
  private String agent = "";

  AnswerReachCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    ComputedFormula computed = formula(folder(), formula);
    Reach reach = Reach.of(computed, agent).fold(known -> known, unknown -> {
      throw new UsageMistake("there is no answer: " + unknown.because());
    });
    Optional<Answer> first =
        reach.ways().stream().flatMap(way -> way.answer().toOptional().stream()).findFirst();
    if (isCard()) {
      Answer answer = first.orElseThrow(() -> new UsageMistake("there is nothing to set: `"
          + Visible.of(agent) + "` "
          + (reach.heat().isEnough() ? "gets hot enough" : "cannot get hot enough")));
      return card(AnswerCard.of(
          Asked.of("reach", computed, answer, agent, computed.formula().shownName()),
          locale(),
          terminal().today()));
    }
    if (isJson()) {
      Json.write(json(reach), terminal().out());
    } else {
      write(reach);
    }
    return ExitCode.DONE;
  }

  private void write(Reach reach) {
    AgentHeat heat = reach.heat();
    AnswerText text = text();
    text.line(
        agent + " needs " + Display.celsius(heat.needed()) + " and gets "
            + heat.hottest().map(seen -> Display.celsius(seen.temperature())).orElse("no heat")
            + (heat.isEnough() ? ": hot enough" : ""),
        "",
        true);
    text.notes(reach.notes());
    for (Reach.Way way : reach.ways()) {
      terminal().out().println();
      text.write(way);
    }
  }

  private JsonObject json(Reach reach) {
    AgentHeat heat = reach.heat();
    JsonObject json = new JsonObject();
    json.addProperty("agent", agent);
    json.addProperty("neededCelsius", heat.needed().celsius());
    heat.hottest().ifPresent(seen -> {
      json.addProperty("celsiusLow", seen.temperature().low().celsius());
      json.addProperty("celsiusHigh", seen.temperature().high().celsius());
    });
    json.addProperty("hotEnough", heat.isEnough());
    json.add("notes", AnswerText.words(reach.notes()));
    JsonArray ways = new JsonArray();
    reach.ways().forEach(way -> ways.add(AnswerText.json(way)));
    json.add("ways", ways);
    return json;
  }
}
