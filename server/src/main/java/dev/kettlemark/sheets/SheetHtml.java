package dev.kettlemark.sheets;

import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.SheetContent.Head;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A sheet as one page that holds all it needs and prints on A4 and US Letter. */
public final class SheetHtml {

  private static final String STYLE = read("sheet.css");

  private final SheetContent sheet;
  private final Speech speech;
  private final Map<String, String> pictures;

  private SheetHtml(SheetContent sheet, Map<String, String> pictures) {
    this.sheet = sheet;
    this.speech = sheet.speech();
    this.pictures = pictures;
  }

  /** The page of a sheet. */
  public static String of(SheetContent sheet) {
    return of(sheet, Map.of());
  }

  /**
   * The page of a sheet with pictures.
   *
   * @param pictures addresses of pictures, such as {@code data:} ones, by the names of their places
   */
  public static String of(SheetContent sheet, Map<String, String> pictures) {
    return new SheetHtml(sheet, pictures).page().page();
  }

  /** The page of a sheet among others, such as those of a site. */
  public static String of(SheetContent sheet, Frame frame) {
    SheetHtml html = new SheetHtml(sheet, Map.of());
    return frame.around(html.page());
  }

  /** Blocks as they stand on a sheet, for another page that looks like one. */
  static List<Element> blocks(SheetContent page, List<Block> blocks) {
    SheetHtml html = new SheetHtml(page, Map.of());
    return blocks.stream().map(html::block).toList();
  }

  /** The look of all pages. */
  static String style() {
    return STYLE;
  }

  private Element page() {
    Head head = sheet.head();
    String language = head.request().locale().toLanguageTag();
    Element html =
        Element.of("html").with("xmlns", "http://www.w3.org/1999/xhtml").with("lang", language);
    return html.add(
        Element.of("head")
            .add(
                Element.of("meta").with("charset", "utf-8"),
                Element.of("meta")
                    .with("name", "viewport")
                    .with("content", "width=device-width, initial-scale=1"),
                Element.of("title").text(head.title()),
                Element.of("style").data(STYLE),
                RecipeData.element(sheet)),
        Element.of("body")
            .with("class", head.request().reader().word())
            .add(title(), main(), foot()));
  }

  private Element title() {
    Element header = Element.of("header");
    Element marks = Element.of("p").with("class", "marks");
    TitleBlock.marks(sheet).forEach(mark -> marks.add(Element.of("span").addAll(runs(mark))));
    header.add(marks);
    header.add(Element.of("h1").text(sheet.head().title()));
    header.add(Element.of("p").with("class", "reader").addAll(runs(TitleBlock.reader(sheet))));
    TitleBlock.stamp(sheet)
        .forEach(stamp -> header.add(Element.of("p")
            .with("class", sheet.head().isStale() ? "stamp stale" : "stamp")
            .addAll(runs(stamp))));
    return header;
  }

  private Element main() {
    Element main = Element.of("main");
    sheet.parts().stream()
        .filter(part -> part.kind() != Part.Kind.COMPLIANCE)
        .forEach(part -> main.add(section(part)));
    return main;
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
    if (block instanceof Block.Heading heading) {
      return Element.of("h3").addAll(runs(heading.phrase()));
    }
    if (block instanceof Block.Steps steps) {
      return steps(steps);
    }
    if (block instanceof Block.Terms terms) {
      return terms(terms);
    }
    return block instanceof Block.Grid grid ? table(grid) : picture((Block.Picture) block);
  }

  private Element steps(Block.Steps steps) {
    Element list = Element.of("ol").with("class", "steps");
    for (int i = 0; i < steps.steps().size(); i++) {
      Block.Step step = steps.steps().get(i);
      Element text = Element.of("div").add(Element.of("p").addAll(runs(step.text())));
      step.remarks()
          .forEach(
              remark -> text.add(Element.of("p").with("class", "remark").addAll(runs(remark))));
      list.add(Element.of("li")
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
    Element line = Element.of("tr");
    if (row.rank() == Row.Rank.GROUP) {
      return line.with("class", "group")
          .add(Element.of("th")
              .with("scope", "colgroup")
              .with("colspan", Integer.toString(grid.columns().size()))
              .addAll(runs(row.cells().get(0))));
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

  private static String kind(Column column) {
    return column.holds().name().toLowerCase(Locale.ROOT);
  }

  private Element picture(Block.Picture picture) {
    Element figure =
        Element.of("figure").with("class", "picture").with("data-picture", picture.name());
    String address = pictures.getOrDefault(picture.name(), "");
    return address.isEmpty()
        ? figure.with("hidden", "hidden")
        : figure.add(Element.of("img")
            .with("src", address)
            .with("alt", speech.text(Phrase.words("picture." + picture.name()))));
  }

  private List<Element> runs(Phrase phrase) {
    List<Element> elements = new ArrayList<>();
    for (Run run : speech.runs(phrase)) {
      Element element = switch (run.kind()) {
        case PLAIN -> Element.of("span");
        case MARKED -> Element.of("em");
        case FIGURE -> figure(run);
        case ENGLISH -> Element.of("span").with("lang", "en");
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
