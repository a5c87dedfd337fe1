import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { findingsIn, type Scene, simulateFill, usualScene } from "./simulate.ts";

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
  /** Mean number of catches that are left out of every figure. */
  readonly meanSetAside: number;
}

/** The same when fills truly scatter differently: log-normal, with this standard deviation of the logarithm. */
export interface UnlikeAlarmCell {
  readonly catches: number;
  readonly earlierFills: number;
  readonly sdOfLog: number;
  readonly falseAlarm: number;
}

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
    const rows = sizes.flatMap((n, i) =>
      simulateFill(ofOneFill(scene, sdOfLog, random), i + 1, n, random),
    );
    if ((findingsIn(rows, scene).at(-1)?.inFill.length ?? 0) > 0) alarms++;
  }
  return alarms / replicates;
}

/** The scene of one fill, where fills scatter differently. */
function ofOneFill(scene: Scene, sdOfLog: number, random: RandomStream): Scene {
  return sdOfLog === 0
    ? scene
    : { ...scene, scatter: scene.scatter * Math.exp(sdOfLog * random.normal()) };
}

/** Table 3: clean logs of k fills of n catches. */
export function logAlarmTable(replicates: number, seed: number): readonly LogAlarmCell[] {
  return [3, 6, 12, 24].flatMap((fills) =>
    [3, 4, 5].map((catches) => logAlarm(usualScene, fills, catches, replicates, seed)),
  );
}

/** A clean log whose errors are not those the tests assume. */
export interface OtherErrorCell extends LogAlarmCell {
  readonly errors: string;
}

/** Table 3 goes on: heavy tails, and scatter that follows turns squared. */
export function otherErrorTable(replicates: number, seed: number): readonly OtherErrorCell[] {
  const squared = { growth: "turns squared" } as const;
  const scenes: readonly (readonly [string, Partial<Scene>])[] = [
    ["heavy tails (t on 4 df), 20 turns", { tails: "heavy" }],
    ["scatter as turns, 10 and 40 turns", { turns: 10, longer: 4 }],
    ["scatter as turns squared, 15 and 30 turns", { turns: 15, longer: 2, ...squared }],
    ["scatter as turns squared, 10 and 40 turns", { turns: 10, longer: 4, ...squared }],
  ];
  return scenes.flatMap(([errors, scene]) =>
    [6, 12].map((fills) => ({
      errors,
      ...logAlarm({ ...usualScene, ...scene }, fills, 4, replicates, seed),
    })),
  );
}

export function logAlarm(
  scene: Scene,
  fillsInLog: number,
  catches: number,
  replicates: number,
  seed: number,
  sdOfLog = 0,
): LogAlarmCell {
  const count = { fill: 0, log: 0, only: 0, setAside: 0 };
  for (let replicate = 0; replicate < replicates; replicate++) {
    const random = randomStream(seed, replicate);
    const rows = Array.from({ length: fillsInLog }, (_, i) =>
      simulateFill(ofOneFill(scene, sdOfLog, random), i + 1, catches, random),
    );
    const findings = findingsIn(rows.flat(), scene);
    if (findings.some(({ inFill }) => inFill.length > 0)) count.fill++;
    if (findings.some(({ inLog }) => inLog.length > 0)) count.log++;
    for (const { inFill, inLog, setAside } of findings) {
      count.only += inFill.filter((row) => !inLog.includes(row)).length;
      count.setAside += setAside.length;
    }
  }
  return {
    fills: fillsInLog,
    catches,
    everyFillByItself: count.fill / replicates,
    meanOnlyInFill: count.only / replicates,
    logAsFamily: count.log / replicates,
    meanSetAside: count.setAside / replicates,
  };
}
