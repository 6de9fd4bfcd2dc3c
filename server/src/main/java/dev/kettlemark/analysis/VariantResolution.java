package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Makes a full formula out of a variant and its parent. */
final class VariantResolution {

  /** Facts of which a formula has one; a variant's own replaces the parent's. */
  private static final Set<String> SINGLE =
      Set.of("code", "version", "status", "percent", "batch", "texture", "makes");

  private final Variant variant;
  private final List<VariantChange> missed = new ArrayList<>();
  private List<Stage> stages;
  private List<BasisDefinition> bases;
  private Facts facts;

  private VariantResolution(Variant variant, Formula parent) {
    this.variant = variant;
    this.stages = parent.stages();
    this.bases = parent.bases();
    this.facts = parent.facts();
  }

  /**
   * Applies a variant.
   *
   * <p>What comes from the parent is placed at the parent's name in the variant's heading, since that
   * is where the variant speaks of it.
   */
  static ResolvedFormula of(Variant variant, Formula parent) {
    Span heading = variant.parent().map(Located::span).orElse(variant.name().span());
    VariantResolution resolution = new VariantResolution(variant, parent.relocated(heading));
    variant.changes().forEach(resolution::apply);
    variant.stages().forEach(resolution::applyStage);
    return new ResolvedFormula(resolution.formula(parent.relocated(heading)), resolution.missed);
  }

  private Formula formula(Formula inherited) {
    Facts merged = mergedFacts();
    boolean ownPercent = variant.facts().first("percent").isPresent();
    boolean ownBatch = variant.facts().first("batch").isPresent();
    List<BasisDefinition> allBases = Stream.concat(
            variant.bases().stream(),
            bases.stream()
                .filter(basis -> variant.bases().stream()
                    .noneMatch(own -> own.name().value().equals(basis.name().value()))))
        .toList();
    return new Formula(
        variant.name(),
        variant.title(),
        merged,
        ownPercent ? variant.facts().percentBasis() : inherited.percent(),
        ownBatch ? variant.facts().batch() : inherited.batch(),
        allBases,
        stages,
        variant.parent());
  }

  private void apply(VariantChange change) {
    boolean done;
    if (change instanceof VariantChange.Replace replace) {
      String old = replace.old().value();
      String fresh = replace.replacement().ingredient().value();
      done = changeFirst(old, replace.stage(), line -> Optional.of(replace.replacement()));
      if (done && !contains(old)) {
        renameEverywhere(old, fresh);
      }
    } else if (change instanceof VariantChange.Drop drop) {
      done = changeFirst(drop.old().value(), drop.stage(), line -> Optional.empty());
      if (done && !contains(drop.old().value())) {
        forgetEverywhere(drop.old().value());
      }
    } else if (change instanceof VariantChange.Change other) {
      done = changeFirst(
          other.line().ingredient().value(), other.stage(), line -> Optional.of(other.line()));
    } else if (change instanceof VariantChange.Add add) {
      done = add(add);
    } else {
      done = withdraw((VariantChange.Withdraw) change);
    }
    if (!done) {
      missed.add(change);
    }
  }

  /** Changes the first line of an ingredient, in one stage or anywhere. */
  private boolean changeFirst(
      String ingredient,
      Optional<Located<String>> where,
      Function<AmountLine, Optional<AmountLine>> change) {
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      if (where.isPresent() && !where.get().value().equals(stage.name().value())) {
        continue;
      }
      for (int j = 0; j < stage.amounts().size(); j++) {
        AmountLine line = stage.amounts().get(j);
        if (line.ingredient().value().equals(ingredient)) {
          List<AmountLine> lines = new ArrayList<>(stage.amounts());
          lines.remove(j);
          int at = j;
          change.apply(line).ifPresent(changed -> lines.add(at, changed));
          setStage(i, stage.withAmounts(lines));
          return true;
        }
      }
    }
    return false;
  }

  private boolean add(VariantChange.Add add) {
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      if (add.stage().isEmpty() || add.stage().get().value().equals(stage.name().value())) {
        List<AmountLine> lines = new ArrayList<>(stage.amounts());
        lines.add(add.line());
        setStage(i, stage.withAmounts(lines));
        return true;
      }
    }
    return false;
  }

  /** A fact that has lost its last word goes with its figures and texts. */
  private boolean withdraw(VariantChange.Withdraw withdraw) {
    String fact = withdraw.fact().value();
    List<Statement> kept = new ArrayList<>();
    boolean found = false;
    for (Statement statement : facts.statements()) {
      if (!statement.is(fact)) {
        kept.add(statement);
      } else if (withdraw.word().isEmpty()) {
        found = true;
      } else {
        List<Located<Operand>> rest = statement.objects().stream()
            .filter(operand -> !isName(operand, withdraw.word().get().value()))
            .toList();
        found |= rest.size() < statement.objects().size();
        if (rest.stream().anyMatch(operand -> operand.value() instanceof Operand.Name)) {
          kept.add(new Statement(statement.word(), rest, statement.clauses(), statement.span()));
        }
      }
    }
    facts = new Facts(kept);
    return found;
  }

  /** {@code stage NAME again} writes the steps anew; any other stage is added. */
  private void applyStage(Stage own) {
    for (int i = 0; i < stages.size(); i++) {
      Stage stage = stages.get(i);
      if (stage.name().value().equals(own.name().value())) {
        List<AmountLine> lines = new ArrayList<>(stage.amounts());
        lines.addAll(own.amounts());
        List<Statement> steps = own.steps().isEmpty() ? stage.steps() : own.steps();
        setStage(
            i,
            new Stage(
                own.name(),
                own.title().or(stage::title),
                own.title().isPresent() || !own.names().byLanguage().isEmpty()
                    ? own.names()
                    : stage.names(),
                own.vessel().or(stage::vessel),
                lines,
                Stream.concat(stage.takes().stream(), own.takes().stream()).toList(),
                steps,
                own.span()));
        return;
      }
    }
    stages = Stream.concat(stages.stream(), Stream.of(own)).toList();
  }

  private Facts mergedFacts() {
    List<Statement> own = variant.facts().statements();
    List<Statement> inherited = facts.statements().stream()
        .filter(fact -> own.stream().noneMatch(mine -> replaces(mine, fact)))
        .toList();
    return new Facts(Stream.concat(inherited.stream(), own.stream()).toList());
  }

  private static boolean replaces(Statement own, Statement inherited) {
    if (!own.word().value().equals(inherited.word().value())) {
      return false;
    }
    if (SINGLE.contains(own.word().value())) {
      return true;
    }
    return own.is("expect")
        && own.objectNames().stream()
            .findFirst()
            .map(Located::value)
            .equals(inherited.objectNames().stream().findFirst().map(Located::value));
  }

  private boolean contains(String ingredient) {
    return stages.stream()
        .flatMap(stage -> stage.amounts().stream())
        .anyMatch(line -> line.ingredient().value().equals(ingredient));
  }

  private void renameEverywhere(String old, String fresh) {
    changeSteps(step -> Optional.of(mapNames(step, old, Optional.of(fresh))));
    bases = bases.stream().map(basis -> renamed(basis, old, fresh)).toList();
  }

  /** A step that spoke only of what was dropped goes with it. */
  private void forgetEverywhere(String old) {
    changeSteps(step -> {
      Statement rest = mapNames(step, old, Optional.empty());
      boolean spokeOnlyOfIt = rest.objects().isEmpty() && !step.objects().isEmpty();
      return spokeOnlyOfIt ? Optional.empty() : Optional.of(rest);
    });
  }

  private void changeSteps(Function<Statement, Optional<Statement>> change) {
    stages = stages.stream()
        .map(stage -> stage.withSteps(
            stage.steps().stream().flatMap(s -> change.apply(s).stream()).toList()))
        .toList();
  }

  static BasisDefinition renamed(BasisDefinition basis, String old, String fresh) {
    return new BasisDefinition(
        basis.name(),
        basis.members().stream()
            .map(member -> member.ingredient().value().equals(old)
                ? new BasisDefinition.Member(
                    new Located<>(fresh, member.ingredient().span()), member.stage())
                : member)
            .toList(),
        basis.span());
  }

  static Statement mapNames(Statement step, String old, Optional<String> fresh) {
    UnaryOperator<List<Located<Operand>>> change = operands -> operands.stream()
        .flatMap(operand -> !isName(operand, old)
            ? Stream.of(operand)
            : fresh
                .map(word -> new Located<Operand>(new Operand.Name(word), operand.span()))
                .stream())
        .toList();
    return new Statement(
        step.word(),
        change.apply(step.objects()),
        step.clauses().stream()
            .map(c -> new StatementClause(c.word(), change.apply(c.operands()), c.span()))
            .toList(),
        step.span());
  }

  private static boolean isName(Located<Operand> operand, String word) {
    return operand.value() instanceof Operand.Name name && name.word().equals(word);
  }

  private void setStage(int index, Stage stage) {
    List<Stage> changed = new ArrayList<>(stages);
    changed.set(index, stage);
    stages = List.copyOf(changed);
  }
}
