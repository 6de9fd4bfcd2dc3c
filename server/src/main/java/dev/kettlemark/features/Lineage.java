package dev.kettlemark.features;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Variant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A formula and what it is a variant of.
 *
 * @param members from the formula itself to the first parent; empty for what is no formula
 */
record Lineage(List<Declaration> members) {

  Lineage {
    members = List.copyOf(members);
  }

  static Lineage of(Optional<Declaration> declaration, Scope scope) {
    List<Declaration> members = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Optional<Declaration> next = declaration;
    while (next.isPresent() && seen.add(next.get().name().value())) {
      Declaration member = next.get();
      if (!(member instanceof Formula) && !(member instanceof Variant)) {
        break;
      }
      members.add(member);
      next = member instanceof Variant variant
          ? variant.parent().flatMap(parent -> named(parent.value(), scope))
          : Optional.empty();
    }
    return new Lineage(members);
  }

  /** The lineage of the formula that a name means. */
  static Lineage of(String name, Scope scope) {
    return of(named(name, scope), scope);
  }

  /** The stage of a name, owned by the eldest member that has it, since its variants only write it anew. */
  Optional<Symbol> stage(String name) {
    return eldest(member -> stages(member).stream().anyMatch(s -> isNamed(s.name(), name)))
        .map(owner -> new Symbol(Symbol.Kind.STAGE, owner, name));
  }

  /** The declared basis of a name, owned by the eldest member that declares it. */
  Optional<Symbol> basis(String name) {
    return eldest(member -> bases(member).stream().anyMatch(b -> isNamed(b.name(), name)))
        .map(owner -> new Symbol(Symbol.Kind.BASIS, owner, name));
  }

  /** Whether some member weighs in a material of that name. */
  boolean weighs(String name) {
    return members.stream()
        .anyMatch(member -> Mentions.used(member).stream().anyMatch(used -> isNamed(used, name)));
  }

  private Optional<String> eldest(Predicate<Declaration> has) {
    for (int i = members.size() - 1; i >= 0; i--) {
      if (has.test(members.get(i))) {
        return Optional.of(members.get(i).name().value());
      }
    }
    return Optional.empty();
  }

  private static Optional<Declaration> named(String name, Scope scope) {
    return scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
  }

  private static List<Stage> stages(Declaration member) {
    return member instanceof Formula formula ? formula.stages() : ((Variant) member).stages();
  }

  private static List<BasisDefinition> bases(Declaration member) {
    return member instanceof Formula formula ? formula.bases() : ((Variant) member).bases();
  }

  private static boolean isNamed(Located<String> written, String name) {
    return written.value().equals(name);
  }
}
