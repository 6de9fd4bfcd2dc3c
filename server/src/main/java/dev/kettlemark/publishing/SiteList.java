package dev.kettlemark.publishing;

import dev.kettlemark.sheets.Element;
import dev.kettlemark.sheets.Frame;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.Phrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The list of all that is published, which can be searched and is whole without a script. */
final class SiteList {

  private static final List<String> COLUMNS =
      List.of("name", "code", "version", "since", "yield", "allergens", "claims", "pages");

  private final Leaf speaker;
  private final Items source;
  private final Map<Item, List<Page>> pages;

  SiteList(Leaf speaker, Items source, Map<Item, List<Page>> pages) {
    this.speaker = speaker;
    this.source = source;
    this.pages = pages;
  }

  String text() {
    Element main = Element.of("main");
    main.add(search());
    groups().forEach((group, items) -> main.add(section(group, items)));
    Frame frame = new Frame(
        say("site.label"),
        say("site.skip"),
        List.of(
            new Frame.Way(say("site.home"), Optional.empty()),
            new Frame.Way(say("site.changes"), Optional.of(Publication.CHANGES))),
        Optional.empty());
    return LeafHtml.of(speaker, main, SiteScript.TEXT, frame);
  }

  private String say(String key, Phrase... with) {
    return speaker.text(Phrase.words(key, with));
  }

  /** Hidden until the script has taken hold of it. */
  private Element search() {
    String found = say("site.found", Phrase.given("#"), Phrase.given("##"));
    return Element.of("div")
        .with("id", "search")
        .with("role", "search")
        .with("hidden", "hidden")
        .add(
            Element.of("label").with("for", "words").text(say("site.search")),
            Element.of("input")
                .with("id", "words")
                .with("type", "search")
                .with("autocomplete", "off")
                .with("spellcheck", "false"),
            Element.of("p").with("id", "found").with("role", "status").with("data-found", found));
  }

  private record Group(Item.Sort sort, String status) {}

  private Map<Group, List<Item>> groups() {
    Map<Group, List<Item>> groups = new LinkedHashMap<>();
    for (Item.Sort sort : Item.Sort.values()) {
      for (Item item : pages.keySet()) {
        if (item.sort() == sort) {
          groups
              .computeIfAbsent(new Group(sort, item.row().status()), key -> new ArrayList<>())
              .add(item);
        }
      }
    }
    return groups;
  }

  private Element section(Group group, List<Item> items) {
    String sort = group.sort().name().toLowerCase(Locale.ROOT);
    String id = FileNames.of(sort + (group.status().isEmpty() ? "" : "-" + group.status()));
    Phrase status = group.status().isEmpty()
        ? Phrase.words("site.status.none")
        : new Phrase.Words("status." + group.status(), List.of());
    String heading = say("site.group", Phrase.words("site.part." + sort), status);
    return Element.of("section")
        .with("id", id)
        .with("class", "group")
        .with("aria-labelledby", id + "-title")
        .add(Element.of("h2").with("id", id + "-title").text(heading), table(heading, items));
  }

  private Element table(String heading, List<Item> items) {
    Element head = Element.of("tr");
    COLUMNS.forEach(column ->
        head.add(Element.of("th").with("scope", "col").text(say("site.column." + column))));
    Element body = Element.of("tbody");
    items.forEach(item -> body.add(row(item)));
    return Element.of("table")
        .with("class", "items")
        .add(
            Element.of("caption").with("class", "unseen").text(heading),
            Element.of("thead").add(head),
            body);
  }

  private Element row(Item item) {
    ItemRow row = item.row();
    List<Page> own = pages.getOrDefault(item, List.of());
    Element name = Element.of("th")
        .with("scope", "row")
        .add(Element.of("a").with("href", own.get(0).path()).text(row.title()));
    if (item.isDraft()) {
      name.add(Element.of("span").with("class", "mark").text(say("site.draft")));
    }
    Element line = Element.of("tr").with("data-words", words(item)).add(name);
    List<String> cells =
        List.of(row.code(), row.version(), row.since(), row.yield(), row.allergens(), row.claims());
    for (int i = 0; i < cells.size(); i++) {
      // Where there is no room for columns, each figure says what it is.
      line.add(Element.of("td")
          .with("data-column", say("site.column." + COLUMNS.get(i + 1)))
          .text(cells.get(i)));
    }
    Element links = Element.of("ul");
    own.forEach(page -> links.add(Element.of("li")
        .add(Element.of("a")
            .with("href", page.path())
            .with("aria-label", row.title() + ": " + word(page))
            .text(word(page)))));
    return line.add(Element.of("td").add(links));
  }

  /** For whom a sheet is, or what a comparison is beside. */
  private String word(Page page) {
    if (page.path().startsWith("compare/")) {
      return say("site.compare");
    }
    String path = page.path();
    return say("site.reader."
        + path.substring(path.lastIndexOf('-') + 1, path.length() - ".html".length()));
  }

  private String words(Item item) {
    ItemRow row = item.row();
    List<String> words = new ArrayList<>(
        List.of(row.name(), row.title(), row.code(), row.status(), row.allergens(), row.claims()));
    words.addAll(source.ingredients(item));
    return String.join(" ", words)
        .toLowerCase(speaker.content().head().request().locale());
  }
}
