package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.WeighingLine;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * A fix that weighs a little of something in a dry premix, which is a formula of its own.
 *
 * <p>What the premix brings of its carrier is taken off the carrier's line, so that the mass stays what
 * it is.
 */
final class PremixFix {

  private final Subject subject;
  private final ComputedFormula formula;
  private final Amounts.LineAmount line;
  private final WeighingLine.Premix premix;

  private PremixFix(
      Subject subject,
      ComputedFormula formula,
      Amounts.LineAmount line,
      WeighingLine.Premix premix) {
    this.subject = subject;
    this.formula = formula;
    this.line = line;
    this.premix = premix;
  }

  /** Nothing for variants, for what is no percentage of the charge, and for what a basis counts. */
  static Optional<Fix> of(
      Subject subject,
      ComputedFormula formula,
      Amounts.LineAmount line,
      WeighingLine.Premix premix) {
    return new PremixFix(subject, formula, line, premix).fix();
  }

  private Optional<Fix> fix() {
    List<Amounts.LineAmount> charge = ChargeLines.of(formula).all();
    Optional<Amounts.LineAmount> carrier = charge.stream()
        .filter(other -> other.stage() == line.stage() && names(other, premix.carrier()))
        .findFirst();
    String name = line.line().ingredient().value();
    boolean isCounted = formula.formula().bases().stream()
        .flatMap(basis -> basis.members().stream())
        .map(member -> member.ingredient().value())
        .anyMatch(member -> member.equals(name) || member.equals(premix.carrier()));
    String mix = name + "-premix";
    if (subject.writtenFormula().isEmpty()
        || !charge.contains(line)
        || isCounted
        || subject.material(mix).isPresent()) {
      return Optional.empty();
    }
    BigFraction share = line.share().orElse(BigFraction.ZERO);
    return carrier
        .filter(other -> left(other, share).signum() > 0)
        .map(other -> new Fix(
            "Weigh it in `" + mix + "`, 1 part with " + premix.parts() + " parts of `"
                + premix.carrier() + "`",
            edits(other, share, mix)));
  }

  private List<TextEdit> edits(Amounts.LineAmount carrier, BigFraction share, String mix) {
    AmountLine little = line.line();
    List<TextEdit> edits = new ArrayList<>();
    edits.add(ChargeLines.rewritten(subject.text(), little, share.multiply(premix.parts() + 1)));
    edits.add(ChargeLines.rewritten(subject.text(), carrier.line(), left(carrier, share)));
    edits.add(new TextEdit(little.ingredient().span(), mix));
    Stage stage = formula.formula().stages().get(line.stage());
    subject.section().lexemes().stream()
        .filter(lexeme -> lexeme.kind() == Lexeme.Kind.NAME)
        .map(Lexeme::span)
        .filter(span -> stage.steps().stream().anyMatch(step -> step.span().contains(span)))
        .filter(span -> written(span).equals(little.ingredient().value()))
        .forEach(span -> edits.add(new TextEdit(span, mix)));
    edits.add(WrittenLines.of(subject).behindSection(premix(mix)));
    return edits;
  }

  private BigFraction left(Amounts.LineAmount carrier, BigFraction share) {
    return carrier.share().orElse(BigFraction.ZERO).subtract(share.multiply(premix.parts()));
  }

  private String premix(String mix) {
    String name = line.line().ingredient().value();
    double part = 1.0 / (premix.parts() + 1);
    return "formula " + mix + "\n  percent   of charge\nstage bowl\n"
        + WrittenLines.amount(Display.percent(Ratio.ofFraction(part)), name) + "\n"
        + WrittenLines.amount(Display.percent(Ratio.ofFraction(1 - part)), premix.carrier())
        + "\n" + WrittenLines.step("blend", name + ", " + premix.carrier()) + "\n";
  }

  private String written(Span span) {
    return span.of(subject.text());
  }

  private static boolean names(Amounts.LineAmount amount, String name) {
    return amount.line().ingredient().value().equals(name);
  }
}
