import { sum } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import { at } from "../../errors/at.ts";
import { type PooledScatter, pooledScatter } from "../catch-scatter.ts";
import { type Fill, type Meter, withCatches } from "../meters.ts";
import { type FillFinding, findInFill, isUnchecked, testsOf } from "./finding.ts";
import { type LendingRule, lending, outsideOf, scattersOf, screenedForLending } from "./lending.ts";

/** What the screening of the log found in the catches of one meter. */
export interface MeterScreening {
  /** Of every fill, oldest first; also of one that is left out because its two catches disagree beyond doubt. */
  readonly findings: readonly FillFinding[];
  /** Catch tests of this meter, and of the whole log. */
  readonly tests: number;
  readonly testsInLog: number;
  readonly metersInLog: number;
  /** Of the scale for catches that name none; null: unknown. */
  readonly divisionKg: number | null;
  /** The catch scatter that fills would lend each other with every catch. */
  readonly scatterOfAll: PooledScatter;
}

/** A meter with its bad catches set aside, and what was found. */
export interface ScreenedMeter {
  readonly meter: Meter;
  readonly screening: MeterScreening;
}

/**
 * Screens a log once, before anything is made of it. A catch of an earlier fill that stands out beyond doubt, with all catch
 * tests of the log as its family at 1 %, leaves every figure: a bag not emptied in the third fill would otherwise stay
 * in that fill's mean and hide whatever moves later. Catches of the newest fill are told and never set aside; what somebody
 * has looked at and found genuine (`checked`) is not either. Two catches that disagree beyond doubt take their fill
 * with them, because nobody can say which of them is wrong.
 *
 * @param meters      with every catch that the person lets count
 * @param rule        the scale's division for catches that name none (kg; null: unknown), and who lends to whom
 * @returns           one for each meter, in order
 * Assumes            normal errors, scatter variance in proportion to turns. Catches set aside in clean seasons, and what
 *                    is found again after a bad one: reports/outlier-study.md
 * Source             Rosner, Technometrics 25 (1983) 165; ISO 5725-2 (pooled repeatability variance)
 */
export function screenLog(meters: readonly Meter[], rule: LendingRule): readonly ScreenedMeter[] {
  const beyondDoubt = findIn(screenedForLending(meters, rule), rule);
  const told = beyondDoubt.findings.flat().some(({ setAside }) => setAside.length > 0)
    ? findIn(silenced(meters, beyondDoubt.findings), rule)
    : beyondDoubt;
  return meters.map((meter, i) => {
    const findings = at(told.findings, i).map((finding, j) => {
      const { setAside } = at(at(beyondDoubt.findings, i), j);
      const isSame = setAside.length === 0 && finding.setAside.length === 0;
      return isSame ? finding : { ...finding, setAside };
    });
    return {
      meter: { ...meter, fills: findings.flatMap(keptFill) },
      screening: {
        findings,
        tests: testsIn(findings),
        testsInLog: told.testsInLog,
        metersInLog: meters.length,
        divisionKg: rule.divisionKg,
        scatterOfAll: pooledScatter(meter.fills),
      },
    };
  });
}

/** The meters, with what is set aside not speaking for others either. */
function silenced(
  meters: readonly Meter[],
  findings: readonly (readonly FillFinding[])[],
): readonly Meter[] {
  return meters.map((meter, i) => ({
    ...meter,
    fills: at(findings, i).map(({ fill, setAside }) =>
      lending(fill, [...fill.notLent, ...setAside]),
    ),
  }));
}

/** Whether a fill is the newest and holds a catch that stands out and that nobody has looked at. */
export function isFlagged({ findings }: MeterScreening, fill: Pick<Fill, "fill">): boolean {
  const finding = findings.find((one) => one.fill.fill === fill.fill);
  return finding?.isNewest === true && finding.inFill.some(isUnchecked);
}

/** Looks into every fill of every meter, with all their tests as the family of the log. */
function findIn(
  meters: readonly Meter[],
  rule: LendingRule,
): {
  readonly findings: readonly (readonly FillFinding[])[];
  readonly testsInLog: number;
} {
  const scatters = scattersOf(meters, rule, false);
  const judged = meters.map(({ fills }, i) =>
    fills.map((fill) => ({ fill, outside: outsideOf(fill, at(scatters, i)) })),
  );
  const tests = sum(judged.map(testsIn));
  const finding = { divisionKg: rule.divisionKg, testsInLog: Math.max(1, tests) };
  const findings = judged.map((fills) =>
    fills.map(({ fill, outside }, i) => findInFill(fill, outside, i === fills.length - 1, finding)),
  );
  return { findings, testsInLog: finding.testsInLog };
}

function testsIn(judged: readonly Pick<FillFinding, "fill" | "outside">[]): number {
  return judged.reduce(
    (count, { fill, outside }) => count + testsOf(fill.catches.length, outside),
    0,
  );
}

/** The fill without the catches that are set aside; none where none is left. */
function keptFill({ fill, setAside }: FillFinding): readonly Fill[] {
  if (setAside.length === 0) return fill.catches.length === 0 ? [] : [fill];
  const stay = fill.catches.filter((row) => !setAside.includes(row));
  if (stay.length === 0) return [];
  const isGone = (weighing: Catch) =>
    setAside.some((row) => row.catch === weighing.catch && row.turns === weighing.turns);
  const weighings = fill.weighings.filter((weighing) => !isGone(weighing));
  return [{ ...withCatches(fill, stay), weighings }];
}
