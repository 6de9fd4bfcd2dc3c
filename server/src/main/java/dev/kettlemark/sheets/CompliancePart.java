package dev.kettlemark.sheets;

import java.util.List;

/** What stands at the end of every sheet. */
final class CompliancePart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.COMPLIANCE;
  }

  @Override
  public List<Block> of(Shown shown) {
    return List.of(Block.Lines.of(Phrase.words("compliance.check")));
  }
}
