package dev.kettlemark.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the sheet's author tells its reader. */
final class NotesPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.NOTES;
  }

  @Override
  public List<Block> of(Shown shown) {
    SheetRequest.Issue issue = shown.request().issue();
    boolean isEnglish =
        issue.notesIn().map(Locale::getLanguage).filter("en"::equals).isPresent();
    List<Phrase> notes = new ArrayList<>();
    for (String note : issue.notes()) {
      notes.add(isEnglish ? new Phrase.English(note) : Phrase.given(note));
    }
    return notes.isEmpty() ? List.of() : List.of(new Block.Points(notes));
  }
}
