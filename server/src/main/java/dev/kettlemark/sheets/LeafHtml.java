package dev.kettlemark.sheets;

import java.util.List;

/** A {@link Leaf} as one HTML page that holds all it needs. */
public final class LeafHtml {

  /** What sheets do not have: half a page, three columns, and ways to other pages. */
  private static final String HALF =
      "@media print { @page { size: A5; margin: 10mm; } html { font-size: 8.5pt; } }\n";

  private final Leaf leaf;

  private LeafHtml(Leaf leaf) {
    this.leaf = leaf;
  }

  /** The page by itself. */
  public static String of(Leaf leaf) {
    return new LeafHtml(leaf).page().page();
  }

  /** The page among others. */
  public static String of(Leaf leaf, Frame frame) {
    return frame.around(new LeafHtml(leaf).page());
  }

  /**
   * A page among others whose content is given.
   *
   * @param script what the page can do besides; empty for nothing. It must hold no markup
   */
  public static String of(Leaf leaf, Element main, String script, Frame frame) {
    Element page = page(leaf, main, new LeafHtml(leaf).foot());
    if (!script.isEmpty()) {
      page.child("body").ifPresent(body -> body.add(Element.of("script").data(script)));
    }
    return frame.around(page);
  }

  private Element page() {
    return page(leaf, main(), foot());
  }

  /** The head and the body of a page; what is written across a page of a site is part of its style. */
  private static Element page(Leaf leaf, Element main, Element foot) {
    Element styles = Element.of("style")
        .data(SheetHtml.wholeStyle()
            + PageStyle.text()
            + (leaf.size() == Leaf.Size.HALF ? HALF : ""));
    return Element.of("html")
        .with("xmlns", "http://www.w3.org/1999/xhtml")
        .with("lang", leaf.content().head().request().locale().toLanguageTag())
        .add(
            Element.of("head")
                .add(
                    Element.of("meta").with("charset", "utf-8"),
                    Element.of("meta")
                        .with("name", "viewport")
                        .with("content", "width=device-width, initial-scale=1"),
                    Element.of("title").text(leaf.text(leaf.title())),
                    styles),
            Element.of("body")
                .with("class", leaf.size() == Leaf.Size.HALF ? "leaf half" : "leaf")
                .add(title(leaf), main, foot));
  }

  private static Element title(Leaf leaf) {
    Element header = Element.of("header");
    Element marks = Element.of("p").with("class", "marks");
    leaf.marks().forEach(mark -> marks.add(Element.of("span").text(leaf.text(mark))));
    if (!marks.isEmpty()) {
      header.add(marks);
    }
    return header.add(
        Element.of("h1").text(leaf.text(leaf.title())),
        Element.of("p").with("class", "reader").text(leaf.text(leaf.kind())));
  }

  private Element main() {
    Element main = Element.of("main").with("class", "beside");
    for (Leaf.Section section : leaf.sections()) {
      String id = section.word();
      main.add(Element.of("section")
          .with("id", id)
          .with("aria-labelledby", id + "-title")
          .add(Element.of("h2").with("id", id + "-title").text(leaf.text(section.heading())))
          .addAll(blocks(section.blocks())));
    }
    return main;
  }

  private Element foot() {
    return Element.of("footer").addAll(blocks(leaf.foot()));
  }

  private List<Element> blocks(List<Block> blocks) {
    return SheetHtml.blocks(leaf.content(), blocks);
  }
}
