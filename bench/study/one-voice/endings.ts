import type { MeterAnswers } from "../../../src/analysis/analyse.ts";
import {
  type Caution,
  type CautionCode,
  type Ending,
  endingsOf,
  isAbout,
} from "../../../src/results/caution.ts";
import type { InventedCatch, InventedLog, InventedSetup } from "./log.ts";
import { analysisOf } from "./surfaces.ts";

/** Every look-first of a log whose named ending does not end it; empty when all do. */
export async function brokenEndings(log: InventedLog): Promise<readonly string[]> {
  const { meters, cautions } = await analysisOf(log);
  const broken: string[] = [];
  for (const answers of meters) {
    if (answers.decision?.action !== "look-first") continue;
    const { reasons } = answers.decision;
    const found = [...cautions, ...answers.cautions].filter(
      (one) => reasons.includes(one.code) && isAbout(one, answers.delivery),
    );
    for (const one of found)
      for (const ending of endingsOf(one.code)) {
        const after = endedBy(ending, one, answers, log);
        if (after !== null && (await stillStands(one, answers, after)))
          broken.push(`${one.code} is not ended by ${ending}`);
      }
  }
  return broken;
}

async function stillStands(
  { code, where }: Caution,
  { bin, product }: MeterAnswers,
  log: InventedLog,
): Promise<boolean> {
  const { meters, cautions } = await analysisOf(log);
  const again = meters.find((one) => one.bin === bin && one.product === product);
  if (again?.decision == null || !again.decision.reasons.includes(code)) return false;
  // While a catch is in doubt nothing else about its fill can be settled.
  if (where.catches.length === 0 && again.decision.reasons.some(isAboutCatches)) return false;
  return [...cautions, ...again.cautions].some(
    (one) =>
      one.code === code &&
      one.asks === "look-first" &&
      where.catches.every((catchNumber) => one.where.catches.includes(catchNumber)),
  );
}

function isAboutCatches(code: CautionCode): boolean {
  return endingsOf(code).includes("checked");
}

/** The log after a person did what ends the finding; null: that takes another file, or cannot be done here. */
function endedBy(
  ending: Ending,
  { code, where }: Caution,
  answers: MeterAnswers,
  log: InventedLog,
): InventedLog | null {
  const { bin, delivery } = answers;
  const setup: InventedSetup = log.setup ?? { bins: [] };
  const isOne = (row: InventedCatch) =>
    row.bin === bin && row.fill === delivery.fill && where.catches.includes(row.catch);
  const withRows = (change: (row: InventedCatch) => InventedCatch) => ({
    ...log,
    rows: log.rows.map((row) => (isOne(row) ? change(row) : row)),
  });
  switch (ending) {
    case "answered": {
      if (where.catches.length > 0) return null;
      const answered = [{ code, bin, fill: delivery.fill, note: "looked into" }];
      return { ...log, setup: { ...setup, answered } };
    }
    case "checked":
      return where.catches.length === 0
        ? null
        : withRows((row) => ({ ...row, checked: "weighed again" }));
    case "excluded":
      return where.catches.length === 0 || where.catches.length === delivery.input.catches
        ? null
        : withRows((row) => ({ ...row, exclude: "yes", reason: "spilled" }));
    case "setup":
      return {
        ...log,
        setup: {
          ...setup,
          bins: setup.bins.map(({ target_rate: _, ...rest }) => rest),
        },
      };
    case "more-catches":
      return withMoreCatches(answers, log);
    case "field-check":
    case "corrected":
      return null;
  }
}

/** Twice as many catches and four at least, all like the last ones of the fill. */
function withMoreCatches({ bin, delivery }: MeterAnswers, log: InventedLog): InventedLog | null {
  const ofFill = log.rows.filter((row) => row.bin === bin && row.fill === delivery.fill);
  const last = ofFill.at(-1);
  if (last === undefined) return null;
  const most = Math.max(...log.rows.filter((row) => row.bin === bin).map((row) => row.catch));
  const wanted = Math.max(4, 2 * most) - ofFill.length;
  const more = Array.from({ length: wanted }, (_, i) => ({
    ...last,
    catch: last.catch + i + 1,
    netKg: last.netKg * (1 + (i % 2 === 0 ? 0.004 : -0.004)),
  }));
  return { ...log, rows: [...log.rows, ...more] };
}
