package dev.kettlemark.reading;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The line that opens a section or a stage.
 *
 * @param again whether it reads {@code stage NAME again}
 */
record Heading(
    Located<String> name, Optional<String> title, boolean again, List<Clause> clauses, Span span) {

  static Optional<Heading> of(Section section, List<ReadingProblem> problems) {
    return of((Line.SectionLine) section.lines().get(0), problems);
  }

  private static String unnamed(Line.SectionLine line, List<Atom> atoms) {
    String word = line.keyword().word();
    boolean isReserved = !atoms.isEmpty() && atoms.get(0) instanceof Atom.ReservedAtom;
    return isReserved
        ? "`" + ((Atom.ReservedAtom) atoms.get(0)).text()
            + "` starts a section and can be no name; take another, as in `" + word + " "
            + example(line) + "`"
        : "the " + word + " has no name; a name starts with a letter, as in `" + word + " "
            + example(line) + "`";
  }

  static Optional<Heading> of(Line.SectionLine line, List<ReadingProblem> problems) {
    List<Atom> atoms = new ArrayList<>();
    line.objects().forEach(group -> atoms.addAll(group.atoms()));
    if (atoms.isEmpty() || !(atoms.get(0) instanceof Atom.NameAtom name)) {
      problems.add(new ReadingProblem(line.span(), unnamed(line, atoms)));
      return Optional.empty();
    }
    Optional<String> title = Optional.empty();
    boolean again = false;
    for (Atom atom : atoms.subList(1, atoms.size())) {
      if (atom instanceof Atom.TextAtom text && title.isEmpty()) {
        title = Optional.of(text.text());
      } else if (atom instanceof Atom.NameAtom word && word.text().equals("again") && !again) {
        again = true;
      } else {
        problems.add(new ReadingProblem(
            atom.span(),
            "a name is one word; join its parts with hyphens, and put the display name in quotes"));
        break;
      }
    }
    return Optional.of(new Heading(
        new Located<>(name.text(), name.span()), title, again, line.clauses(), line.span()));
  }

  /** The first name behind a connective, such as the parent behind {@code of}. */
  Optional<Located<String>> nameBehind(Connective connective) {
    return atoms(connective)
        .flatMap(atom -> atom instanceof Atom.NameAtom name
            ? Stream.of(new Located<>(name.text(), name.span()))
            : Stream.empty())
        .findFirst();
  }

  /** The first date behind a connective. */
  Optional<LocalDate> dateBehind(Connective connective) {
    return atoms(connective)
        .flatMap(atom -> atom instanceof Atom.DateAtom date ? date.date().stream() : Stream.empty())
        .findFirst();
  }

  private Stream<Atom> atoms(Connective connective) {
    return clauses.stream()
        .filter(clause -> clause.word() == connective)
        .flatMap(clause -> clause.groups().stream())
        .flatMap(group -> group.atoms().stream());
  }

  private static String example(Line.SectionLine line) {
    return switch (line.keyword()) {
      case HOUSE -> "north-kitchen";
      case INGREDIENT -> "white-sugar";
      case FORMULA, VARIANT -> "soft-nougat";
      case PRODUCT -> "nougat-bite";
      case STAGE -> "foam";
      case TRIAL -> "T-001";
      case SHEET -> "nougat-home";
    };
  }
}
