import type { OptionValues } from "commander";
import type { AnalysisOptions, ComparisonChoices } from "../analysis/options.ts";
import type { CatchesNeededChoices } from "../questions/catches-needed/options.ts";
import type { TrialPlanOptions } from "../questions/trial-plan/options.ts";
import { editions } from "../report/editions/edition.ts";
import { usualTableFormats } from "../report/tables/table-formats.ts";
import { varianceLaws } from "../results/options.ts";
import { languageTags } from "../wording/languages.ts";
import {
  parseAmount,
  parseAmounts,
  parseCatchKey,
  parseChance,
  parseChartFormats,
  parseKey,
  parseMass,
  parseNames,
  parsePercent,
  parseTableFormats,
  severities,
} from "./arguments.ts";
import { budgets } from "./budget-flags.ts";
import {
  asWritten,
  choice,
  type Flag,
  flag,
  given,
  hidden,
  optionalFlag,
  type SettingFlag,
  sets,
  toggle,
} from "./flag.ts";
import { adding, importing } from "./own-sheet-flags.ts";
import { parseQuantity, parseSpan } from "./quantities.ts";
import { judging, trial } from "./trial-flags.ts";
import type { TypedSetup } from "./typed-setup.ts";

/** How further catches are planned: asked of `report` and `enough` alike, which answer alike. */
const planning: readonly SettingFlag<CatchesNeededChoices>[] = [
  sets(flag("--assurance <share>", "assurance", parseChance), (assurance) => ({ assurance })),
  sets(flag("--turns <n>", "turns", parseAmount), (turnsPerCatch) => ({ turnsPerCatch })),
  sets(flag("--heaviest-catch <mass>", "heaviestCatch", parseMass), (heaviestCatchKg) => ({
    heaviestCatchKg,
  })),
];

const precision: readonly SettingFlag<AnalysisOptions>[] = [
  sets(flag("--level <share>", "level", parseChance), (level) => ({ level })),
  sets(flag("--tolerance <share>", "tolerance", parsePercent), (tolerance) => ({ tolerance })),
];

const scale = sets(flag("--scale <mass>", "scale", parseMass), (scaleDivisionKg) => ({
  scaleDivisionKg,
}));

/** What a setup would say of target and drive; the flag counts before the file. */
const typedSetup: readonly SettingFlag<TypedSetup>[] = [
  sets(flag("--target <rate>", "target", parseQuantity), (target) => ({ target })),
  sets(flag("--bushel <mass>", "bushel", parseQuantity), (bushel) => ({ bushel })),
  sets(flag("--width <length>", "width", parseQuantity), (width) => ({ width })),
  sets(flag("--speed <speed>", "speed", parseSpan), (speed) => ({ speed })),
  sets(flag("--wheel <length>", "wheel", parseQuantity), (wheel) => ({ wheel })),
  sets(flag("--slip <share>", "slip", parsePercent), (slip) => ({ slip })),
  sets(flag("--steps <list>", "steps", parseAmounts), (steps) => ({ steps })),
  sets(flag("--meter-speed <speed>", "meterSpeed", parseSpan), (meterSpeed) => ({ meterSpeed })),
];

const weighting: readonly SettingFlag<AnalysisOptions>[] = [
  sets(choice("--weighting <law>", "weighting", varianceLaws), (varianceLaw) => ({ varianceLaw })),
];

const lending: readonly SettingFlag<AnalysisOptions>[] = [
  sets(choice("--borrow <whom>", "borrow", ["other bins", "none"]), (borrow) => ({ borrow })),
];

/** Which products are compared, and how they are judged: asked of `report` and `plan` alike, so that they agree. */
const comparison: readonly SettingFlag<ComparisonChoices>[] = [
  sets(toggle("--compare", "compare"), (compare) => (compare ? { when: "always" } : {})),
  sets(toggle("--no-compare", "noCompare"), (compare) => (compare ? {} : { when: "never" })),
  sets(toggle("--trial", "trial"), () => ({ trial: { fills: null } })),
  sets(choice("--order <order>", "productOrder", ["planned", "size"]), (order) => ({
    order: order === "size" ? "by size" : "as listed",
  })),
  sets(flag("--blocks <column>", "blocks", asWritten), (blocks) => ({ blocks })),
  ...judging,
  sets(flag("--new-density <kg/m³>", "newDensity", parseAmount), (newDensityKgPerM3) => ({
    newDensityKgPerM3,
  })),
];

const library = flag("--library <file>", "library", asWritten);
const noSetup = toggle("--no-setup", "noSetup");
const sheet = flag("--sheet <name>", "workbookSheet", asWritten);
const keys = flag("--key <key=name>", "keys", parseKey);
const replace = toggle("--replace", "replace");
/** Asked for once; now a plan does so unless it is told not to. */
const inBlocksAnyway = hidden("--blocks");
/** The older name of `--replace`. */
const force = hidden("--force");
const usualLanguage = "en";
const language = choice("--language <tag>", null, languageTags, usualLanguage);
const surface: readonly Flag<string>[] = [
  choice("--units <system>", null, ["metric", "us"], "metric"),
  language,
];

/** The language asked for, told before anything is parsed, since help and refusals are said in it too; else the usual one. */
export function languageIn(args: readonly string[]): string {
  const asked = args.flatMap((arg, at) =>
    arg === "--language" ? (args[at + 1] ?? []) : (/^--language=(.*)$/s.exec(arg)?.[1] ?? []),
  );
  return asked.filter((tag) => languageTags.includes(tag)).at(-1) ?? usualLanguage;
}

/** The flags of each command, in the order of its help. */
export const flags = {
  report: [
    ...planning,
    flag("--setup <file>", "setupOfReport", asWritten),
    noSetup,
    flag("--out <dir>", "reportFolder", asWritten, "evencatch-report"),
    ...precision,
    ...weighting,
    ...lending,
    library,
    ...comparison,
    replace,
    optionalFlag("--tables [formats]", "tables", usualTableFormats.join(","), parseTableFormats),
    choice("--table-decimal <mark>", "tableDecimal", ["point", "comma"]),
    choice("--table-names <names>", "tableNames", ["own", "broom"]),
    flag("--charts <formats>", "charts", parseChartFormats),
    sheet,
    keys,
    flag("--leave-out <bin:fill:catch>", "leaveOut", parseCatchKey),
    flag("--bin <name>", "reportBin", parseNames),
    ...surface,
    choice("--edition <name>", "edition", editions, "short"),
    toggle("--interactive", "interactive"),
    toggle("--json", "reportJson"),
    choice("--fail-on <severity>", "failOn", severities),
  ],
  enough: [
    ...planning,
    flag("--setup <file>", "setupOfEnough", asWritten),
    noSetup,
    ...precision,
    scale,
    ...typedSetup,
    ...lending,
    library,
    toggle("--detail", "detail"),
    toggle("--next", "next"),
    ...budgets,
    sheet,
    keys,
    ...surface,
    toggle("--json", "answersJson"),
  ],
  plan: [
    ...trial,
    inBlocksAnyway,
    flag("--from <file>", "trialFrom", asWritten),
    flag("--setup <file>", "setupOfPlan", asWritten),
    noSetup,
    sheet,
    keys,
    flag("--out <dir>", "sheetFolder", asWritten),
    replace,
    force,
    ...surface,
    toggle("--json", "planJson"),
  ],
  sheet: [
    ...planning,
    flag("--setup <file>", "setupOfSheet", asWritten),
    noSetup,
    flag("--out <dir>", "sheetsFolder", asWritten, "."),
    ...precision,
    scale,
    ...weighting,
    ...lending,
    library,
    replace,
    sheet,
    keys,
    ...surface,
  ],
  page: [
    flag("--setup <file>", "setupOfPage", asWritten),
    library,
    flag("--out <file>", "pageFile", asWritten, "evencatch.html"),
    replace,
    ...surface,
  ],
  spreads: [
    flag("--out <file>", "spreadsFile", asWritten, "spreads.json"),
    flag("--classes <file>", "classes", asWritten),
    toggle("--sha256", "sha256"),
    flag("--setup <file>", "setupOfSpreads", asWritten),
    noSetup,
    sheet,
    keys,
    replace,
    language,
  ],
  check: [
    flag("--setup <file>", "setupOfCheck", asWritten),
    noSetup,
    sheet,
    keys,
    language,
    toggle("--json", "findingsJson"),
  ],
  import: [...importing, replace, language, toggle("--json", "importJson")],
  add: [...adding, language],
  template: [replace, force, language],
};

/** What `report` or `enough` were told of an analysis; the rest stays with setup and default. */
export function analysisGiven(values: OptionValues): Partial<AnalysisOptions> {
  return {
    ...given([...precision, scale, ...weighting, ...lending], values),
    planning: given([...planning, ...budgets], values),
    comparison: given(comparison, values),
  };
}

/** What `enough` was told of target and drive. */
export function setupGiven(values: OptionValues): TypedSetup {
  return given(typedSetup, values);
}

/** What `plan` was told of a trial. */
export function trialGiven(values: OptionValues): Partial<TrialPlanOptions> {
  return given(trial, values);
}
