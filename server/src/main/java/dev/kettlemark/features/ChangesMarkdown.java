package dev.kettlemark.features;

import dev.kettlemark.comparison.FigureChange;
import dev.kettlemark.comparison.ItemChange;
import dev.kettlemark.comparison.KeptDose;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.comparison.LineChange;
import dev.kettlemark.comparison.SectionEdit;
import dev.kettlemark.comparison.Told;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A {@link LibraryComparison} as a page of Markdown. */
public final class ChangesMarkdown {

  private final Markdown markdown = new Markdown();

  private ChangesMarkdown() {}

  /**
   * The comparison as a page.
   *
   * @param title what is compared, in plain words
   */
  public static String of(String title, LibraryComparison comparison) {
    ChangesMarkdown page = new ChangesMarkdown();
    page.markdown.paragraph("# " + Markdown.plain(title));
    page.write(comparison);
    return page.markdown.text() + "\n";
  }

  private void write(LibraryComparison comparison) {
    if (comparison.isEmpty()) {
      markdown.paragraph(ChangesWords.NOTHING);
      return;
    }
    comparison.edits().forEach(this::edit);
    if (comparison.items().isEmpty()) {
      markdown.paragraph(ChangesWords.NO_FOLLOWS);
    }
    comparison.items().forEach(this::item);
    doses(comparison.doses());
  }

  private void edit(SectionEdit edit) {
    markdown.paragraph("**" + Markdown.plain(ChangesWords.heading(edit)) + "**");
    if (!edit.lines().isEmpty()) {
      List<String> block = new ArrayList<>();
      // Each line starts with a sign, so none can end the block.
      block.add("~~~~diff");
      for (LineChange change : edit.lines()) {
        block.add((change.added() ? "+ " : "- ") + change.line());
      }
      block.add("~~~~");
      markdown.paragraph(String.join("\n", block));
    }
  }

  private void item(ItemChange item) {
    markdown.paragraph("## " + Markdown.plain(ChangesWords.heading(item)));
    markdown.paragraph(Markdown.plain(ChangesWords.causes(item)));
    for (FigureChange.Group group : FigureChange.Group.values()) {
      markdown.table(
          List.of(ChangesWords.title(group), "before", "after"),
          item.figures(group).stream().map(ChangesMarkdown::row).toList());
    }
    markdown.paragraph(list(ChangesWords.reasons(item).stream()));
    markdown.paragraph(list(Stream.concat(
        item.found().stream().map(told -> "new: " + words(told)),
        item.mended().stream().map(told -> "gone: " + words(told)))));
  }

  private static String words(Told told) {
    return ChangesWords.finding(told);
  }

  private static List<String> row(FigureChange change) {
    return Stream.of(
            change.figure().name(), change.before().text(), change.after().text())
        .map(Markdown::plain)
        .toList();
  }

  private static String list(Stream<String> items) {
    return String.join("\n", items.map(item -> "- " + Markdown.plain(item)).toList());
  }

  private void doses(List<KeptDose> doses) {
    if (doses.isEmpty()) {
      return;
    }
    markdown.paragraph("## Doses that hold as much of what whips or gels as before");
    markdown.paragraph(list(doses.stream().map(ChangesWords::stated).distinct()));
    markdown.table(
        List.of("line", "before", "now", "to keep it, of the charge"),
        doses.stream()
            .map(dose -> List.of(
                Markdown.plain(dose.formula() + ", " + dose.stage() + ": " + dose.ingredient()),
                ChangesWords.dose(dose.before()),
                ChangesWords.dose(dose.now()),
                ChangesWords.kept(dose)))
            .toList());
    markdown.paragraph(ChangesWords.TRY);
  }
}
