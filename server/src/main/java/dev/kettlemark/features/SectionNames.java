package dev.kettlemark.features;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Finds the names of one section by its declaration and by what the library knows under them. */
final class SectionNames {

  /** Clauses of a step whose words are states, actions and times, never things. */
  private static final Set<Connective> SPEAKS_OF_NO_THING =
      Set.of(Connective.UNTIL, Connective.WHILE, Connective.FOR, Connective.OVER);

  /** Speeds of a whisk, which stand where a tool may stand. */
  private static final Set<String> SPEEDS = Set.of("low", "medium", "high");

  private final Entry entry;
  private final Scope scope;
  private final List<Occurrence> found = new ArrayList<>();
  private Lineage lineage = new Lineage(List.of());

  SectionNames(Entry entry, Scope scope) {
    this.entry = entry;
    this.scope = scope;
  }

  List<Occurrence> occurrences() {
    entry.declaration().ifPresent(this::read);
    found.sort(Comparator.comparingInt(occurrence -> occurrence.span().start()));
    return List.copyOf(found);
  }

  private void read(Declaration declaration) {
    if (declaration instanceof House house) {
      house(house);
    } else if (declaration instanceof Ingredient ingredient) {
      ingredient(ingredient);
    } else if (declaration instanceof Formula formula) {
      formula(formula);
    } else if (declaration instanceof Variant variant) {
      variant(variant);
    } else if (declaration instanceof Product product) {
      product(product);
    } else if (declaration instanceof Trial trial) {
      trial(trial);
    } else {
      sheet((Sheet) declaration);
    }
  }

  private void house(House house) {
    define(Symbol.global(Symbol.Kind.HOUSE, house.name().value()), house.name());
    toolNames(house).forEach(name -> define(tool(house, name.value()), name));
  }

  private void ingredient(Ingredient ingredient) {
    define(material(ingredient.name().value()), ingredient.name());
    ingredient.facts().wordsOf("stands-in-for").forEach(this::useMaterial);
  }

  private void formula(Formula formula) {
    lineage = Lineage.of(Optional.of(formula), scope);
    define(material(formula.name().value()), formula.name());
    facts(formula.facts());
    formula.bases().forEach(this::basisDefinition);
    formula.stages().forEach(this::stage);
  }

  private void variant(Variant variant) {
    lineage = Lineage.of(Optional.of(variant), scope);
    define(material(variant.name().value()), variant.name());
    variant.parent().ifPresent(this::useMaterial);
    facts(variant.facts());
    variant.changes().forEach(this::change);
    variant.bases().forEach(this::basisDefinition);
    variant.stages().forEach(this::stage);
  }

  private void change(VariantChange change) {
    if (change instanceof VariantChange.Replace replace) {
      useMaterial(replace.old());
      amount(replace.replacement());
      replace.stage().ifPresent(this::useStage);
    } else if (change instanceof VariantChange.Drop drop) {
      useMaterial(drop.old());
      drop.stage().ifPresent(this::useStage);
    } else if (change instanceof VariantChange.Add add) {
      amount(add.line());
      add.stage().ifPresent(this::useStage);
    } else if (change instanceof VariantChange.Change other) {
      amount(other.line());
      other.stage().ifPresent(this::useStage);
    }
  }

  private void facts(Facts facts) {
    facts.percentBasis().ifPresent(basis -> basis(basis.value()));
    facts.all("expect").flatMap(fact -> fact.names(Connective.OF).stream()).forEach(this::useStage);
  }

  private void basisDefinition(BasisDefinition basis) {
    lineage
        .basis(basis.name().value())
        .ifPresent(symbol -> add(symbol, basis.name(), isOwn(symbol)));
    for (BasisDefinition.Member member : basis.members()) {
      Optional<Symbol> stage = member.stage().isPresent()
          ? Optional.empty()
          : lineage.stage(member.ingredient().value());
      use(stage.orElse(material(member.ingredient().value())), member.ingredient());
      member.stage().ifPresent(this::useStage);
    }
  }

  private void stage(Stage stage) {
    lineage
        .stage(stage.name().value())
        .ifPresent(symbol -> add(symbol, stage.name(), isOwn(symbol)));
    stage.vessel().ifPresent(this::useTool);
    stage.amounts().forEach(this::amount);
    stage.takes().forEach(take -> useStage(take.stage()));
    stage.steps().forEach(this::step);
  }

  private void amount(AmountLine line) {
    if (line.measure().value() instanceof Measure.Share share) {
      share.basis().ifPresent(this::basis);
    }
    useMaterial(line.ingredient());
  }

  /** A name behind {@code of} means, in this order, a declared basis, a stage, or an ingredient. */
  private void basis(Basis basis) {
    if (basis instanceof Basis.Named named) {
      String name = named.name().value();
      lineage
          .basis(name)
          .or(() -> lineage.stage(name))
          .or(() -> knownMaterial(name))
          .ifPresent(symbol -> use(symbol, named.name()));
    }
  }

  private void step(Statement step) {
    things(step.objects().stream());
    for (StatementClause clause : step.clauses()) {
      if (!SPEAKS_OF_NO_THING.contains(clause.word())) {
        things(clause.operands().stream()
            .filter(operand -> clause.word() != Connective.ON || !isSpeed(operand.value())));
      }
    }
  }

  private void things(Stream<Located<Operand>> operands) {
    operands.forEach(operand -> {
      if (operand.value() instanceof Operand.Name name) {
        thing(name.word()).ifPresent(symbol -> use(symbol, operand));
      }
    });
  }

  /** What a plain word of a step means: what the formula itself knows comes first. */
  private Optional<Symbol> thing(String name) {
    return lineage
        .stage(name)
        .or(() -> lineage.weighs(name) ? Optional.of(material(name)) : Optional.empty())
        .or(() -> knownTool(name))
        .or(() -> knownMaterial(name));
  }

  private void product(Product product) {
    define(Symbol.global(Symbol.Kind.PRODUCT, product.name().value()), product.name());
    product.parts().forEach(part -> part.material().ifPresent(this::useMaterial));
    product.facts().wordsOf("spare").forEach(this::useMaterial);
    product
        .facts()
        .all("make")
        .flatMap(fact -> fact.names(Connective.IN).stream())
        .forEach(this::useTool);
  }

  private void trial(Trial trial) {
    define(Symbol.global(Symbol.Kind.TRIAL, trial.name().value()), trial.name());
    trial.formula().ifPresent(formula -> {
      lineage = Lineage.of(formula.value(), scope);
      useMaterial(formula);
    });
    trial.house().ifPresent(house -> use(Symbol.global(Symbol.Kind.HOUSE, house.value()), house));
    for (Statement fact : trial.facts().statements()) {
      if (fact.is("lot")) {
        fact.objectNames().forEach(this::useMaterial);
      } else if (fact.is("measured") || fact.is("changed")) {
        Stream.concat(fact.objectNames().stream(), fact.names(Connective.OF).stream())
            .forEach(name -> ownThing(name.value()).ifPresent(symbol -> use(symbol, name)));
      }
    }
  }

  /** A measurement speaks of a stage or of what is weighed in; its other words are plain. */
  private Optional<Symbol> ownThing(String name) {
    return lineage
        .stage(name)
        .or(() -> lineage.weighs(name) ? Optional.of(material(name)) : Optional.empty());
  }

  private void sheet(Sheet sheet) {
    define(Symbol.global(Symbol.Kind.SHEET, sheet.name().value()), sheet.name());
    sheet.subject().ifPresent(subject -> {
      boolean isProduct = scope.ask(Lookup.of(Kind.PRODUCT, subject.value())).isPresent();
      Symbol.Kind kind = isProduct ? Symbol.Kind.PRODUCT : Symbol.Kind.MATERIAL;
      use(Symbol.global(kind, subject.value()), subject);
    });
  }

  private void useStage(Located<String> name) {
    lineage.stage(name.value()).ifPresent(symbol -> use(symbol, name));
  }

  private void useMaterial(Located<String> name) {
    use(material(name.value()), name);
  }

  private void useTool(Located<String> name) {
    knownTool(name.value()).ifPresent(symbol -> use(symbol, name));
  }

  private Optional<Symbol> knownTool(String name) {
    return scope
        .ask(Lookup.houseFor(entry.uri()))
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof House house ? Optional.of(house) : Optional.empty())
        .filter(house -> toolNames(house).anyMatch(tool -> tool.value().equals(name)))
        .map(house -> tool(house, name));
  }

  private Optional<Symbol> knownMaterial(String name) {
    return scope.ask(Lookup.of(Kind.MATERIAL, name)).map(known -> material(name));
  }

  /** Whether this section owns what it writes, rather than writing a parent's stage or basis anew. */
  private boolean isOwn(Symbol symbol) {
    return entry
        .declaration()
        .filter(declaration -> declaration.name().value().equals(symbol.owner()))
        .isPresent();
  }

  private void define(Symbol symbol, Located<?> name) {
    add(symbol, name, true);
  }

  private void use(Symbol symbol, Located<?> name) {
    add(symbol, name, false);
  }

  private void add(Symbol symbol, Located<?> name, boolean defines) {
    found.add(new Occurrence(symbol, name.span(), defines));
  }

  private static Symbol material(String name) {
    return Symbol.global(Symbol.Kind.MATERIAL, name);
  }

  private static Symbol tool(House house, String name) {
    return new Symbol(Symbol.Kind.TOOL, house.name().value(), name);
  }

  private static Stream<Located<String>> toolNames(House house) {
    return Stream.of(
            house.scales().stream().map(House.Scale::name),
            house.vessels().stream().map(House.Vessel::name),
            house.moulds().stream().map(House.Mould::name),
            house.frames().stream().map(House.Frame::name))
        .flatMap(names -> names);
  }

  private static boolean isSpeed(Operand operand) {
    return operand instanceof Operand.Name name && SPEEDS.contains(name.word());
  }
}
