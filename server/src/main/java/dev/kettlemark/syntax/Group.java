package dev.kettlemark.syntax;

import dev.kettlemark.text.Span;
import java.util.List;

/** What stands between two commas; never empty. */
public record Group(List<Atom> atoms) {

  public Group {
    atoms = List.copyOf(atoms);
  }

  public Span span() {
    return atoms.get(0).span().to(atoms.get(atoms.size() - 1).span());
  }

  static List<Group> shiftedBy(List<Group> groups, int distance) {
    return groups.stream()
        .map(group ->
            new Group(group.atoms.stream().map(atom -> atom.shiftedBy(distance)).toList()))
        .toList();
  }
}
