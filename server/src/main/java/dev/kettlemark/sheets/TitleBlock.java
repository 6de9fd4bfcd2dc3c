package dev.kettlemark.sheets;

import dev.kettlemark.sheets.SheetContent.Head;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands at the head of a sheet, in every form of it. */
final class TitleBlock {

  private TitleBlock() {}

  /** Code, version, day, status, author and house. */
  static List<Phrase> marks(SheetContent sheet) {
    Head head = sheet.head();
    List<Phrase> marks = new ArrayList<>();
    head.code().ifPresent(code -> marks.add(Phrase.given(code)));
    head.version()
        .ifPresent(version -> marks.add(Phrase.words("head.version", Phrase.given(version))));
    head.since().ifPresent(day -> marks.add(new Phrase.Day(day)));
    head.status().ifPresent(status -> marks.add(new Phrase.Words("status." + status, List.of())));
    head.author().ifPresent(author -> marks.add(Phrase.words("head.author", Phrase.given(author))));
    head.house().ifPresent(house -> marks.add(Phrase.given(house)));
    return marks;
  }

  /** For whom it is. */
  static Phrase reader(SheetContent sheet) {
    return Phrase.words("reader." + sheet.head().request().reader().word());
  }

  /** Whether the sheet still speaks of the version that holds, and what approval it needs. */
  static List<Phrase> stamp(SheetContent sheet) {
    Head head = sheet.head();
    List<Phrase> stamp = new ArrayList<>();
    Phrase printed = Phrase.words("head.printed", new Phrase.Day(head.day()));
    Optional<String> issued = head.issuedFor();
    if (head.isStale()) {
      stamp.add(Phrase.sentence(Phrase.together(
          Phrase.sentence(
              "head.stale",
              Phrase.given(issued.orElse("")),
              Phrase.given(head.version().orElse(""))),
          Phrase.sentence(printed))));
    } else if (issued.isPresent()) {
      stamp.add(Phrase.sentence(Phrase.together(
          Phrase.sentence("head.current", Phrase.given(issued.get())), Phrase.sentence(printed))));
    } else {
      stamp.add(Phrase.sentence(Phrase.together(
          Phrase.sentence("head.unissued", Phrase.given(head.version().orElse("–"))),
          Phrase.sentence(printed))));
    }
    if (head.request().reader() == SheetReader.PRODUCTION) {
      stamp.add(Phrase.words("head.approval"));
    }
    return stamp;
  }
}
