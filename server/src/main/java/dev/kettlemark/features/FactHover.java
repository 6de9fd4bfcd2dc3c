package dev.kettlemark.features;

import dev.kettlemark.model.FactForms;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Form;
import dev.kettlemark.model.Verb;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.syntax.Word;
import java.util.Optional;
import java.util.stream.Stream;

/** A fact word by what it takes and means, and a word of its list by its meaning. */
final class FactHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .statement()
        .filter(line -> !isStep(pointed, line))
        .flatMap(line -> pointed
            .word()
            .flatMap(word -> text(pointed, line, word)
                .map(told -> pointed.text(new Markdown().paragraph(told), word.span()))));
  }

  private static boolean isStep(Pointed pointed, Line.StatementLine line) {
    return isInStage(pointed) && Verb.of(line.head().text()).isPresent();
  }

  private static boolean isInStage(Pointed pointed) {
    return pointed.entry().section().lines().stream()
        .takeWhile(line -> line.span().start() <= pointed.offset())
        .anyMatch(line ->
            line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE);
  }

  private static Optional<String> text(Pointed pointed, Line.StatementLine line, Word word) {
    if (word.equals(line.head())) {
      return form(pointed, word.text()).map(FactHover::text);
    }
    return list(line).stream()
        .flatMap(fact -> Vocabulary.of(fact).stream())
        .filter(term -> term.word().equals(word.text()))
        .findFirst()
        .map(term -> "**" + Markdown.plain(term.word()) + "** — " + term.meaning());
  }

  /** What is withdrawn is named behind the fact whose word it is. */
  private static Optional<String> list(Line.StatementLine line) {
    String head = line.head().text();
    return head.equals("withdraw")
        ? Pointed.atoms(line)
            .flatMap(atom ->
                atom instanceof Atom.NameAtom name ? Stream.of(name.text()) : Stream.empty())
            .findFirst()
        : Optional.of(head);
  }

  private static Optional<Form> form(Pointed pointed, String word) {
    Stream<Form> forms = isInStage(pointed)
        ? FactForms.FORMULA.stream().filter(form -> FactWord.STAGE.contains(form.word()))
        : pointed.entry().section().keyword().stream().flatMap(Signatures::forms);
    return forms.filter(form -> form.word().equals(word)).findFirst();
  }

  private static String text(Form form) {
    return "**" + form.word() + "** " + form.written() + " — " + Signatures.plain(form.meaning());
  }
}
