import { describe, expect, it } from "vitest";
import type { MissingForSetting } from "../../../src/questions/setting.ts";
import type { LeftOut } from "../../../src/questions/uncertainty-budget.ts";
import type { CautionCode, Where } from "../../../src/results/caution.ts";
import type { Words } from "../../../src/wording/words.ts";
import { englishIn, numbersIn } from "../../support/bilingual.ts";
import { english, german } from "../../support/words.ts";

const where: Where = { bin: "1", product: "Weizen", fill: 2, catches: [1] };

/** What was written beside a catch. */
const noted = {
  catch: 2,
  note: "Sack 7 verrutscht",
  operator: "B",
  checked: "nachgewogen",
  extra: { Los: "12" },
};
const silent = { catch: 2, note: null, operator: null, checked: null, extra: { Los: "" } };

/** A fact under every name that some caution reads; each sentence passes over what it does not know. */
const many = {
  mostPooled: 8,
  pooledHalfWidth: 0.046,
  above: 0.08,
  below: 0.012,
  borne: 0.05,
  of: "target",
  rateKgPerHa: 152,
  addedUp: true,
  against: "bin level",
  band: 0.05,
  backWith: 8,
  bandInDifferences: 12.7,
  beforeFills: [4, 7],
  bias: -0.04,
  bins: ["1", "2"],
  blocks: 5,
  bookKgPerTurn: 0.3,
  borrowed: true,
  by: "Tag",
  catches: 3,
  caughtLower: 30,
  caughtName: "mittel",
  caughtRatio: 0.7,
  caughtUpper: 40,
  chance: 0.83,
  change: -0.02,
  columns: ["operator", "Waage"],
  complete: 4,
  constantKg: 0.43,
  correlation: -0.9,
  densityKgPerM3: 900,
  df: 7.34,
  difference: 0.05,
  different: 5,
  divisionKg: 0.02,
  earlierFills: 3,
  expectedByChance: 0.4,
  explainsSince: 5,
  fill: 2,
  fills: 6,
  fillsSince: 3,
  from: "other bins",
  file: "spreads.json",
  spreads: 40,
  scatters: 42,
  assumedFactor: Math.E,
  first: "Weizen",
  firstHalfWidth: 0.041,
  halfWidth: 0.02,
  heaviestCatchKg: 15,
  heaviestGiven: true,
  heavyPerPercent: 0.4,
  costs: 4,
  currency: "CAD",
  saves: 9.1,
  high: "B",
  low: "A",
  highest: 800,
  highestKgPerHa: 140,
  instead: "vorn",
  was: "cart.skid_percent",
  now: "cart.slip_percent",
  interceptSlopeKgPerTurn: 0.31,
  key: "machine",
  leastTurns: 30,
  leftOutFill: 4,
  lentBy: { fills: 4, meters: 2, assumed: false },
  limit: 0.01,
  longestPauseDays: 21,
  lower: -0.03,
  lowerKg: 0.4,
  lowerKgPerTurn: 0.28,
  lowest: 600,
  lowestKgPerHa: 90,
  medianKgPerTurn: 0.14,
  meters: 2,
  mishaps: ["tare-left-in", "one-turn-more"],
  missingFills: 3,
  mostCatches: 8,
  name: "vron",
  needed: 5,
  nextFill: 0.051,
  nextFillWithAll: 0.288,
  normalisedError: 1.8,
  otherProducts: ["Gerste", "Erbse"],
  perFill: 0.004,
  outlets: 12,
  outsideDf: 4,
  number: 3,
  pairs: 3,
  power: 0.4,
  productPerPercent: 0.6,
  products: 3,
  pValue: 0.03,
  rateError: 0.045,
  question: "outliers",
  ratio: 2.5,
  reason: "0/0",
  relative: 0.02,
  relativeChange: -0.018,
  relativeDifference: 0.12,
  relativeRange: 0.06,
  grossRange: 0.15,
  relativeResidual: 0.081,
  remark: noted,
  remarks: [noted, { ...noted, catch: 3 }],
  sameProduct: true,
  scope: "between fills",
  second: "Gerste",
  settingError: 0.012,
  season: "2026",
  setAside: 2,
  share: 0.6,
  sinceFill: 3,
  spreadFills: 9,
  skipHalfWidth: 0.03,
  step: 0.02,
  stepName: "hoch",
  stepRatio: 0.9,
  stepKg: 0.05,
  tareShare: 0.05,
  targetKgPerHa: 150,
  testedError: 0.002,
  timesFellows: 2.04,
  timesMedian: 9.8,
  timesTooNarrow: 2.3,
  tolerance: 0.03,
  turns: 20,
  turnsPerMin: 40,
  unit: "lb",
  usualKnown: true,
  upper: 0.02,
  upperKg: 0.46,
  upperKgPerTurn: 0.33,
  usualCatches: 2.5,
  usualKgPerTurn: 0.31,
  variable: "moisture",
  variables: ["moisture", "bulk density"],
  verdict: "undecided",
  what: "bin",
  widthFactor: 12.7,
  withoutKgPerTurn: 0.3,
  wrongPValue: 0.0002,
  wrongVerdict: "different",
  asBin: "hinten",
  asCatch: 1,
  asFill: 4,
  catch: 2,
  cells: 12,
  column: "moisture",
  countedOn: 2,
  days: 364,
  differBy: "letter",
  header: "weglassen",
  heldAgainst: "book-value",
  here: 0.36,
  keys: 2,
  largest: 0.135,
  last: "2026-04-02",
  line: 7,
  massesKg: [6, 12, 18, 24, 30],
  meant: "lb",
  medianCatchKg: 3.1,
  net: 20,
  other: "vorn",
  otherFills: 5,
  others: ["April", "Mai"],
  percent: 0.95,
  read: "kg",
  readAs: 0.135,
  rows: 4,
  seedShare: "germination",
  sheet: "Blatt1",
  signs: ["U+200B"],
  there: 0.3,
  times: 2.2,
  turnsWritten: [20, 40, 60],
  usual: 0.3,
  year: 2062,
};

/** Nothing known, one of each, and the other side of every fork. */
const few = {
  ...many,
  below: null,
  of: "step",
  addedUp: false,
  against: "catch order",
  beforeFills: [4],
  bias: 0.04,
  borrowed: false,
  by: "curvature",
  catches: 1,
  change: 0.02,
  correlation: 0.9,
  currency: null,
  df: 1,
  different: 1,
  divisionKg: null,
  earlierFills: 1,
  fills: 1,
  heaviestGiven: false,
  fillsSince: 1,
  highestKgPerHa: 80,
  leastTurns: null,
  spreads: 1,
  scatters: 1,
  lentBy: { fills: 0, meters: 1, assumed: false },
  longestPauseDays: null,
  lowerKg: null,
  meters: 1,
  mishaps: [],
  missingFills: 1,
  key: "season",
  nextFill: null,
  outlets: 1,
  outsideDf: 0,
  pairs: 1,
  products: 1,
  rateError: -0.045,
  remark: silent,
  remarks: [silent],
  saves: null,
  sameProduct: false,
  scope: "within fills",
  season: undefined,
  explainsSince: null,
  settingError: 0,
  tareShare: null,
  setAside: 1,
  sinceFill: null,
  timesFellows: 1.32,
  turns: 1,
  upperKg: null,
  upperKgPerTurn: null,
  usualKnown: false,
  asBin: null,
  cells: 1,
  column: "bin-level",
  differBy: "invisible",
  heldAgainst: "target",
  keys: 1,
  meant: null,
  otherFills: 1,
  rows: 1,
  seedShare: "emergence",
  what: "machine",
};

const none = {
  ...few,
  above: null,
  from: "assumption",
  file: null,
  lentBy: { fills: 0, meters: 0, assumed: true },
  meters: 0,
  mostCatches: 2,
  earlierFills: 0,
  missingFills: 0,
  longestPauseDays: 1,
  catches: 2,
  fills: 2,
  timesFellows: 0.71,
  differBy: "look-alike",
  heldAgainst: "other-fills",
};

/** What a caution lists by names of the code, all of them. */
const lists: Readonly<Partial<Record<CautionCode, object>>> = {
  "prices-missing": {
    missing: [
      "response",
      "pricePerKg",
      "targetKgPerHectare",
      "valueOfHour",
      "minutesPerCatch",
      "areaHectares",
      "areaPerFillHectares",
    ],
  },
  "setting-needs": {
    missing: [
      "target rate",
      "thousand-kernel mass",
      "germination",
      "emergence",
      "working width",
      "drive",
      "wheel travel",
      "working speed",
      "meter speeds",
    ] satisfies MissingForSetting[],
  },
  "budget-leaves-out": {
    sources: [
      "catch scatter",
      "reading gross",
      "reading tare",
      "scale error",
      "turn count",
      "fill to fill",
      "working width",
      "wheel travel",
      "slip",
      "drive",
      "speed measure",
    ] satisfies LeftOut[],
  },
  "catches-disagree": {
    pairs: [
      { catches: [1, 2], value: 0.31 },
      { catches: [1, 3], value: 0.38 },
    ],
  },
  "files-read-together": { files: ["a", "b"], firstRows: [2, 9] },
  "field-check-without-uncertainty": { missing: ["filled", "left", "area"] },
  "needs-rows": { questions: ["outliers", "skipping"] },
  "outlets-outside-band": { outlets: ["a", "b"] },
};

const namesIn = (facts: object) =>
  Object.values(facts).flatMap((names: unknown[]) =>
    names.filter((name) => typeof name === "string"),
  );

function sentence(words: Words, code: CautionCode, facts: object): string {
  const say = words.cautions[code] as (facts: object, where: Where) => string;
  return say({ ...facts, ...lists[code] }, where);
}

describe.each([
  ["many", many],
  ["one of each", few],
  ["hardly any", none],
])("cautions in German, facts about %s", (_, facts) => {
  const codes = Object.keys(english().cautions) as CautionCode[];

  it.each(codes)("%s is a whole sentence with the numbers of the English one", (code) => {
    const said = sentence(german(), code, facts);
    expect(said).toMatch(/^„?[A-ZÄÖÜ0-9].*\.$/s);
    expect(said).not.toMatch(/undefined|NaN|\[object/);
    expect(englishIn(said)).toEqual([]);
    expect(numbersIn(said, "de")).toEqual(numbersIn(sentence(english(), code, facts), "en"));
  });

  it.each(Object.keys(english().decision.looks))(
    "%s is looked at in a few German words",
    (code) => {
      const look = (words: Words) => {
        const say = words.decision.looks as Readonly<
          Record<string, (facts: object, where: Where) => string>
        >;
        return say[code]?.(facts, where) ?? "";
      };
      const said = look(german());
      expect(said).toMatch(/^\S.*[^.]$/);
      expect(said).not.toMatch(/undefined|NaN|\[object/);
      expect(englishIn(said)).toEqual([]);
      expect(numbersIn(said, "de")).toEqual(numbersIn(look(english()), "en"));
    },
  );

  it.each(Object.entries(lists))("%s lists nothing by a name of the code", (code, list) => {
    const said = sentence(german(), code as CautionCode, facts);
    const names = namesIn(list).filter((name) => name.length > 1);
    expect(names.filter((name) => said.includes(name))).toEqual([]);
  });
});
