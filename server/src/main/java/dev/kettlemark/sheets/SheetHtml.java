package dev.kettlemark.sheets;

import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.SheetContent.Head;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A sheet as one page that holds all it needs and prints on A4 and US Letter. */
public final class SheetHtml {

  private static final String PAGE_STYLE = read("page.css");

  private static final String STYLE = read("sheet.css");

  private final SheetContent sheet;
  private final Speech speech;
  private final boolean isMarked;

  /** The marks that stand already: a formula may be made twice for one product. */
  private final Set<Mark> marks = new HashSet<>();

  private String pageStyle = PAGE_STYLE;

  /** What stands around the sheet has a look of its own. */
  private String frameStyle = "";

  private SheetHtml(SheetContent sheet, boolean isMarked) {
    this.sheet = sheet;
    this.speech = sheet.speech();
    this.isMarked = isMarked;
  }

  /** The page of a sheet. */
  public static String of(SheetContent sheet) {
    return new SheetHtml(sheet, false).page().page();
  }

  /**
   * The page of a sheet for a paper, to be printed by a program that is told no size.
   *
   * @param paper as CSS Paged Media Module Level 3, section 7.1, names it, such as {@code A4}
   */
  public static String onPaper(SheetContent sheet, String paper) {
    SheetHtml html = new SheetHtml(sheet, false);
    html.pageStyle =
        PAGE_STYLE + "@page { size: " + paper + "; @bottom-left { content: \"" + quoted(html.mark())
            + "\"; font: 8pt \"Liberation Serif\", Georgia, serif; color: #444; } }\n";
    return html.page().page();
  }

  /** By what a page that has fallen out of its sheet is known. */
  private String mark() {
    String marks = TitleBlock.marks(sheet).stream()
        .limit(2)
        .map(speech::text)
        .collect(Collectors.joining(" · "));
    return marks.isEmpty() ? sheet.head().title() : marks + " · " + sheet.head().title();
  }

  /** A CSS string, in which whatever is no letter or figure is escaped: CSS Syntax Level 3, 4.3.7. */
  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder();
    text.codePoints().forEach(c -> {
      if (Character.isLetterOrDigit(c) || c == ' ') {
        quoted.appendCodePoint(c);
      } else {
        quoted.append('\\').append(Integer.toHexString(c)).append(' ');
      }
    });
    return quoted.toString();
  }

  /**
   * The sheet as a part of a page that has more in it; what tells a line of the text carries the id of its
   * {@link Mark}.
   */
  public static String fragment(SheetContent sheet) {
    return new SheetHtml(sheet, true).fragment().markup();
  }

  /** The look of the pictures in a fragment, each for itself alone. */
  public static String pictureStyle(SheetContent sheet) {
    return sheet.parts().stream()
        .flatMap(part -> part.blocks().stream())
        .flatMap(block -> block instanceof Block.Drawing drawing
            ? Stream.of(drawing.picture().style())
            : Stream.empty())
        .collect(Collectors.joining());
  }

  /** The look of what stands in a sheet; it asks for the colours {@code --ink}, {@code --soft} and so on. */
  public static String style() {
    return STYLE;
  }

  private Element fragment() {
    return Element.of("article")
        .with("class", "sheet " + sheet.head().request().reader().word())
        .with("lang", language())
        .add(title(), parts(Element.of("div")), foot());
  }

  private String language() {
    return sheet.head().request().locale().toLanguageTag();
  }

  /** The page of a sheet among others, such as those of a site. */
  public static String of(SheetContent sheet, Frame frame) {
    SheetHtml html = new SheetHtml(sheet, false);
    html.frameStyle = PageStyle.text();
    return frame.around(html.page());
  }

  /** Blocks as they stand on a sheet, for another page that looks like one. */
  static List<Element> blocks(SheetContent page, List<Block> blocks) {
    SheetHtml html = new SheetHtml(page, false);
    return blocks.stream().map(html::block).toList();
  }

  /** The look of all pages. */
  static String wholeStyle() {
    return PAGE_STYLE + STYLE;
  }

  private Element page() {
    Head head = sheet.head();
    Element html =
        Element.of("html").with("xmlns", "http://www.w3.org/1999/xhtml").with("lang", language());
    return html.add(
        Element.of("head")
            .add(
                Element.of("meta").with("charset", "utf-8"),
                Element.of("meta")
                    .with("name", "viewport")
                    .with("content", "width=device-width, initial-scale=1"),
                Element.of("title").text(head.title()),
                Element.of("style").data("\n" + pageStyle + STYLE + frameStyle),
                RecipeData.element(sheet)),
        Element.of("body")
            .with("class", head.request().reader().word())
            .add(title(), parts(Element.of("main")).add(foot())));
  }

  private Element title() {
    Element header = Element.of("header");
    Element marks = Element.of("p").with("class", "marks");
    TitleBlock.marks(sheet).forEach(mark -> marks.add(Element.of("span").addAll(runs(mark))));
    header.add(marks);
    Element heading = Element.of("h1");
    sheet.head().titleIn().ifPresent(language -> heading.with("lang", language));
    header.add(heading.text(sheet.head().title()));
    header.add(Element.of("p").with("class", "reader").addAll(runs(TitleBlock.reader(sheet))));
    TitleBlock.stamp(sheet)
        .forEach(stamp -> header.add(Element.of("p")
            .with("class", sheet.head().isStale() ? "stamp stale" : "stamp")
            .addAll(runs(stamp))));
    return header;
  }

  private Element parts(Element around) {
    around.with("class", "parts");
    sheet.parts().stream()
        .filter(part -> part.kind() != Part.Kind.COMPLIANCE)
        .forEach(part -> around.add(section(part)));
    return around;
  }

  private Element foot() {
    Element footer = Element.of("footer");
    sheet
        .part(Part.Kind.COMPLIANCE)
        .ifPresent(part -> part.blocks().forEach(block -> footer.add(block(block))));
    return footer;
  }

  private Element section(Part part) {
    String word = part.kind().word();
    Element section =
        Element.of("section").with("id", word).with("aria-labelledby", word + "-title");
    section.add(Element.of("h2")
        .with("id", word + "-title")
        .text(speech.text(Phrase.words("part." + word))));
    part.blocks().forEach(block -> section.add(block(block)));
    return section;
  }

  private Element block(Block block) {
    if (block instanceof Block.Lines lines) {
      Element div = Element.of("div").with("class", "lines");
      lines.lines().forEach(line -> div.add(Element.of("p").addAll(runs(line))));
      return div;
    }
    if (block instanceof Block.Points points) {
      Element list = Element.of("ul");
      points.points().forEach(point -> list.add(Element.of("li").addAll(runs(point))));
      return list;
    }
    if (block instanceof Block.Cautions cautions) {
      return cautions(cautions);
    }
    if (block instanceof Block.Heading heading) {
      return marked(Element.of("h3"), heading.mark()).addAll(runs(heading.phrase()));
    }
    if (block instanceof Block.Steps steps) {
      return steps(steps);
    }
    if (block instanceof Block.Terms terms) {
      return terms(terms);
    }
    return block instanceof Block.Grid grid ? table(grid) : picture((Block.Drawing) block);
  }

  private Element cautions(Block.Cautions block) {
    Element list = Element.of("ul");
    if (block.signs() == Block.Cautions.Signs.NONE) {
      block.cautions().forEach(one -> list.add(Element.of("li").addAll(runs(one.text()))));
      return list;
    }
    boolean isBefore = block.signs() == Block.Cautions.Signs.BEFORE;
    list.with("class", isBefore ? "signs" : "signs behind");
    for (Block.Caution one : block.cautions()) {
      Element text = Element.of("span").addAll(runs(one.text()));
      Element sign =
          CautionSign.of(one.word()).orElseGet(() -> Element.of("span").with("class", "sign"));
      list.add(isBefore ? Element.of("li").add(sign, text) : Element.of("li").add(text, sign));
    }
    return list;
  }

  private Element steps(Block.Steps steps) {
    Element list = Element.of("ol").with("class", "steps");
    for (int i = 0; i < steps.steps().size(); i++) {
      Block.Step step = steps.steps().get(i);
      Element text = Element.of("div").add(Element.of("p").addAll(runs(step.text())));
      step.remarks()
          .forEach(
              remark -> text.add(Element.of("p").with("class", "remark").addAll(runs(remark))));
      list.add(marked(Element.of("li"), step.mark())
          .add(
              Element.of("span").with("class", "number").text(steps.stage() + "." + (i + 1)),
              text));
    }
    return list;
  }

  private Element terms(Block.Terms terms) {
    Element list = Element.of("dl");
    terms
        .terms()
        .forEach(term -> list.add(Element.of("div")
            .add(
                Element.of("dt").addAll(runs(term.word())),
                Element.of("dd").addAll(runs(term.told())))));
    return list;
  }

  private Element table(Block.Grid grid) {
    Element head = Element.of("tr");
    grid.columns()
        .forEach(column -> head.add(Element.of("th")
            .with("scope", "col")
            .with("class", kind(column))
            .addAll(runs(column.heading()))));
    Element body = Element.of("tbody");
    grid.rows().forEach(row -> body.add(row(grid, row)));
    return Element.of("table")
        .add(
            Element.of("caption").addAll(runs(grid.caption())),
            Element.of("thead").add(head),
            body);
  }

  private Element row(Block.Grid grid, Row row) {
    Element line = marked(Element.of("tr"), row.mark());
    if (row.rank() == Row.Rank.GROUP) {
      return line.with("class", "group")
          .add(Element.of("th")
              .with("scope", "colgroup")
              .with("colspan", Integer.toString(grid.columns().size()))
              .addAll(runs(row.cells().get(0))));
    }
    if (row.rank() == Row.Rank.ACROSS) {
      return line.with("class", "across")
          .add(
              Element.of("th").with("scope", "row").addAll(runs(row.cells().get(0))),
              Element.of("td")
                  .with("colspan", Integer.toString(grid.columns().size() - 1))
                  .addAll(runs(row.cells().get(1))));
    }
    if (row.rank() == Row.Rank.TOTAL) {
      line.with("class", "total");
    }
    for (int i = 0; i < row.cells().size(); i++) {
      Element cell = i == 0 ? Element.of("th").with("scope", "row") : Element.of("td");
      line.add(cell.with("class", kind(grid.columns().get(i)))
          .addAll(runs(row.cells().get(i))));
    }
    return line;
  }

  private Element marked(Element element, Optional<Mark> mark) {
    mark.filter(one -> isMarked && marks.add(one)).ifPresent(one -> element.with("id", one.id()));
    return element;
  }

  private static String kind(Column column) {
    return column.holds().name().toLowerCase(Locale.ROOT);
  }

  /** Pictures speak English, whatever the language of the sheet. */
  private Element picture(Block.Drawing drawing) {
    String word = drawing.kind().word();
    Element figure = Element.of("figure").with("class", "picture " + word);
    if (!isMarked) {
      // On a telephone it is wider than the page, and keys move it as fingers do.
      figure.with("tabindex", "0");
    }
    if (!drawing.isGoingOn()) {
      figure.add(Element.of("figcaption").text(speech.text(Phrase.words("picture." + word))));
    }
    return figure.add(Element.of("div")
        .with("lang", "en")
        .picture(isMarked ? drawing.picture().bare() : drawing.picture().svg()));
  }

  private List<Element> runs(Phrase phrase) {
    List<Element> elements = new ArrayList<>();
    for (Run run : speech.runs(phrase)) {
      Element element = switch (run.kind()) {
        case PLAIN -> Element.of("span");
        case MARKED -> Element.of("em");
        case FIGURE -> figure(run);
        case FOREIGN -> Element.of("span").with("lang", run.language().orElse("en"));
      };
      elements.add(element.text(run.text()));
    }
    return elements;
  }

  /** A figure carries its id and its full value, for whoever reads the page by program. */
  private static Element figure(Run run) {
    Element data = Element.of("data");
    run.figure()
        .ifPresent(figure -> data.with("data-id", figure.id())
            .with("data-unit", figure.unit().symbol())
            .with("data-basis", figure.basis().name().toLowerCase(Locale.ROOT))
            .with(
                "value",
                figure.reach().map(reach -> Double.toString(reach.best())).orElse("")));
    return data;
  }

  private static String read(String name) {
    String path = "/dev/kettlemark/sheets/" + name;
    try (InputStream in = SheetHtml.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException(path + " is not in the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
