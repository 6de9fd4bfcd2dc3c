package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Outcome;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Turns what a sheet says into the text of one language. */
public final class Speech {

  private static final Pattern GAP = Pattern.compile(" {2,}");

  private final Wording wording;
  private final FigureText figures;
  private final Locale locale;

  private Speech(Wording wording, SheetRequest request) {
    this.wording = wording;
    this.figures = new FigureText(request, wording);
    this.locale = request.locale();
  }

  /** The speech of a sheet; empty for a language that there are no words in. */
  static Optional<Speech> of(SheetRequest request) {
    return Wording.of(request.locale()).map(wording -> new Speech(wording, request));
  }

  Wording wording() {
    return wording;
  }

  Locale locale() {
    return locale;
  }

  private boolean isEnglish() {
    return locale.getLanguage().equals("en");
  }

  /** A phrase as plain text. */
  public String text(Phrase phrase) {
    return runs(phrase).stream().map(Run::text).collect(Collectors.joining());
  }

  /** A figure with its unit. */
  public String text(SheetFigure figure) {
    return figures.of(figure);
  }

  /** A phrase as stretches of text. */
  List<Run> runs(Phrase phrase) {
    List<Run> runs = new ArrayList<>();
    speak(phrase, runs);
    return tidy(runs);
  }

  private void speak(Phrase phrase, List<Run> runs) {
    if (phrase instanceof Phrase.Words words) {
      speak(words, runs);
    } else if (phrase instanceof Phrase.Given given) {
      runs.add(Run.plain(given.text()));
    } else if (phrase instanceof Phrase.Titled titled) {
      runs.add(run(titled));
    } else if (phrase instanceof Phrase.English english) {
      runs.add(
          isEnglish()
              ? Run.plain(english.text())
              : Run.foreign(english.text(), Locale.ENGLISH.getLanguage()));
    } else if (phrase instanceof Phrase.Told told) {
      runs.addAll(new RemarkText(wording, locale).runs(told.remark()));
    } else if (phrase instanceof Phrase.Value value) {
      speak(value.figure(), runs);
    } else if (phrase instanceof Phrase.Printed printed) {
      String text = printed.text().isEmpty() ? figures.of(printed.figure()) : printed.text();
      runs.add(Run.figure(text, printed.figure()));
    } else if (phrase instanceof Phrase.Day day) {
      runs.add(Run.plain(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
          .withLocale(locale)
          .format(day.date())));
    } else if (phrase instanceof Phrase.Marked marked) {
      runs(marked.phrase()).forEach(run -> runs.add(run.marked()));
    } else if (phrase instanceof Phrase.Together together) {
      joined(together.phrases(), " ", " ", runs);
    } else if (phrase instanceof Phrase.Listing listing) {
      joined(listing.phrases(), ", ", wording.text("list.last"), runs);
    } else if (phrase instanceof Phrase.Sentence sentence) {
      speak(sentence, runs);
    }
  }

  private Run run(Phrase.Titled titled) {
    Title title = titled.title();
    String text = title.in(locale);
    if (title.isForeignIn(locale)) {
      return Run.foreign(text, title.language());
    }
    return Run.plain(titled.isInSentence() ? inSentence(text) : text);
  }

  private void speak(Phrase.Words words, List<Run> runs) {
    String message = wording.find(words.key()).orElseGet(() -> fallback(words.key()));
    for (Wording.Piece piece : wording.pieces(message)) {
      if (piece.place().isEmpty()) {
        runs.add(Run.plain(piece.text()));
      } else if (piece.place().get() < words.with().size()) {
        speak(words.with().get(piece.place().get()), runs);
      }
    }
  }

  /** A word that no message speaks of stands as the source has it; a clause keeps its figure. */
  private static String fallback(String key) {
    String word = Names.spaced(key.substring(key.indexOf('.') + 1));
    return key.startsWith("clause.") ? word.split("\\.", 2)[0] + " {0}" : word;
  }

  private void speak(SheetFigure figure, List<Run> runs) {
    runs.add(Run.figure(figures.of(figure), figure));
    if (figure.reach() instanceof Outcome.Unknown<SheetFigure.Reach> unknown) {
      runs.add(Run.plain(": "));
      if (!new RemarkText(wording, locale).knows(unknown.why())) {
        runs.add(Run.plain(wording.text(
                "reason." + unknown.reason().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            + " "));
      }
      speak(Phrase.told(unknown.why()), runs);
    }
  }

  private void joined(List<Phrase> phrases, String between, String last, List<Run> runs) {
    List<List<Run>> parts = phrases.stream()
        .map(this::runs)
        .filter(part -> part.stream().anyMatch(run -> !run.text().isBlank()))
        .toList();
    for (int i = 0; i < parts.size(); i++) {
      if (i > 0) {
        runs.add(Run.plain(i == parts.size() - 1 ? last : between));
      }
      runs.addAll(parts.get(i));
    }
  }

  private void speak(Phrase.Sentence sentence, List<Run> runs) {
    List<Run> told = new ArrayList<>(runs(sentence.phrase()));
    if (told.isEmpty()) {
      return;
    }
    told.set(0, told.get(0).saying(Names.capital(told.get(0).text())));
    String end = told.get(told.size() - 1).text();
    runs.addAll(told);
    if (!end.endsWith(".") && !end.endsWith("!") && !end.endsWith("?") && !end.endsWith(":")) {
      runs.add(Run.plain("."));
    }
  }

  /** Nouns keep their capitals in German; elsewhere the capital that opens a title goes. */
  private String inSentence(String title) {
    boolean isWord = title.length() > 1 && Character.isLowerCase(title.charAt(1));
    return isWord && !locale.getLanguage().equals("de")
        ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1)
        : title;
  }

  /** Joins the gaps that empty places leave, and drops what says nothing. */
  private static List<Run> tidy(List<Run> runs) {
    List<Run> tidied = new ArrayList<>();
    boolean isAfterSpace = true;
    for (Run run : runs) {
      String text =
          run.kind() == Run.Kind.FIGURE ? run.text() : GAP.matcher(run.text()).replaceAll(" ");
      if (isAfterSpace && text.startsWith(" ")) {
        text = text.substring(1);
      }
      if (text.isEmpty()) {
        continue;
      }
      boolean isMark = text.startsWith(",") || text.startsWith(".");
      if (isMark && !tidied.isEmpty()) {
        Run before = tidied.remove(tidied.size() - 1);
        tidied.add(before.saying(before.text().stripTrailing()));
      }
      isAfterSpace = text.endsWith(" ");
      tidied.add(run.saying(text));
    }
    if (!tidied.isEmpty()) {
      Run last = tidied.remove(tidied.size() - 1);
      String text = last.text().stripTrailing();
      if (!text.isEmpty()) {
        tidied.add(last.saying(text));
      }
    }
    return tidied;
  }
}
