package dev.kettlemark.analysis;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Which formulas a formula is made of, seen from the declarations alone. */
public final class Uses {

  /** A formula of formulas of formulas: on the bench it never goes down further than a handful. */
  public static final int MOST_LEVELS = 24;

  private Uses() {}

  /**
   * The shortest way by which a declaration comes to use itself.
   *
   * @return the names from the declaration back to itself, both ends included; empty where there is no
   *     such way of at most {@link #MOST_LEVELS} steps
   */
  public static Optional<List<String>> circle(Declaration declaration, Scope scope) {
    String start = declaration.name().value();
    Map<String, String> usedBy = new HashMap<>();
    List<Declaration> level = List.of(declaration);
    for (int depth = 0; depth < MOST_LEVELS && !level.isEmpty(); depth++) {
      List<Declaration> next = new ArrayList<>();
      for (Declaration from : level) {
        for (Located<String> used : Mentions.used(from)) {
          String name = used.value();
          if (usedBy.putIfAbsent(name, from.name().value()) == null) {
            if (name.equals(start)) {
              return Optional.of(wayBack(start, usedBy));
            }
            declaration(name, scope).ifPresent(next::add);
          }
        }
      }
      level = next;
    }
    return Optional.empty();
  }

  /** Whether what a declaration uses goes down further than {@link #MOST_LEVELS}, as circles do. */
  public static boolean isTooDeep(Declaration declaration, Scope scope) {
    Set<String> level = Set.of(declaration.name().value());
    Map<String, Set<String>> known = new HashMap<>();
    known.put(declaration.name().value(), names(declaration));
    for (int depth = 0; depth < MOST_LEVELS && !level.isEmpty(); depth++) {
      Set<String> next = new LinkedHashSet<>();
      for (String name : level) {
        next.addAll(known.computeIfAbsent(
            name, n -> declaration(n, scope).map(Uses::names).orElse(Set.of())));
      }
      level = next;
    }
    return !level.isEmpty();
  }

  private static Set<String> names(Declaration declaration) {
    return Mentions.used(declaration).stream()
        .map(Located::value)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static List<String> wayBack(String start, Map<String, String> usedBy) {
    Deque<String> way = new ArrayDeque<>();
    String name = start;
    do {
      way.addFirst(name);
      name = usedBy.getOrDefault(name, start);
    } while (!name.equals(start));
    way.addFirst(start);
    return List.copyOf(way);
  }

  private static Optional<Declaration> declaration(String name, Scope scope) {
    return scope.ask(Lookup.of(Kind.MATERIAL, name)).flatMap(Entry::declaration);
  }
}
