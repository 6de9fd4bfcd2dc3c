package dev.kettlemark.syntax;

import dev.kettlemark.text.Lazy;
import dev.kettlemark.text.LineEnds;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * The text of one section, and its tree, with offsets counted from the section's own start.
 *
 * <p>A section is the unit of lexing, parsing and of every later result. It does not know where in a
 * file it stands, so an edit above it leaves it, and all that was computed from it, as it is. Two
 * sections are the same only if they are one object: results hang on it.
 *
 * <p>The tree is read when it is first asked for. Most of the pantry never is.
 */
public final class Section {

  private static final int LONGEST_HEADING = 1_000;

  private final String text;
  private final String readable;
  private final Lazy<SectionTree> tree;

  /** What an earlier text was read as that is much like this one; let go of when this one is read. */
  private final AtomicReference<@Nullable SectionTree> model;

  private Section(String text, String readable, @Nullable SectionTree model) {
    this.text = text;
    this.readable = readable;
    this.tree = Lazy.of(this::read);
    this.model = new AtomicReference<>(model);
  }

  /** A section by its text, which ends where the next one starts. */
  static Section of(String text) {
    return new Section(text, text, null);
  }

  /** A section that stands in the place of this one, with a text that is much like its own. */
  Section changedTo(String other) {
    return new Section(other, other, tree.made().orElseGet(model::get));
  }

  /** A section of a text so long that only its first line is read, and the start of that. */
  static Section ofHeading(String text) {
    int secondLine = LineEnds.next(text, 0);
    int end = secondLine < 0 ? text.length() : secondLine;
    String line = text.substring(0, Math.min(end, LONGEST_HEADING)).stripTrailing();
    return new Section(text, line, null);
  }

  private SectionTree read() {
    SectionTree before = model.getAndSet(null);
    return before == null ? SectionReader.read(readable) : SectionReader.read(readable, before);
  }

  public String text() {
    return text;
  }

  /** The word that it opens with; empty for text before the first section. */
  public Optional<SectionWord> keyword() {
    return tree.get().keyword();
  }

  /** Lets go of the tree, which is read again when somebody asks for it. */
  public void letGo() {
    tree.forget();
  }

  /** One for each line of the text, or the first alone where {@link ParsedText#isHeadingsOnly}. */
  public List<Line> lines() {
    return tree.get().lines();
  }

  /** Tokens in order, comments included. */
  public List<Lexeme> lexemes() {
    return tree.get().lexemes();
  }

  /** What could not be read. */
  public List<SyntaxProblem> problems() {
    return tree.get().problems();
  }
}
