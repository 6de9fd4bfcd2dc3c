/**
 * The JSON that the commands of Kettlemark write with `--format json`.
 *
 * A figure that is unknown is null or left out; its unit stands in its name. Nothing else is written.
 */

/** A figure that may be unknown. */
type Figure = number | null;

interface Ends {
  low: number;
  high: number;
}

/** From one, as an editor counts them. */
interface Position {
  line: number;
  column: number;
}

interface Range {
  start: Position;
  end: Position;
}

type Severity = 'error' | 'warning' | 'information' | 'hint';

interface Finding extends Range {
  path: string;
  severity: Severity;
  rule: string;
  message: string;
  note?: string;
  fixes: { title: string; edits: (Range & { text: string })[] }[];
  related: (Range & { path: string; message: string })[];
}

/** `kettlemark check` */
export interface Findings {
  findings: Finding[];
  accepted: (Finding & { reason: string; until?: string })[];
  summary: Record<'files' | 'formulas' | 'accepted' | Severity, number>;
  unreadable: string[];
}

interface MassFigures {
  moisturePercent?: Ends | null;
  waterActivity?: Ends | null;
  grainedWaterActivity?: Ends | null;
  doctorPercent?: Figure;
  sucrosePerWater?: Ends | null;
  supersaturation?: Ends | null;
  dryGlassCelsius?: Figure;
  glassCelsius?: Ends | null;
  glassAboveRoomCelsius?: Ends | null;
  texture?: { low: string; high: string } | null;
  sweetness?: Ends | null;
  kilojoulesPer100Grams?: Figure;
  kilocaloriesPer100Grams?: Figure;
  americanKilocaloriesPer100Grams?: Figure;
  gramsPerMillilitre?: Ends | null;
  overrunPercent?: Ends | null;
  millilitres?: Ends | null;
}

/** `kettlemark show` */
export interface Table {
  name: string;
  title?: string;
  percentOf: string;
  batchGiven: boolean;
  altitudeMetres: number;
  pressureKilopascals: number;
  stages: {
    name: string;
    title?: string;
    vessel?: string;
    rows: {
      kind: 'weighed' | 'taken';
      name: string;
      written: string;
      percentOfCharge?: Figure;
      grams?: Figure;
    }[];
    weighedGrams: number;
    percentOfCharge: number;
    chargedGrams: number;
    boiledAwayGrams: number;
    leftGrams?: Figure;
    leftSlackGrams: number;
    waterPercent?: Figure;
    celsiusLow: number;
    celsiusHigh: number;
    states: string[];
    figures: MassFigures;
  }[];
  totals: {
    chargeGrams: number;
    percentOfCharge: number;
    boiledAwayGrams: number;
    cookedGrams?: Figure;
    cookedSlackGrams?: Figure;
    yieldPercent?: Figure;
    yieldPercentLow?: Figure;
    yieldPercentHigh?: Figure;
    waterPercent?: Figure;
    figures?: MassFigures | null;
  };
}

/** `kettlemark sheet`: each figure in full, and as the sheet shows it. */
export interface Sheet {
  name: string;
  title: string;
  code: string | null;
  version: string | null;
  since: string | null;
  issuedFor: string | null;
  stale: boolean;
  status: string | null;
  author: string | null;
  house: string | null;
  madeOutOn: string;
  reader: 'chef' | 'home' | 'production' | 'bench';
  language: string;
  figures: {
    id: string;
    value: Figure;
    low: Figure;
    high: Figure;
    unit: string;
    spread: 'none' | 'range' | 'tolerance' | 'band';
    basis: 'written' | 'exact' | 'model' | 'measured' | 'practice';
    shown: string;
    unknown?: string;
  }[];
  notice: string;
}

interface Listed {
  group: string;
  words: string[];
  from: { ingredient: string; gramsIn100g?: Figure; ways: string[] }[];
  law: string;
}

type Standing = 'holds' | 'broken' | 'unknown';

/** `kettlemark label`, for each market. */
export type Labels = {
  name: string;
  title: string;
  market: 'EU' | 'US';
  notice: string;
  allergens: Listed[];
  mayContain: Listed[];
  onSite: Listed[];
  allergenNotes: string[];
  diets: { diet: string; standing: Standing; offenders: string[]; silent: string[] }[];
  claims: { claim: string; standing: Standing; grounds: string[]; law: string }[];
  cautions: { caution: string; stated: boolean; statement: string; reason: string; law: string }[];
  ingredientList: string;
  contains?: string;
  ingredients: { label: string; gramsIn100g?: Figure; namedInTitle: boolean; from: string[] }[];
  ingredientNotes: string[];
  nutrition: {
    pieceGrams?: number;
    rows: { name: string; unit: string; in100g?: Figure; inPiece?: Figure }[];
  };
}[];

interface Correction {
  quantity: string;
  unit: string;
  trials: string[];
  readings: number;
  mean: number;
  spread?: Figure;
  low?: Figure;
  high?: Figure;
  enough: boolean;
}

/** `kettlemark trials` */
export interface Trials {
  trials: {
    name: string;
    formula?: string;
    day?: string;
    house?: string;
    batchGrams?: number;
    olderVersion?: boolean;
    otherwiseThanWritten?: boolean;
    readings?: {
      of: string;
      quantity: string;
      unit: string;
      measured: number;
      predicted?: Figure;
      low?: Figure;
      high?: Figure;
      difference?: Figure;
      verdict: string;
      unknownBecause?: string;
    }[];
    thermometers?: {
      stage?: string;
      readCelsius: number;
      boilsCelsius?: Figure;
      waterPercentByWeight?: Figure;
      waterPercentByProbe?: Figure;
    }[];
    air?: {
      stage: string;
      gramsPerMillilitre: number;
      gramsPerMillilitreWithoutAir?: Figure;
      overrunPercent?: Figure;
    }[];
  }[];
  houses: {
    name?: string;
    corrections: Correction[];
    formulas: Record<string, Correction[]>;
  }[];
}

/** A figure as it is told, with the numbers behind it by their names. */
type Told = { text: string; unknownBecause?: string } & Record<string, string | number>;

interface ToldFinding {
  severity: Severity;
  rule: string;
  message: string;
}

/** `kettlemark changes` */
export interface Changes {
  from: string;
  to: string;
  edits: {
    kind: string;
    name: string;
    how: string;
    lines: { added: boolean; line: string }[];
  }[];
  items: {
    kind: string;
    name: string;
    how: string;
    causes: string[];
    figures: { group: string; name: string; before: Told; after: Told }[];
    newFindings: ToldFinding[];
    goneFindings: ToldFinding[];
  }[];
  doses: {
    formula: string;
    stage: string;
    ingredient: string;
    measure: string;
    statedBefore: Told;
    statedAfter: Told;
    percentBefore: number;
    percentNow: number;
    percentToKeep: number;
    gramsToKeep?: number;
    percentByLinearRule?: number;
  }[];
}
