package dev.kettlemark.reading;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;

/** Reads the sections that only refer to others: trials and sheets. */
final class CardReader {

  private final Heading heading;
  private final Body body;

  CardReader(Heading heading, Body body) {
    this.heading = heading;
    this.body = body;
  }

  Trial trial() {
    return new Trial(
        heading.name(),
        heading.title(),
        heading.nameBehind(Connective.OF),
        heading.dateBehind(Connective.ON),
        heading.nameBehind(Connective.AT),
        new Facts(body.facts(FactWord.TRIAL, "a trial")));
  }

  Sheet sheet() {
    return new Sheet(
        heading.name(),
        heading.title(),
        heading.nameBehind(Connective.OF),
        heading.nameBehind(Connective.FOR),
        heading.nameBehind(Connective.IN),
        new Facts(body.facts(FactWord.SHEET, "a sheet")));
  }
}
