package dev.kettlemark.sheets;

import java.util.stream.Collectors;

/** A {@link Leaf} as Markdown, one sentence on each line. */
public final class LeafMarkdown {

  private LeafMarkdown() {}

  public static String of(Leaf leaf) {
    SheetContent page = leaf.content();
    StringBuilder out = new StringBuilder("# ")
        .append(SheetMarkdown.line(page, leaf.title()))
        .append("\n\n")
        .append(SheetMarkdown.line(page, leaf.kind()))
        .append("\n");
    if (!leaf.marks().isEmpty()) {
      out.append("\n")
          .append(leaf.marks().stream()
              .map(mark -> SheetMarkdown.line(page, mark))
              .collect(Collectors.joining(" · ")))
          .append("\n");
    }
    for (Leaf.Section section : leaf.sections()) {
      out.append("\n## ").append(SheetMarkdown.line(page, section.heading())).append("\n");
      out.append(SheetMarkdown.blocks(page, section.blocks()));
    }
    return out.append("\n---\n").append(SheetMarkdown.blocks(page, leaf.foot())).toString();
  }
}
