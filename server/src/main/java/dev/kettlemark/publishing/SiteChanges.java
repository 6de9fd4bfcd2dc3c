package dev.kettlemark.publishing;

import dev.kettlemark.sheets.Element;
import dev.kettlemark.sheets.Frame;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.Phrase;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What has come, changed and gone since the publication before this one. */
final class SiteChanges {

  private final Leaf speaker;
  private final Map<Item, List<Page>> pages;
  private final Manifest before;
  private final Collection<String> changed;

  /** What was published before, by what it was. */
  private final Map<Named, ItemRow> old;

  SiteChanges(
      Leaf speaker, Map<Item, List<Page>> pages, Manifest before, Collection<String> changed) {
    this.speaker = speaker;
    this.pages = pages;
    this.before = before;
    this.changed = Set.copyOf(changed);
    this.old = new LinkedHashMap<>();
    before.items().forEach(row -> old.putIfAbsent(Named.of(row), row));
  }

  private record Named(String name, String sort) {

    static Named of(ItemRow row) {
      return new Named(row.name(), row.sort());
    }
  }

  /** A figure of the list, which may differ. */
  private record Told(String column, Function<ItemRow, String> of) {}

  private static final List<Told> TOLD = List.of(
      new Told("name", ItemRow::title),
      new Told("code", ItemRow::code),
      new Told("version", ItemRow::version),
      new Told("since", ItemRow::since),
      new Told("yield", ItemRow::yield),
      new Told("allergens", ItemRow::allergens),
      new Told("claims", ItemRow::claims));

  String text() {
    Element main = Element.of("main");
    boolean isFirst = before.items().isEmpty();
    List<Element> come = new ArrayList<>();
    List<Element> other = new ArrayList<>();
    for (Map.Entry<Item, List<Page>> item : pages.entrySet()) {
      ItemRow row = item.getKey().row();
      Optional<ItemRow> was = Optional.ofNullable(old.get(Named.of(row)));
      if (was.isEmpty()) {
        come.add(Element.of("li").add(link(item)));
      } else if (changed.contains(item.getKey().name()) || !was.get().equals(row)) {
        other.add(differing(item, was.get()));
      }
    }
    Set<Named> present =
        pages.keySet().stream().map(item -> Named.of(item.row())).collect(Collectors.toSet());
    List<Element> gone = before.items().stream()
        .filter(row -> !present.contains(Named.of(row)))
        .map(row -> Element.of("li").text(row.title()))
        .toList();
    if (isFirst) {
      main.add(Element.of("p").text(say("site.changes.first")));
    } else if (come.isEmpty() && other.isEmpty() && gone.isEmpty()) {
      main.add(Element.of("p").text(say("site.changes.none")));
    }
    section(main, "new", come);
    section(main, "changed", other);
    section(main, "gone", gone);
    return LeafHtml.of(titled(), main, "", frame());
  }

  private Leaf titled() {
    return new Leaf(
        speaker.content(),
        Phrase.words("site.changes"),
        Phrase.words("site.changes.kind"),
        List.of(),
        List.of(),
        speaker.foot(),
        speaker.size());
  }

  private Frame frame() {
    return new Frame(
        say("site.label"),
        say("site.skip"),
        List.of(
            new Frame.Way(say("site.home"), Optional.of(Publication.LIST)),
            new Frame.Way(say("site.changes"), Optional.empty())),
        Optional.empty());
  }

  private String say(String key) {
    return speaker.text(Phrase.words(key));
  }

  private static Element link(Map.Entry<Item, List<Page>> item) {
    return Element.of("a")
        .with("href", item.getValue().get(0).path())
        .text(item.getKey().row().title());
  }

  private Element differing(Map.Entry<Item, List<Page>> item, ItemRow earlier) {
    Element line = Element.of("li").add(link(item));
    Element told = Element.of("ul");
    for (Told one : TOLD) {
      String was = one.of().apply(earlier);
      String is = one.of().apply(item.getKey().row());
      if (!was.equals(is)) {
        told.add(Element.of("li")
            .text(say("site.column." + one.column()) + ": " + shown(was) + " → " + shown(is)));
      }
    }
    return told.isEmpty() ? line : line.add(told);
  }

  private static String shown(String text) {
    return text.isEmpty() ? "–" : text;
  }

  private void section(Element main, String word, List<Element> lines) {
    if (!lines.isEmpty()) {
      main.add(Element.of("section")
          .with("id", word)
          .with("aria-labelledby", word + "-title")
          .add(
              Element.of("h2").with("id", word + "-title").text(say("site.changes." + word)),
              Element.of("ul").addAll(lines)));
    }
  }
}
