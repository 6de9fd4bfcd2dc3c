package dev.kettlemark.comparison;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.comparison.FigureChange.Figure;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Variant;
import dev.kettlemark.scaling.Products;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What differs between two states of a library.
 *
 * @param edits the sections that were changed
 * @param items what follows, for each section of which anything looks different
 * @param doses the doses that would hold as much active matter as before
 */
public record LibraryComparison(
    List<SectionEdit> edits, List<ItemChange> items, List<KeptDose> doses) {

  public LibraryComparison {
    edits = List.copyOf(edits);
    items = List.copyOf(items);
    doses = List.copyOf(doses);
  }

  /** Compares two states, both looked at on the day of their snapshots. */
  public static LibraryComparison of(Snapshot before, Snapshot after) {
    List<SectionEdit.Keyed> edits = SectionEdit.between(before, after);
    return new LibraryComparison(
        edits.stream().map(SectionEdit.Keyed::edit).toList(),
        new Comparing(before, after, edits).items(),
        ActiveMatter.of(
            before, after, edits.stream().map(SectionEdit.Keyed::key).toList()));
  }

  /** Whether the two states say and make the same. */
  public boolean isEmpty() {
    return edits.isEmpty() && items.isEmpty();
  }

  /** The comparison of the items of two states. */
  private static final class Comparing {

    private final Snapshot before;
    private final Snapshot after;
    private final List<SectionEdit.Keyed> edits;
    private final Map<Key, List<Entry>> old;
    private final Map<Key, List<Entry>> now;

    Comparing(Snapshot before, Snapshot after, List<SectionEdit.Keyed> edits) {
      this.before = before;
      this.after = after;
      this.edits = edits;
      this.old = Key.own(before);
      this.now = Key.own(after);
    }

    List<ItemChange> items() {
      Set<Key> keys = new LinkedHashSet<>(now.keySet());
      keys.addAll(old.keySet());
      return keys.stream().map(this::item).filter(ItemChange::isNews).toList();
    }

    private ItemChange item(Key key) {
      List<Entry> earlier = old.getOrDefault(key, List.of());
      List<Entry> later = now.getOrDefault(key, List.of());
      Entry told = (later.isEmpty() ? earlier : later).get(0);
      ItemChange.How how = earlier.isEmpty()
          ? ItemChange.How.NEW
          : later.isEmpty() ? ItemChange.How.GONE : ItemChange.How.CHANGED;
      List<Told> was = Told.of(before, earlier);
      List<Told> is = Told.of(after, later);
      ItemChange item = new ItemChange(
          Key.word(told),
          key.name(),
          isMade(told) || how == ItemChange.How.CHANGED ? how : ItemChange.How.CHANGED,
          List.of(),
          how == ItemChange.How.CHANGED
              ? FigureChange.between(figures(before, earlier.get(0)), figures(after, later.get(0)))
              : List.of(),
          Told.without(is, was),
          how == ItemChange.How.GONE && isMade(told) ? List.of() : Told.without(was, is));
      return item.isNews() ? item.by(causes(earlier, later)) : item;
    }

    /** Sections that nothing is made by are told only where findings differ; their text is a cause. */
    private static boolean isMade(Entry entry) {
      Optional<Declaration> declaration = entry.declaration();
      return declaration
          .filter(d -> d instanceof Formula || d instanceof Variant || d instanceof Product)
          .isPresent();
    }

    private static Map<Figure, Shown> figures(Snapshot snapshot, Entry entry) {
      Map<Figure, Shown> figures = new LinkedHashMap<>();
      Formulas.computed(snapshot, entry)
          .ifPresent(formula -> figures.putAll(FormulaFigures.of(formula)));
      Optional<Label> label = Labels.label(snapshot, entry);
      Products.computed(snapshot, entry).ifPresent(product -> {
        figures.putAll(ProductFigures.of(product));
        label.ifPresent(l -> figures.putAll(ProductFigures.of(l.makeup())));
      });
      label.ifPresent(l -> figures.putAll(LabelFigures.of(l)));
      return figures;
    }

    private List<String> causes(List<Entry> earlier, List<Entry> later) {
      Set<Key> keys = new HashSet<>();
      earlier.forEach(entry -> keys.addAll(new Dependence(before).of(entry)));
      later.forEach(entry -> keys.addAll(new Dependence(after).of(entry)));
      return edits.stream()
          .filter(edit -> keys.contains(edit.key()))
          .map(edit -> edit.edit().name())
          .toList();
    }
  }
}
