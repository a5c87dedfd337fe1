import { randomStream } from "../../../src/numeric/random.ts";
import { findInFill, testsInLog } from "../../../src/questions/outliers/judge-fill.ts";
import { screenHistory } from "../../../src/questions/outliers/screened-history.ts";
import { asFills, type Scene, simulateFill, usualScene } from "./simulate.ts";

/** How often a clean fill raises a flag when its family is the fill. */
export interface FillAlarmCell {
  readonly catches: number;
  /** Earlier fills of four catches; 0: its own scatter alone. */
  readonly earlierFills: number;
  readonly falseAlarm: number;
}

/** How often a clean log raises one, with three ideas of a family. */
export interface LogAlarmCell {
  readonly fills: number;
  readonly catches: number;
  /** Every fill tested at 5 % by itself: chance of any flag. */
  readonly everyFillByItself: number;
  /** Mean number of catches that stand out only when their fill is looked at alone. */
  readonly meanOnlyInFill: number;
  /** The log as the family: chance of any flag. */
  readonly logAsFamily: number;
}

/** The same when fills truly scatter differently: log-normal, with this standard deviation of the logarithm. */
export interface UnlikeAlarmCell {
  readonly catches: number;
  readonly earlierFills: number;
  readonly sdOfLog: number;
  readonly falseAlarm: number;
}

const level = 0.95;

/** Table 2: clean fills of n catches after k clean fills of four. */
export function fillAlarmTable(replicates: number, seed: number): readonly FillAlarmCell[] {
  return [3, 4, 5, 6, 8, 12].flatMap((catches) =>
    [0, 1, 2, 4, 8].flatMap((earlierFills) =>
      earlierFills === 0 && catches < 5
        ? []
        : [
            {
              catches,
              earlierFills,
              falseAlarm: fillAlarm(usualScene, catches, earlierFills, replicates, seed),
            },
          ],
    ),
  );
}

/** Fills whose scatter differs by chance of its own, against the assumption that all scatter alike. */
export function unlikeAlarmTable(replicates: number, seed: number): readonly UnlikeAlarmCell[] {
  return [3, 4, 6].flatMap((catches) =>
    [4, 8].flatMap((earlierFills) =>
      [0.3, 0.5].map((sdOfLog) => ({
        catches,
        earlierFills,
        sdOfLog,
        falseAlarm: fillAlarm(usualScene, catches, earlierFills, replicates, seed, sdOfLog),
      })),
    ),
  );
}

/** Share of clean newest fills in which any catch stands out. */
export function fillAlarm(
  scene: Scene,
  catches: number,
  earlierFills: number,
  replicates: number,
  seed: number,
  sdOfLog = 0,
): number {
  let alarms = 0;
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const sizes = [...Array.from({ length: earlierFills }, () => 4), catches];
    const ownScene = () =>
      sdOfLog === 0
        ? scene
        : { ...scene, scatter: scene.scatter * Math.exp(sdOfLog * random.normal()) };
    const fills = asFills(sizes.flatMap((n, i) => simulateFill(ownScene(), i + 1, n, random)));
    const history = screenHistory(fills, scene.divisionKg);
    const newest = fills.at(-1);
    const rule = { level, testsInLog: 1, divisionKg: scene.divisionKg };
    if (newest && findInFill(newest, history, rule).inFill.size > 0) alarms++;
  }
  return alarms / replicates;
}

/** Table 3: clean logs of k fills of n catches. */
export function logAlarmTable(replicates: number, seed: number): readonly LogAlarmCell[] {
  return [3, 6, 12, 24].flatMap((fills) =>
    [3, 4, 5].map((catches) => logAlarm(usualScene, fills, catches, replicates, seed)),
  );
}

export function logAlarm(
  scene: Scene,
  fillsInLog: number,
  catches: number,
  replicates: number,
  seed: number,
): LogAlarmCell {
  const count = { fill: 0, log: 0, only: 0 };
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const rows = Array.from({ length: fillsInLog }, (_, i) =>
      simulateFill(scene, i + 1, catches, random),
    );
    const fills = asFills(rows.flat());
    const history = screenHistory(fills, scene.divisionKg);
    const rule = { level, testsInLog: testsInLog(history), divisionKg: scene.divisionKg };
    const findings = fills.map((fill) => findInFill(fill, history, rule));
    if (findings.some(({ inFill }) => inFill.size > 0)) count.fill++;
    if (findings.some(({ inLog }) => inLog.size > 0)) count.log++;
    for (const { inFill, inLog } of findings)
      count.only += [...inFill].filter((row) => !inLog.has(row)).length;
  }
  return {
    fills: fillsInLog,
    catches,
    everyFillByItself: count.fill / replicates,
    meanOnlyInFill: count.only / replicates,
    logAsFamily: count.log / replicates,
  };
}
