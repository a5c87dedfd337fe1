import { type Analysis, analyse } from "../../src/analysis/analyse.ts";
import { decide } from "../../src/analysis/decision.ts";
import { answerTable } from "../../src/cli/answer-table.ts";
import { decisionText, groundText } from "../../src/cli/decision-text.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import type { Catch, CatchLog } from "../../src/data/types.ts";
import { editions } from "../../src/report/editions/edition.ts";
import { reportDocument } from "../../src/report/report.ts";
import { catchesNeededSection } from "../../src/report/sections/catches-needed.ts";
import { costSection } from "../../src/report/sections/cost.ts";
import { explainingVariablesSection } from "../../src/report/sections/explaining-variables.ts";
import { fieldCheckSection } from "../../src/report/sections/field-check.ts";
import { outletsSection } from "../../src/report/sections/outlets.ts";
import { productComparisonSection } from "../../src/report/sections/product-comparison.ts";
import { settingSection } from "../../src/report/sections/setting.ts";
import { skippingSection } from "../../src/report/sections/skipping.ts";
import { trialSection } from "../../src/report/sections/trial.ts";
import { trialPlanSection } from "../../src/report/sections/trial-plan.ts";
import { uncertaintyBudgetSection } from "../../src/report/sections/uncertainty-budget.ts";
import { catchSheetDocument, catchSheetOfPlan } from "../../src/report/sheets/catch-sheet.ts";
import { caution } from "../../src/results/caution.ts";
import type { Words } from "../../src/wording/words.ts";
import { aCatch, aFill } from "./catches.ts";
import { analysisOf, states } from "./decision-states.ts";
import { demo } from "./demo.ts";
import {
  aCheck,
  budgetOf,
  checked,
  evenness,
  motorDrive,
  set,
  speeds,
  wanted,
  wheelDrive,
} from "./field-answers.ts";
import { fleets } from "./fleets.ts";
import { aLog, byMoney, needed, priced, skipped, someTime, someTrial } from "./planning-answers.ts";
import {
  compared,
  explained,
  fillsOf,
  fourProducts,
  inBlocks,
  planned,
} from "./product-answers.ts";
import { present } from "./reference.ts";
import { inventedFills } from "./simulated-fills.ts";
import { inventedTrial, trialCatches, trialsToTell, trialWithGaps } from "./trials.ts";

/** Something to say, in whatever words: a report or a part of one. */
export interface Occasion {
  readonly name: string;
  say(words: Words): void;
}

/** Reports on the demo sets, on logs with almost nothing in them, and the answers that no report holds. */
export async function occasions(): Promise<readonly Occasion[]> {
  return [
    ...(await demoReports()),
    ...(await everyState()),
    await aFailedQuestion(),
    report("a planned trial", analyse(aCatchLog(steady), null, { drift: "never" })),
    ...[3, 7].map((fill) =>
      report(`a meter opened before fill ${fill}`, analyse(aCatchLog(steady), openedBefore(fill))),
    ),
    ...fleets.map(([name, log]) => report(name, analyse(log))),
    ...smallLogs.map(([name, catches]) => report(name, analyse(aCatchLog(catches)))),
    ...sections,
    { name: "what only other callers ask", say: sayTheRest },
    { name: "charts that do not draw all there is", say: sayWhatIsDrawn },
  ];
}

function openedBefore(fill: number) {
  const text = JSON.stringify({ bins: [{ bin: "1", starts_afresh: fill }] });
  return readSetup({ name: "setup.json", text });
}

/** Functions that no section calls: notebooks and other callers do. */
function sayTheRest({ delivery, outliers, skipping }: Words): void {
  const { meters } = analyse(aCatchLog(slipped));
  for (const answers of meters) {
    delivery.plusMinus(answers.delivery);
    delivery.value(answers.delivery);
    delivery.interval(answers.delivery);
    skipping.leftAt(present(answers.skipping));
    for (const { explanations } of present(answers.outliers).suspects)
      for (const one of explanations) outliers.explanation(one);
  }
}

/** Logs so long that a chart leaves some of them out take seconds to analyse; the sentences need none. */
function sayWhatIsDrawn({ format, frame: { thinned } }: Words): void {
  const some = [format.count(1000), format.count(12_345)] as const;
  thinned.catches(...some, format.count(13));
  thinned.fills(...some);
  thinned.influences(...some);
}

async function demoReports(): Promise<readonly Occasion[]> {
  const sets = ["season", "first-morning", "product-trial"] as const;
  return Promise.all(
    sets.map(async (name) => {
      const { log, setup } = await demo(name);
      return report(name, analyse(log, setup));
    }),
  );
}

/** Every way in which a decision comes about, on paper and on the terminal. */
async function everyState(): Promise<readonly Occasion[]> {
  return Promise.all(
    Object.entries(states).map(async ([name, state]) => report(name, await analysisOf(state))),
  );
}

/** A report in which what to set could not be computed. */
async function aFailedQuestion(): Promise<Occasion> {
  const analysis = await analysisOf(states.enough);
  const answers = present(analysis.meters[0]);
  const { bin, product } = answers;
  const facts = { question: "setting", reason: "a reason" } as const;
  const failure = caution("needed-not-computed", { bin, product }, facts);
  const cautions = [...answers.cautions, failure];
  const about = {
    place: { farm: null, machine: null, bin, product },
    newest: { fill: answers.delivery.fill, number: 1, season: null },
  };
  const ground = { ...answers, about, setting: null, findings: cautions, setup: null };
  const failed = { ...answers, setting: null, cautions, decision: decide(ground) };
  return report("a failed question", { ...analysis, meters: [failed] });
}

function report(name: string, analysis: Analysis): Occasion {
  const file = { name: "catches.csv", sheet: "2026", sha256: "0".repeat(64) };
  const inputs = { catches: [file], setup: { ...file, sheet: null }, library: null };
  const meta = { title: null, setupSource: null, version: "1", inputs };
  return {
    name,
    say: (words) => {
      for (const edition of editions) reportDocument(analysis, { ...meta, edition }, words);
      answerTable(analysis, words);
      for (const answers of analysis.meters) decisionText(answers, analysis, words);
      groundText(analysis, words);
    },
  };
}

function aCatchLog(catches: readonly Catch[]): CatchLog {
  return { source: "catches.csv", catches, massUnit: "kg", cautions: [] };
}

const steady = inventedFills({ fills: 8, catches: 4, spread: 0.01, scatter: 0.01 }, 3);
const drifting = steady.map((row) => ({ ...row, netKg: row.netKg * (1 + 0.02 * row.fill) }));
const slipped = steady.map((row) =>
  row.fill === 8 && row.catch === 2 ? { ...row, netKg: row.netKg * 1.3 } : row,
);

const quiet = fillsOf("wheat", [0.3, 0.31, 0.305, 0.295]);
const doubtful = [
  ...steady.filter(({ fill }) => fill < 8),
  ...aFill(
    [6.1, 6.05, 6.12, 6.02, 7.9, 8.3, 6.08].map((netKg) => [20, netKg] as const),
    { fill: 8 },
  ),
];
const dated = steady.map((row) => ({
  ...row,
  takenAt: `2026-${row.fill < 5 ? "03" : "05"}-${10 + row.fill}T08:00`,
}));

/** Fills of these deliveries, two catches each but the last, which has so many. */
const deliveries = (list: readonly number[], newest = 2) =>
  list.flatMap((delivery, i) =>
    aFill(
      Array.from({ length: i === list.length - 1 ? newest : 2 }, (_, c) => [
        20,
        20 * delivery * (c % 2 === 0 ? 0.995 : 1.005),
      ]),
      { fill: i + 1 },
    ),
  );
const calm = [0.296, 0.3015, 0.2988, 0.3042, 0.2975, 0.3011];

const smallLogs: readonly (readonly [string, readonly Catch[]])[] = [
  ["one catch", [aCatch({ turns: 20, netKg: 6.02 })]],
  [
    "two catches",
    aFill([
      [20, 6.02],
      [20, 6.11],
    ]),
  ],
  [
    "two catches that disagree",
    aFill([
      [20, 6.02],
      [20, 9.11],
    ]),
  ],
  [
    "one fill",
    aFill([
      [10, 3.02],
      [20, 6.11],
      [40, 12.05],
      [20, 5.98],
    ]),
  ],
  [
    "catches that agree exactly",
    aFill([
      [20, 6],
      [20, 6],
      [20, 6],
    ]),
  ],
  ["one catch after other fills", [...aLog(3, 0), aCatch({ fill: 4, turns: 20, netKg: 6.1 })]],
  ["two fills", aLog(1, 3)],
  ["a steady log", steady],
  [
    "a pair that disagrees",
    [
      ...quiet,
      ...aFill(
        [
          [20, 6.1],
          [20, 8.2],
        ],
        { fill: 5 },
      ),
    ],
  ],
  ["two doubtful catches", doubtful],
  ["a pause between fills", dated],
  ["a drifting log", drifting],
  ["a slipped catch", slipped],
  [
    "a catch left out",
    slipped.map((row) => (row.netKg > 7.4 ? { ...row, leftOut: "Sack verwechselt" } : row)),
  ],
  ["a fill that differs", deliveries([...calm, 0.34])],
  ["a fill that differs, confirmed", deliveries([...calm, 0.34], 4)],
  ["a fill that stood apart", deliveries([...calm, 0.34, 0.2995])],
  ["a meter that moved", deliveries([...calm, 0.3165, 0.319])],
  ["a meter that moved a while ago", deliveries([...calm, 0.3165, 0.319, 0.3148, 0.3201])],
  ["fills that fall", deliveries(Array.from({ length: 9 }, (_, i) => 0.3 - 0.003 * i))],
  [
    "a bag not emptied in an early fill",
    steady.map((row) =>
      row.fill === 3 && row.catch === 2
        ? { ...row, netKg: 2 * row.netKg, note: "Sack 7", operator: "B" }
        : row,
    ),
  ],
  [
    "an early pair that disagrees",
    steady
      .filter(({ fill, catch: number }) => fill !== 3 || number < 3)
      .map((row) => (row.fill === 3 && row.catch === 2 ? { ...row, netKg: 2 * row.netKg } : row)),
  ],
  [
    "three catches that disagree",
    aFill([
      [20, 6],
      [20, 6.06],
      [20, 9.6],
    ]),
  ],
  [
    "a catch that was looked at",
    slipped.map((row) => (row.netKg > 7.4 ? { ...row, checked: "nachgewogen" } : row)),
  ],
  ["fills with a gap", steady.filter(({ fill }) => fill !== 4 && fill !== 5)],
];

const products = { equivalenceMargin: 0.02 };

const sections: readonly Occasion[] = [
  part("a plan before any catch", (words) => catchesNeededSection(needed(null), words, "a")),
  part("a plan with time and budget", (words) =>
    catchesNeededSection(needed(aLog(4, 3), { time: someTime, trial: someTrial }), words, "a"),
  ),
  part("a tolerance out of reach", (words) =>
    catchesNeededSection(needed(aLog(4, 3), {}, 0.002), words, "a"),
  ),
  ...([1, 2] as const).flatMap((catches) =>
    [0.5, 40, 4000].flatMap((hectares) =>
      (["default", "option"] as const).map((toleranceFrom) =>
        part(`${catches} catches of ${hectares} ha by ${toleranceFrom}`, (words) => {
          const result = needed(aLog(8, catches), { ...byMoney(hectares), toleranceFrom });
          catchesNeededSection(result, words, "a");
          costSection(priced(aLog(8, catches)), words, "a", result);
        }),
      ),
    ),
  ),
  ...[2, 6].map((fills) =>
    part(`the fill after ${fills + 1} that may go uncaught`, (words) => {
      for (const tolerance of [0.03, 0.2, 0.0001]) {
        const plan = { fill: "next", ...byMoney(0.5) } as const;
        for (const toleranceFrom of ["default", "option"] as const)
          catchesNeededSection(
            needed(aLog(fills, 3), { ...plan, toleranceFrom }, tolerance),
            words,
            "a",
          );
      }
    }),
  ),
  part("so little known that what a catch saves has no limit", (words) =>
    catchesNeededSection(
      needed(aLog(0, 3), {
        ...byMoney(),
        prices: {
          ...present(byMoney().prices),
          response: { kind: "quadratic", curvaturePerHectarePerPercentSquared: 0.04 },
        },
      }),
      words,
      "a",
    ),
  ),
  part("a priced log", (words) => costSection(priced(aLog(5, 3)), words, "a")),
  part("prices without a currency", (words) =>
    costSection(priced(aLog(2, 3), { currency: null }), words, "a"),
  ),
  part("skipping at a fill's value", (words) =>
    skippingSection(skipped(aLog(6, 3), { assumed: { source: "fill", fill: 2 } }), words, "a"),
  ),
  part("skipping at the value before", (words) =>
    skippingSection(skipped(aLog(6, 3), { assumed: { source: "last fill" } }), words, "a"),
  ),
  ...[{}, products, { scale: "log", reference: "pea" } as const].map((given) =>
    part(`products with ${JSON.stringify(given)}`, (words) =>
      productComparisonSection(compared(fourProducts, given), words, "a"),
    ),
  ),
  ...[{}, products, { reference: "pea", equivalenceMargin: 0.001 }].map((given) =>
    part(`products in blocks with ${JSON.stringify(given)}`, (words) =>
      productComparisonSection(
        compared(inBlocks(fourProducts), { blocks: "block", ...given }),
        words,
        "a",
      ),
    ),
  ),
  part("products that differ by the same in every block", (words) =>
    productComparisonSection(
      compared(
        inBlocks(["wheat", "pea"].flatMap((product) => fillsOf(product, [0.4, 0.42, 0.39]))),
        { blocks: "block" },
      ),
      words,
      "a",
    ),
  ),
  part("nothing to compare", (words) =>
    productComparisonSection(compared(fillsOf("wheat", [0.4])), words, "a"),
  ),
  part("a new density", (words) =>
    explainingVariablesSection(explained(fourProducts, { newDensityKgPerM3: 780 }), words, "a"),
  ),
  part("no density", (words) =>
    explainingVariablesSection(explained(fillsOf("wheat", [0.4, 0.41])), words, "a"),
  ),
  part("a catch sheet", (words) => catchSheetDocument(catchSheetOfPlan(planned(products)), words)),
  part("a trial plan", (words) => trialPlanSection(planned(products), words, "a")),
  part("a trial plan by a log", (words) =>
    ([null, "too few fills", "within catch scatter"] as const).flatMap((untold, i) =>
      trialPlanSection(
        planned({
          ...products,
          fillSpread: untold === null ? 0.012 : 0.03,
          catchScatter: { relative: 0.011, turns: 20 },
          found: {
            source: "catches.csv",
            speaking: untold === null ? "planned products" : "every product",
            products: 2,
            fills: 10,
            fillSpread: untold === null ? { value: 0.012, df: 8 } : null,
            untold,
            withinBlocks: untold === null,
            catchScatter: { relative: 0.011, turns: 20, df: 30 },
          },
        }),
        words,
        `a${i}`,
      ),
    ),
  ),
  ...trialsToTell.map((given) => {
    const analysis = once(() => inventedTrial(given));
    return part(`a trial with ${JSON.stringify(given)}`, (words) =>
      trialSection(analysis(), words),
    );
  }),
  ...[trialWithGaps, trialCatches().slice(0, 8)].map((catches, i) => {
    const analysis = once(() => inventedTrial({}, {}, catches));
    return part(`a trial of which something cannot be compared, ${i}`, (words) =>
      trialSection(analysis(), words),
    );
  }),
  part("a trial plan within blocks", (words) =>
    trialPlanSection(planned({ ...products, analysis: "blocks", reference: "pea" }), words, "a"),
  ),
  part("a ground-wheel drive", (words) =>
    settingSection(set({ ...wheelDrive, ...speeds, ...wanted }), words, "a"),
  ),
  part("a gearbox of which one step was caught", (words) =>
    settingSection(
      set({ ...wheelDrive, ...wanted, drive: { ...wheelDrive.drive, caughtRatio: 0.8 } }),
      words,
      "a",
    ),
  ),
  part("a motor", (words) =>
    settingSection(set({ ...motorDrive, ...speeds, ...wanted }), words, "a"),
  ),
  part("no target", (words) => settingSection(set({}), words, "a")),
  part("a budget", (words) =>
    uncertaintyBudgetSection(
      budgetOf({
        ...wheelDrive,
        drive: { ratio: 0.9, stepNames: null, steps: null, kind: "ground-wheel" },
      }),
      words,
      "a",
    ),
  ),
  part("field checks", (words) =>
    fieldCheckSection(
      checked([aCheck(300), aCheck(500, { rows: 96, rowsShut: 4, overlap: 0.03 }), aCheck(900)]),
      words,
      "a",
    ),
  ),
  part("outlets", (words) =>
    outletsSection(evenness([-0.08, 0.01, 0.02, -0.01, 0.03, 0.09], 2), words, "a"),
  ),
  part("outlets caught once", (words) =>
    outletsSection(evenness([-0.01, 0.01, 0.02], 1), words, "a"),
  ),
];

function once<T extends object>(make: () => T): () => T {
  let made: T | null = null;
  return () => {
    made ??= make();
    return made;
  };
}

function part(name: string, say: (words: Words) => unknown): Occasion {
  return { name, say: (words) => void say(words) };
}
