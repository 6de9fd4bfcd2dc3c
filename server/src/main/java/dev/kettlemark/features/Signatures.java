package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.model.ClauseWords;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactForms;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Form;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.SectionWord;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the step or the fact at the cursor takes, and which part of it is being written. */
public final class Signatures {

  private static final Pattern SPACE = Pattern.compile(" ");

  private Signatures() {}

  /**
   * The ways to write a line.
   *
   * @param active which of them the line follows so far
   */
  public record Help(List<Signature> signatures, int active) {

    public Help {
      signatures = List.copyOf(signatures);
    }
  }

  /**
   * One way to write a line.
   *
   * @param documentation one line of Markdown
   * @param active the part at the cursor; empty where the line says what this way does not have
   */
  public record Signature(
      String label, String documentation, List<Parameter> parameters, Optional<Integer> active) {

    public Signature {
      parameters = List.copyOf(parameters);
    }
  }

  /**
   * A part of a way to write a line.
   *
   * @param start where it starts in the label
   * @param end where it ends in the label
   * @param documentation what it says; possibly empty
   */
  public record Parameter(int start, int end, String documentation) {}

  /** Empty where the line is no step and no fact, before the end of its first word, in comments and in quotes. */
  public static Optional<Help> at(Document document, int offset) {
    return CursorLine.at(document, offset)
        .filter(cursor -> !cursor.before().isEmpty())
        .flatMap(cursor -> form(cursor).map(form -> help(cursor, form)));
  }

  private static Optional<Form> form(CursorLine cursor) {
    String head = cursor.head();
    if (cursor.stage().isPresent()) {
      return Verb.of(head)
          .map(Verb::form)
          .or(() -> FactWord.STAGE.contains(head)
              ? named(FactForms.FORMULA.stream(), head)
              : Optional.empty());
    }
    return cursor.entry().section().keyword().flatMap(section -> named(forms(section), head));
  }

  private static Optional<Form> named(Stream<Form> forms, String word) {
    return forms.filter(form -> form.word().equals(word)).findFirst();
  }

  /** What the facts of a section take, in the order of the documentation. */
  static Stream<Form> forms(SectionWord section) {
    return switch (section) {
      case HOUSE -> FactForms.HOUSE.stream();
      case INGREDIENT -> FactForms.INGREDIENT.stream();
      case FORMULA -> FactForms.FORMULA.stream();
      case VARIANT -> Stream.concat(FactForms.VARIANT_CHANGE.stream(), FactForms.FORMULA.stream());
      case PRODUCT -> FactForms.PRODUCT.stream();
      case TRIAL -> FactForms.TRIAL.stream();
      case SHEET -> FactForms.SHEET.stream();
      case STAGE -> Stream.empty();
    };
  }

  private static Help help(CursorLine cursor, Form form) {
    List<Form.Alternative> alternatives = form.alternatives();
    Optional<String> first = cursor.before().stream()
        .skip(1)
        .filter(token -> token.is(Lexeme.Kind.NAME) || token.is(Lexeme.Kind.CONNECTIVE))
        .map(Token::text)
        .findFirst();
    int active = IntStream.range(0, alternatives.size())
        .filter(i -> first
            .filter(word -> words(alternatives.get(i)).anyMatch(word::equals))
            .isPresent())
        .findFirst()
        .orElse(0);
    return new Help(
        alternatives.stream().map(way -> signature(cursor, form, way)).toList(), active);
  }

  private static Stream<String> words(Form.Alternative way) {
    return SPACE.splitAsStream(way.label()).skip(1);
  }

  private static Signature signature(CursorLine cursor, Form form, Form.Alternative way) {
    boolean isStep = cursor.stage().isPresent();
    return new Signature(
        way.label(),
        plain(form.meaning()),
        way.parts().stream()
            .map(part -> new Parameter(part.start(), part.end(), isStep ? meaning(part) : ""))
            .toList(),
        active(cursor, way));
  }

  /** Without links into the page of the reference. */
  static String plain(String meaning) {
    return meaning.replaceAll("[;,] see (below|\\[[^]]*]\\([^)]*\\))", "");
  }

  private static String meaning(Form.Part part) {
    return part.openers().stream()
        .findFirst()
        .map(opener -> ClauseWords.meaning(Connective.ofWord(opener)))
        .orElse("what it acts on; without it all that the stage holds");
  }

  private static Optional<Integer> active(CursorLine cursor, Form.Alternative way) {
    List<String> openers = cursor.before().stream()
        .skip(1)
        .filter(token -> token.is(Lexeme.Kind.CONNECTIVE) || token.is(Lexeme.Kind.NAME))
        .map(Token::text)
        .filter(Form::opens)
        .toList();
    if (openers.isEmpty()) {
      return index(way, part -> part.openers().isEmpty());
    }
    String last = openers.get(openers.size() - 1);
    Optional<String> outer =
        openers.size() > 1 ? Optional.of(openers.get(openers.size() - 2)) : Optional.empty();
    return outer
        .flatMap(word ->
            index(way, part -> part.opensWith(word) && part.openers().indexOf(last) > 0))
        .or(() -> index(way, part -> part.opensWith(last)))
        .or(() -> index(way, part -> part.openers().contains(last)));
  }

  private static Optional<Integer> index(Form.Alternative way, Predicate<Form.Part> test) {
    return IntStream.range(0, way.parts().size())
        .filter(i -> test.test(way.parts().get(i)))
        .boxed()
        .findFirst();
  }
}
