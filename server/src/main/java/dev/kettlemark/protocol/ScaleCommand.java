package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.features.WeighingMarkdown;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.scaling.ScaleEdits;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import dev.kettlemark.text.TextEdit;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.hipparchus.fraction.BigFraction;

/** {@code kettlemark.scale}: a formula taken to a target, as an edit and a list to weigh by. */
final class ScaleCommand {

  static final String NAME = "kettlemark.scale";

  private ScaleCommand() {}

  /**
   * What a scaling answers.
   *
   * @param edit the one line that changes
   * @param title what it does
   * @param weighingList Markdown
   * @param charge grams weighed in
   * @param finished grams left
   */
  record Result(
      WorkspaceEdit edit, String title, String weighingList, double charge, double finished) {}

  static Result run(Scene scene, String name, JsonObject target) {
    Entry entry = scene
        .snapshot()
        .library()
        .find(Kind.MATERIAL, name)
        .orElseThrow(() -> refused("the library has no formula `" + name + "`"));
    ComputedFormula formula = Formulas.computed(scene.snapshot(), entry)
        .orElseThrow(() -> refused("`" + name + "` is not a formula"));
    Outcome<Scaling> outcome = Scaling.of(formula, target(target));
    return outcome.fold(scaling -> result(scene, entry, formula, scaling), unknown -> {
      throw refused(unknown.because());
    });
  }

  private static Result result(Scene scene, Entry entry, ComputedFormula formula, Scaling scaling) {
    Document document = scene
        .moment()
        .document(entry.uri())
        .orElseThrow(() -> refused("`" + scaling.formula() + "` lies in no file"));
    if (document.builtIn()) {
      throw refused("the built-in pantry cannot be changed");
    }
    TextEdit edit = ScaleEdits.batch(entry, scaling);
    return new Result(
        scene.workspaceEdit(Map.of(entry.uri(), List.of(edit))),
        "Scale " + scaling.formula() + " to " + scaling.batchText(),
        WeighingMarkdown.of(scaling, cautions(formula)),
        scaling.charge().mass().grams(),
        scaling.finished().mass().grams());
  }

  private static List<String> cautions(ComputedFormula formula) {
    return formula.formula().facts().wordsOf("caution").stream()
        .map(Located::value)
        .toList();
  }

  private static Target target(JsonObject target) {
    BigFraction loss =
        optionalNumber(target, "lossPercent").map(n -> n.divide(100)).orElse(BigFraction.ZERO);
    String kind = text(target, "kind");
    return switch (kind) {
      case "charge" -> new Target.Charge(number(target, "grams"));
      case "finished" -> new Target.Finished(number(target, "grams"), loss);
      case "pieces" ->
        new Target.Pieces(number(target, "pieces"), number(target, "pieceGrams"), loss);
      case "moulds" -> new Target.Moulds(text(target, "name"), count(target), loss);
      case "frames" -> new Target.Frames(text(target, "name"), count(target), loss);
      case "bowl" -> new Target.BowlLimit(text(target, "name"));
      case "ingredient" -> new Target.InHand(text(target, "name"), number(target, "grams"));
      default -> throw refused("there is no way to scale called `" + kind + "`");
    };
  }

  private static int count(JsonObject target) {
    return optionalNumber(target, "count").map(BigFraction::intValue).orElse(1);
  }

  private static String text(JsonObject target, String name) {
    JsonElement value = target.get(name);
    if (value == null || !value.isJsonPrimitive()) {
      throw refused("the scaling needs `" + name + "`");
    }
    return value.getAsString();
  }

  private static BigFraction number(JsonObject target, String name) {
    return optionalNumber(target, name)
        .orElseThrow(() -> refused("the scaling needs a number `" + name + "`"));
  }

  private static Optional<BigFraction> optionalNumber(JsonObject target, String name) {
    JsonElement value = target.get(name);
    if (value == null || !value.isJsonPrimitive() || !value.getAsJsonPrimitive().isNumber()) {
      return Optional.empty();
    }
    BigDecimal decimal = value.getAsBigDecimal();
    if (Math.abs(decimal.scale()) > 12 || decimal.precision() > 18) {
      throw refused("the number `" + name + "` is out of all measure");
    }
    return Optional.of(new BigFraction(
        decimal.setScale(Math.max(0, decimal.scale())).unscaledValue(),
        BigInteger.TEN.pow(Math.max(0, decimal.scale()))));
  }

  static ResponseErrorException refused(String why) {
    return new ResponseErrorException(
        new ResponseError(ResponseErrorCode.RequestFailed, why, null));
  }
}
