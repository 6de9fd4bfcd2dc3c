package dev.kettlemark.features;

import dev.kettlemark.model.State;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.syntax.Word;
import java.util.Optional;

/** A state by what it looks like, and a verb by what is done. */
final class WordHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .statement()
        .filter(step -> isFormula(pointed))
        .flatMap(step -> pointed
            .word()
            .flatMap(word -> text(step, word)
                .map(told -> pointed.text(new Markdown().paragraph(told), word.span()))));
  }

  private static Optional<String> text(Line.StatementLine step, Word word) {
    if (word.equals(step.head())) {
      return Verb.of(word.text()).map(verb -> "**" + verb.word() + "** — " + verb.meaning());
    }
    return state(word.text());
  }

  private static Optional<String> state(String word) {
    Optional<SugarStage> stage = SugarStage.ofWord(word);
    String range =
        stage.map(s -> ", " + Display.celsius(s.range()) + " at sea level").orElse("");
    return State.of(word)
        .map(State::look)
        .or(() -> stage.map(SugarStage::look))
        .map(look -> "**" + word + "** — " + look + range);
  }

  private static boolean isFormula(Pointed pointed) {
    return pointed
        .entry()
        .section()
        .keyword()
        .filter(word -> word == SectionWord.FORMULA || word == SectionWord.VARIANT)
        .isPresent();
  }
}
