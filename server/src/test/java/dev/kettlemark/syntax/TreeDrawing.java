package dev.kettlemark.syntax;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.text.Span;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** Draws the tree of a section as indented text, one thing a line, each with its span. */
final class TreeDrawing {

  private final StringBuilder drawn = new StringBuilder();

  private TreeDrawing() {}

  static String of(Section section) {
    TreeDrawing drawing = new TreeDrawing();
    drawing.add(0, "section " + section.keyword().map(SectionWord::word).orElse("(none)"));
    section.lines().forEach(drawing::line);
    section.problems().forEach(p -> drawing.add(0, "problem " + at(p.span()) + " " + p.message()));
    return drawing.drawn.toString();
  }

  private void line(Line line) {
    String kind = line.getClass().getSimpleName();
    add(
        1,
        kind.substring(0, kind.length() - "Line".length()).toLowerCase(Locale.ROOT) + " "
            + at(line.span()));
    if (line instanceof Line.SectionLine section) {
      add(2, "word " + section.keyword().word() + " " + at(section.keywordSpan()));
    } else if (line instanceof Line.AmountLine amount) {
      atom(2, amount.measure());
    } else if (line instanceof Line.SufficientLine sufficient) {
      add(2, "q.s. " + at(sufficient.measure()));
    } else if (line instanceof Line.TakeLine take) {
      take.share().ifPresentOrElse(share -> atom(2, share), () -> add(2, "all"));
      word(2, "source", take.source());
    } else if (line instanceof Line.DefinitionLine definition) {
      word(2, "head", Optional.of(definition.head()));
      word(2, "name", Optional.of(definition.name()));
      for (Line.Member member : definition.members()) {
        word(2, "member", Optional.of(member.name()));
        member.place().ifPresent(place -> word(3, "in", Optional.of(place)));
      }
    } else if (line instanceof Line.StatementLine statement) {
      word(2, "head", Optional.of(statement.head()));
    }
    groups(2, line.objects());
    for (Clause clause : line.clauses()) {
      add(2, "clause " + clause.word().word() + " " + at(clause.wordSpan()));
      groups(3, clause.groups());
    }
  }

  private void groups(int depth, List<Group> groups) {
    for (Group group : groups) {
      add(depth, "group");
      group.atoms().forEach(atom -> atom(depth + 1, atom));
    }
  }

  private void atom(int depth, Atom atom) {
    add(depth, words(atom) + " " + at(atom.span()));
  }

  private static String words(Atom atom) {
    if (atom instanceof Atom.QuantityAtom figure) {
      return "figure `" + figure.number() + "` "
          + figure.quantity().map(TreeDrawing::value).orElse("?");
    }
    if (atom instanceof Atom.NameAtom name) {
      return "name " + name.text();
    }
    if (atom instanceof Atom.TextAtom text) {
      return "text \"" + text.text() + (text.closed() ? "\"" : "");
    }
    if (atom instanceof Atom.DateAtom date) {
      return "date " + date.date().map(Object::toString).orElse("?");
    }
    if (atom instanceof Atom.RateAtom rate) {
      return "per " + rate.unit();
    }
    return atom instanceof Atom.ReservedAtom word ? "reserved " + word.text() : "stray";
  }

  private static String value(Quantity quantity) {
    String range = quantity.isRange() ? " to " + exact(quantity.high()) : "";
    String unit = quantity.unit().map(u -> " " + u.symbol()).orElse("");
    String tolerance = quantity.tolerance().map(t -> " +- " + exact(t)).orElse("");
    return exact(quantity.low()) + range + unit + tolerance;
  }

  private static String exact(BigFraction value) {
    return value.getDenominator().equals(BigInteger.ONE)
        ? value.getNumerator().toString()
        : value.getNumerator() + "/" + value.getDenominator();
  }

  private void word(int depth, String role, Optional<Word> word) {
    add(depth, role + " " + word.map(w -> w.text() + " " + at(w.span())).orElse("?"));
  }

  private static String at(Span span) {
    return span.start() + ".." + span.end();
  }

  private void add(int depth, String text) {
    drawn.append("  ".repeat(depth)).append(text).append('\n');
  }
}
