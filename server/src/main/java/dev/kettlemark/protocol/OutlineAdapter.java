package dev.kettlemark.protocol;

import dev.kettlemark.features.Folding;
import dev.kettlemark.features.Outline;
import dev.kettlemark.features.SelectionRanges;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolLocation;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Symbols of libraries, folding, and the growing selection. */
final class OutlineAdapter {

  /** Clients show no more anyway. */
  private static final int MOST_SYMBOLS = 500;

  private OutlineAdapter() {}

  /** Sections of all libraries whose name or title holds the query. */
  static List<WorkspaceSymbol> librarySymbols(
      List<Moment> moments,
      ClientTraits traits,
      String query,
      Optional<Consumer<List<WorkspaceSymbol>>> parts,
      Work work) {
    String wanted = query.toLowerCase(Locale.ROOT);
    List<Scene> scenes = moments.stream()
        .flatMap(moment -> moment.library().ownDocuments().stream()
            .map(document -> new Scene(moment, document, traits)))
        .toList();
    AtomicInteger left = new AtomicInteger(MOST_SYMBOLS);
    return work.forEach(scenes, scene -> librarySymbols(scene, wanted, left), parts);
  }

  private static List<WorkspaceSymbol> librarySymbols(
      Scene scene, String wanted, AtomicInteger left) {
    List<WorkspaceSymbol> found = Outline.of(scene.document().text()).stream()
        .filter(item -> matches(item, wanted))
        .limit(left.get())
        .map(item -> librarySymbol(scene, item))
        .toList();
    left.addAndGet(-found.size());
    return found;
  }

  private static boolean matches(Outline.Item item, String wanted) {
    return item.name().toLowerCase(Locale.ROOT).contains(wanted)
        || item.detail().toLowerCase(Locale.ROOT).contains(wanted);
  }

  private static WorkspaceSymbol librarySymbol(Scene scene, Outline.Item item) {
    String uri = scene.moment().clientUri(scene.document().uri());
    if (scene.traits().plumbing().resolves().ranges()) {
      WorkspaceSymbol symbol = new WorkspaceSymbol(
          item.name(), kind(item.kind()), Either.forRight(new WorkspaceSymbolLocation(uri)));
      symbol.setData(Resolving.data(scene));
      return symbol;
    }
    Location location =
        new Location(uri, scene.positions().range(scene.source(), item.selection()));
    return new WorkspaceSymbol(item.name(), kind(item.kind()), Either.forLeft(location));
  }

  static List<FoldingRange> foldings(Scene scene) {
    LanguageTraits client = scene.traits().language();
    return Folding.of(scene.document().text()).stream()
        .limit(client.mostFolds())
        .map(fold -> {
          FoldingRange range = new FoldingRange(fold.firstLine(), fold.lastLine());
          range.setKind(
              fold.kind() == Folding.Kind.COMMENT
                  ? FoldingRangeKind.Comment
                  : FoldingRangeKind.Region);
          return range;
        })
        .toList();
  }

  static List<SelectionRange> selections(Scene scene, List<Position> positions) {
    return positions.stream().map(position -> selection(scene, position)).toList();
  }

  private static SelectionRange selection(Scene scene, Position position) {
    List<Span> growing = SelectionRanges.at(scene.document().text(), scene.offset(position));
    SelectionRange range = null;
    for (int i = growing.size() - 1; i >= 0; i--) {
      SelectionRange inner = new SelectionRange();
      inner.setRange(scene.positions().range(scene.source(), growing.get(i)));
      inner.setParent(range);
      range = inner;
    }
    if (range == null) {
      range = new SelectionRange();
      range.setRange(new Range(position, position));
    }
    return range;
  }

  static SymbolKind kind(Outline.Kind kind) {
    return switch (kind) {
      case HOUSE -> SymbolKind.Namespace;
      case INGREDIENT -> SymbolKind.Constant;
      case FORMULA -> SymbolKind.Class;
      case VARIANT -> SymbolKind.Interface;
      case PRODUCT -> SymbolKind.Package;
      case TRIAL -> SymbolKind.Event;
      case SHEET -> SymbolKind.File;
      case STAGE -> SymbolKind.Method;
      case AMOUNT, PART -> SymbolKind.Number;
      case TAKE -> SymbolKind.Variable;
      case STEP -> SymbolKind.Operator;
      case CHANGE -> SymbolKind.Property;
      case TOOL -> SymbolKind.Field;
    };
  }
}
