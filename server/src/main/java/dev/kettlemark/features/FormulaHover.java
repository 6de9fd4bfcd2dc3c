package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Optional;

/** A formula or variant: from charge to cooked, and, where another weighs it in, how much of it is there. */
final class FormulaHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .named(Symbol.Kind.MATERIAL)
        .flatMap(name -> pointed
            .snapshot()
            .library()
            .find(Kind.MATERIAL, name.symbol().name())
            .flatMap(entry -> Formulas.computed(pointed.snapshot(), entry)
                .map(formula -> pointed.text(
                    text(pointed, entry, formula), name.occurrence().span()))));
  }

  private static Markdown text(Pointed pointed, Entry entry, ComputedFormula computed) {
    Formula formula = computed.formula();
    String name = formula.name().value();
    Markdown markdown = new Markdown();
    markdown.paragraph("**" + Markdown.plain(formula.shownName()) + "** — "
        + formula
            .parent()
            .map(
                parent -> "variant " + Markdown.code(name) + " of " + Markdown.code(parent.value()))
            .orElse("formula " + Markdown.code(name))
        + status(formula.facts()));
    pointed
        .formula()
        .filter(here -> !here.formula().name().value().equals(name))
        .ifPresent(here -> AmountsHere.of(here, name).addTo(markdown));
    markdown.paragraph(FormulaSummary.formula(computed));
    markdown.paragraph(stages(computed));
    markdown.paragraph(computed
        .process()
        .last()
        .map(StageResult::left)
        .map(left -> Constituents.groups(left.composition()))
        .orElse(""));
    markdown.paragraph(computed
        .process()
        .last()
        .map(stage -> new FinishedMass(stage.left(), computed.kitchen()).figures())
        .orElse(""));
    markdown.paragraph(computed
        .process()
        .last()
        .map(stage -> AgentText.of(stage.left().agents()))
        .orElse(""));
    markdown.paragraph(
        Labels.label(pointed.snapshot(), entry).map(LabelLines::of).orElse(""));
    markdown.paragraph(CautionText.sentences(formula.facts().wordsOf("caution")));
    markdown.paragraph(WhereUsed.sentence(pointed.snapshot(), name));
    return markdown;
  }

  private static String status(Facts facts) {
    String status =
        facts.wordOf("status").map(Located::value).map(s -> ", " + s).orElse("");
    return facts.wordOf("code").map(Located::value).map(code -> ", " + code).orElse("") + status;
  }

  private static String stages(ComputedFormula computed) {
    List<String> lines = computed.process().stages().stream()
        .map(stage -> "- " + FormulaSummary.stage(computed, stage))
        .toList();
    return String.join("\n", lines);
  }
}
