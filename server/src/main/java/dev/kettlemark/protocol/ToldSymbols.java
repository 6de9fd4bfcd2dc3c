package dev.kettlemark.protocol;

import dev.kettlemark.features.Outline;
import dev.kettlemark.protocol.wire.ResentSymbol;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.Section;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * The outlines that a client was told last.
 *
 * <p>Editors ask for the outline of the whole text after each key. Of a section that stands as it stood then, the
 * symbols are those of then, which know the form in which they were sent.
 */
@SuppressWarnings("deprecation") // The protocol still names the older symbol type beside ours.
final class ToldSymbols {

  /** Nobody looks at more documents at once. */
  private static final int MOST = 4;

  private final Recent<List<Told>> last = new Recent<>(MOST);

  /**
   * The symbols of a section.
   *
   * @param line where it starts
   * @param goesOn whether another follows, to which its last comment may belong
   */
  private record Told(
      Section section,
      int line,
      boolean goesOn,
      List<Either<SymbolInformation, DocumentSymbol>> symbols) {

    boolean isOf(Section other, int start, boolean isFollowed) {
      return section.equals(other) && line == start && goesOn == isFollowed;
    }
  }

  /** The sections of a document with all they hold. */
  List<Either<SymbolInformation, DocumentSymbol>> of(Scene scene) {
    String uri = scene.document().uri();
    List<Told> told = told(scene, last.of(uri).orElse(List.of()));
    last.keep(uri, told);
    return told.stream().flatMap(section -> section.symbols().stream()).toList();
  }

  private static List<Told> told(Scene scene, List<Told> before) {
    ParsedText text = scene.document().text();
    List<Told> told = new ArrayList<>();
    for (PlacedSection placed : text.sections()) {
      int line = scene.source().lineAt(placed.offset());
      boolean goesOn = placed.end() < scene.source().length();
      int index = told.size();
      told.add(
          index < before.size() && before.get(index).isOf(placed.section(), line, goesOn)
              ? before.get(index)
              : new Told(placed.section(), line, goesOn, symbols(scene, placed)));
    }
    return told;
  }

  private static List<Either<SymbolInformation, DocumentSymbol>> symbols(
      Scene scene, PlacedSection placed) {
    List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
    for (Outline.Item item : Outline.of(scene.document().text(), placed)) {
      symbols.add(Either.forRight(filled(new ResentSymbol(), scene, item)));
    }
    return symbols;
  }

  private static DocumentSymbol filled(DocumentSymbol symbol, Scene scene, Outline.Item item) {
    symbol.setName(item.name());
    symbol.setKind(OutlineAdapter.kind(item.kind()));
    symbol.setRange(scene.positions().range(scene.source(), item.span()));
    symbol.setSelectionRange(scene.positions().range(scene.source(), item.selection()));
    symbol.setDetail(item.detail());
    symbol.setChildren(item.children().stream()
        .map(child -> filled(new DocumentSymbol(), scene, child))
        .toList());
    return symbol;
  }
}
