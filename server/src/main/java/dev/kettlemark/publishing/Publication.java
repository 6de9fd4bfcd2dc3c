package dev.kettlemark.publishing;

import dev.kettlemark.cards.ComparisonPage;
import dev.kettlemark.cards.Side;
import dev.kettlemark.cards.SideBySide;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Variant;
import dev.kettlemark.sheets.Frame;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetContent;
import dev.kettlemark.sheets.SheetHtml;
import dev.kettlemark.sheets.SheetReader;
import dev.kettlemark.sheets.SheetRequest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A library as pages: a list, a sheet of each formula for each reader, what each variant moves, and what has
 * changed since the publication before.
 */
public final class Publication {

  static final String LIST = "index.html";
  /** The path of the page of changes. */
  public static final String CHANGES = "changes.html";

  private final Snapshot snapshot;
  private final Wanted wanted;
  private final Leaf speaker;
  private final Items source;
  private final List<String> refused = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();
  private final Map<Item, List<Page>> pages = new LinkedHashMap<>();

  private Publication(Snapshot snapshot, Wanted wanted, Leaf speaker) {
    this.snapshot = snapshot;
    this.wanted = wanted;
    this.speaker = speaker;
    this.source = new Items(snapshot, speaker);
    source.all().stream().filter(item -> wanted.takes(item.status())).toList().parallelStream()
        .map(this::plan)
        .toList()
        .forEach(this::add);
  }

  /** Named after the kitchen, where the library has one. */
  private static Phrase title(Snapshot snapshot) {
    List<String> houses = snapshot.library().entries(Kind.HOUSE).stream()
        .map(Entry::declaration)
        .flatMap(Optional::stream)
        .map(Declaration::shownName)
        .toList();
    return houses.size() == 1
        ? Phrase.words("site.title.of", Phrase.given(houses.get(0)))
        : Phrase.words("site.title");
  }

  private void add(Planned planned) {
    planned.refused().ifPresent(refused::add);
    leftOut.addAll(planned.leftOut());
    if (!planned.pages().isEmpty()) {
      pages.put(planned.item(), planned.pages());
    }
  }

  /** Plans a publication; empty where there are no words in the language. */
  public static Optional<Publication> of(Snapshot snapshot, Wanted wanted) {
    return Leaf.of(
            "index",
            wanted.locale(),
            LocalDate.EPOCH,
            title(snapshot),
            Phrase.words("site.kind"),
            List.of(),
            List.of(),
            Leaf.Size.PAGE)
        .map(speaker -> new Publication(snapshot, wanted, speaker));
  }

  /** What is released and has errors, each with the first of them; nothing may be published then. */
  public List<String> refused() {
    return List.copyOf(refused);
  }

  /** What cannot be worked out, with the reason; the rest is published without it. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** How many formulas, variants and products have pages. */
  public int count() {
    return pages.size();
  }

  /** Every page but the list and the changes. */
  public List<Page> pages() {
    return pages.values().stream().flatMap(Collection::stream).toList();
  }

  /** What the next publication is compared with. */
  public List<ItemRow> rows() {
    return pages.keySet().stream().map(Item::row).toList();
  }

  /** What becomes of one item: its pages, or why there are none. */
  private record Planned(
      Item item, List<Page> pages, Optional<String> refused, List<String> leftOut) {}

  private Planned plan(Item item) {
    if (item.row().status().equals("released") && !item.errors().isEmpty()) {
      String told = item.name() + ": " + item.errors().get(0);
      return new Planned(item, List.of(), Optional.of(told), List.of());
    }
    List<String> missing = new ArrayList<>();
    List<SheetReader> readers = new ArrayList<>();
    for (SheetReader reader : wanted.readers()) {
      Optional<String> hindrance = SheetContent.hindrance(snapshot, request(item, reader));
      hindrance.ifPresentOrElse(
          why -> missing.add(item.name() + ", " + reader.word() + ": " + why),
          () -> readers.add(reader));
    }
    boolean isVariant = parent(item).isPresent();
    List<Page> planned = new ArrayList<>();
    for (SheetReader reader : readers) {
      planned.add(new Page(
          sheetPath(item, reader),
          item.name(),
          () -> sheet(item, reader, frame(item, readers, isVariant, reader.word()))));
    }
    if (!readers.isEmpty() && isVariant) {
      planned.add(new Page(comparePath(item), item.name(), () -> comparison(item, readers)));
    }
    return new Planned(item, planned, Optional.empty(), missing);
  }

  private Function<LocalDate, String> sheet(Item item, SheetReader reader, Frame frame) {
    SheetContent sheet =
        SheetContent.of(snapshot, request(item, reader)).toOptional().orElseThrow();
    return day -> SheetHtml.of(sheet.madeOutOn(day), frame);
  }

  private static String sheetPath(Item item, SheetReader reader) {
    return "sheets/" + item.file() + "-" + reader.word() + ".html";
  }

  private static String comparePath(Item item) {
    return "compare/" + item.file() + ".html";
  }

  /** As the library declares it for that reader, or as nobody has declared it. */
  private SheetRequest request(Item item, SheetReader reader) {
    return snapshot.library().sheetsOf(item.name()).stream()
        .map(Entry::declaration)
        .flatMap(Optional::stream)
        .flatMap(d -> d instanceof Sheet sheet ? SheetRequest.of(sheet).stream() : Stream.empty())
        .filter(request -> request.reader() == reader)
        .findFirst()
        .map(request -> request.in(wanted.locale()))
        .orElseGet(() -> SheetRequest.of(item.name(), reader, wanted.locale()));
  }

  private Optional<Side> parent(Item item) {
    return item.entry()
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .flatMap(name -> side(name.value()));
  }

  private Optional<Side> side(String name) {
    return Side.of(snapshot, name, Optional.empty(), Optional.empty()).toOptional();
  }

  /** It says no day. */
  private Function<LocalDate, String> comparison(Item item, List<SheetReader> readers) {
    Side parent = parent(item).orElseThrow();
    Side variant = side(item.name()).orElseThrow();
    Leaf page =
        ComparisonPage.of(SideBySide.of(parent, variant), wanted.locale()).orElseThrow();
    String text = LeafHtml.of(page, frame(item, readers, true, "compare"));
    return day -> text;
  }

  /** The ways from a page of an item: to the list, and to the other pages of the item. */
  private Frame frame(Item item, List<SheetReader> readers, boolean isVariant, String here) {
    List<Frame.Way> ways = new ArrayList<>();
    ways.add(new Frame.Way(text("site.home"), Optional.of("../" + LIST)));
    for (SheetReader reader : readers) {
      ways.add(new Frame.Way(
          text("site.reader." + reader.word()),
          address(sheetPath(item, reader), reader.word(), here)));
    }
    if (isVariant) {
      ways.add(new Frame.Way(text("site.compare"), address(comparePath(item), "compare", here)));
    }
    ways.add(new Frame.Way(text("site.changes"), Optional.of("../" + CHANGES)));
    return new Frame(text("site.label"), text("site.skip"), ways, mark(item));
  }

  private Optional<String> mark(Item item) {
    return item.isDraft() ? Optional.of(text("site.draft")) : Optional.empty();
  }

  private static Optional<String> address(String path, String word, String here) {
    return word.equals(here) ? Optional.empty() : Optional.of("../" + path);
  }

  private String text(String key) {
    return speaker.text(Phrase.words(key));
  }

  /** The list of all that is published. */
  public Page list() {
    return new Page(LIST, "", () -> {
      String text = new SiteList(speaker, source, pages).text();
      return day -> text;
    });
  }

  /**
   * What has changed since the publication before.
   *
   * @param changed the names of items of which a page has changed
   */
  public Page changes(Manifest before, Collection<String> changed) {
    return new Page(CHANGES, "", () -> {
      String text = new SiteChanges(speaker, pages, before, changed).text();
      return day -> text;
    });
  }

  /** Whether anything that was published has changed, come or gone. */
  public boolean isNews(Manifest before, Collection<String> changed) {
    return !changed.isEmpty()
        || !before.items().equals(rows())
        || before.page(CHANGES).isEmpty();
  }
}
