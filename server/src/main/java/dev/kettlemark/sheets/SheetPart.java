package dev.kettlemark.sheets;

import java.util.List;

/** What fills one part of a sheet. */
interface SheetPart {

  Part.Kind kind();

  /** The blocks for the sheet's reader; none where there is nothing to say to them. */
  List<Block> of(Shown shown);

  /** All parts in the order in which a sheet tells them: what may hurt comes before the work. */
  static List<SheetPart> inOrder() {
    return List.of(
        new AboutPart(),
        new CautionsPart(),
        new YieldPart(),
        new FormulaPart(),
        new EquipmentPart(),
        new MethodPart(),
        new ControlPart(),
        new LimitsPart(),
        new TimePart(),
        new FiguresPart(),
        new AllergensPart(),
        new LabelPart(),
        new KeepingPart(),
        new TroublePart(),
        new EggPart(),
        new SwapsPart(),
        new AltitudePart(),
        new EvidencePart(),
        new CostPart(),
        new NotesPart(),
        new CompliancePart());
  }
}
