package dev.kettlemark.cli;

import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;

/** A page of the project's own Markdown as text for a terminal: headings, paragraphs, lists, code. */
final class MarkdownPage {

  private static final String FENCE = "```";
  private static final String CODE_INDENT = "    ";

  private final Paint paint;
  private final int width;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder paragraph = new StringBuilder();

  private MarkdownPage(Paint paint, int width) {
    this.paint = paint;
    this.width = width;
  }

  static List<String> lines(String markdown, Paint paint, int width) {
    MarkdownPage page = new MarkdownPage(paint, width);
    page.read(markdown);
    return page.lines;
  }

  private void read(String markdown) {
    boolean code = false;
    for (String line : markdown.lines().toList()) {
      if (line.startsWith(FENCE)) {
        endParagraph();
        code = !code;
      } else if (code) {
        lines.add(paint.faint((CODE_INDENT + line).stripTrailing()));
      } else if (line.startsWith("#")) {
        endParagraph();
        lines.add(paint.bold(line.replaceFirst("^#+ *", "")));
      } else if (line.isBlank()) {
        endParagraph();
        lines.add("");
      } else if (line.startsWith("- ")) {
        endParagraph();
        paragraph.append(line);
      } else {
        paragraph.append(paragraph.isEmpty() ? "" : " ").append(line.strip());
      }
    }
    endParagraph();
  }

  /** One sentence a line in the source; as much as there is room for on the terminal. */
  private void endParagraph() {
    if (paragraph.isEmpty()) {
      return;
    }
    String indent = paragraph.charAt(0) == '-' ? "  " : "";
    List<String> wrapped = Cells.wrapped(paragraph.toString(), width - indent.length());
    for (int i = 0; i < wrapped.size(); i++) {
      lines.add((i == 0 ? "" : indent) + wrapped.get(i));
    }
    paragraph.setLength(0);
  }
}
