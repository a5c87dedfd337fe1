import type { MeterHistory } from "../../../src/model/history.ts";
import { powerOf } from "../../../src/questions/drift/rates.ts";
import { numberInSeason } from "../../../src/results/fill-name.ts";
import { present } from "../../../test/support/reference.ts";
import {
  type AskedPlan,
  type AskedSeason,
  firstAlarm,
  historyWith,
  middle,
  over,
  share,
  togetherBy,
} from "./judge.ts";
import { fillsBefore, usualSeason } from "./season.ts";

/** How often something has been found by a number of fills in a season without any change, asked after every fill. */
export interface AlarmCell extends AskedPlan {
  /** By these fills, in their order. */
  readonly by: readonly { readonly fills: number; readonly share: number }[];
}

export function alarmTable(
  plans: readonly AskedPlan[],
  byFills: readonly number[],
  seasons: number,
  seed: number,
): readonly AlarmCell[] {
  return plans.map((plan, i) => {
    const longest = Math.max(...byFills);
    const first = over({ ...plan, fills: longest }, seasons, seed + i, ({ meter, outside }) =>
      firstAlarm(historyWith(meter, outside)),
    );
    return {
      ...plan,
      by: byFills.map((fills) => ({
        fills,
        share: share(first.map((place) => place !== null && place <= fills)),
      })),
    };
  });
}

/** What becomes of a change, asked after every fill. */
export interface FoundCell extends AskedPlan {
  /** Found by the last fill, within three fills of the change, and with its first fill. */
  readonly found: number;
  readonly withinThree: number;
  readonly atOnce: number;
  /** Of the seasons in which a change of level was found: placed within one fill of the truth. */
  readonly placed: number;
  /** Of the same: the interval of the last change's size holds the true shift. */
  readonly sizeHeld: number;
  /** Called moved at any time; called trending at any time. */
  readonly moved: number;
  readonly trending: number;
}

export function foundTable(
  plans: readonly AskedPlan[],
  seasons: number,
  seed: number,
): readonly FoundCell[] {
  return plans.map((plan, i) => {
    const found = over(plan, seasons, seed + i, whatWasFound);
    const changes = found.flatMap(({ since }) => since ?? []);
    const truth = fillsBefore({ ...usualSeason, fills: 12, ...plan }) + 1;
    return {
      ...plan,
      found: share(found.map((one) => one.first !== null)),
      withinThree: share(found.map(({ first }) => first !== null && first <= truth + 2)),
      atOnce: share(found.map((one) => one.atOnce)),
      placed: share(changes.map((since) => Math.abs(numberInSeason(since) - truth) <= 1)),
      sizeHeld: share(found.flatMap(({ sizeHeld }) => sizeHeld ?? [])),
      moved: share(found.map(({ since }) => since !== null)),
      trending: share(found.map(({ trending }) => trending)),
    };
  });
}

function whatWasFound({ meter, outside, plan }: AskedSeason) {
  const history = historyWith(meter, outside);
  const { steps, changes } = history;
  const interval = changes.at(-1)?.size.interval ?? null;
  return {
    first: firstAlarm(history),
    atOnce: steps[fillsBefore(plan)]?.outcome === "differs",
    sizeHeld:
      interval === null
        ? null
        : (interval.lower ?? 0) <= plan.shift && plan.shift <= (interval.upper ?? 0),
    since: changes[0]?.since.fill ?? null,
    trending: steps.some(({ outcome }) => outcome === "trending"),
  };
}

/** Whether the band for the next fill holds its true delivery, by stretches and by all fills as one. */
export interface NextFillCell extends AskedPlan {
  readonly covered: number;
  /** Median relative half-width. */
  readonly halfWidth: number;
  readonly allCovered: number;
  readonly allHalfWidth: number;
  /** Share of seasons with any finding, and the coverage in those. */
  readonly alarmed: number;
  readonly coveredOfAlarmed: number;
}

export function nextFillTable(
  plans: readonly AskedPlan[],
  seasons: number,
  seed: number,
): readonly NextFillCell[] {
  return plans.map((plan, i) => {
    const all = over(plan, seasons, seed + i, (season) => {
      const history = historyWith(season.meter, season.outside);
      const asOne = historyWith(season.meter, null, { asked: "never" });
      return {
        byStretches: bandOf(history, season),
        asOne: bandOf(asOne, { ...season, outside: null }),
        alarmed: firstAlarm(history) !== null,
      };
    });
    const alarmed = all.filter((one) => one.alarmed);
    return {
      ...plan,
      covered: share(all.map(({ byStretches }) => byStretches.holds)),
      halfWidth: middle(all.map(({ byStretches }) => byStretches.halfWidth)),
      allCovered: share(all.map(({ asOne }) => asOne.holds)),
      allHalfWidth: middle(all.map(({ asOne }) => asOne.halfWidth)),
      alarmed: alarmed.length / all.length,
      coveredOfAlarmed: share(alarmed.map(({ byStretches }) => byStretches.holds)),
    };
  });
}

function bandOf(history: MeterHistory, { outside, nextDelivery }: AskedSeason) {
  const { value, interval } = togetherBy(history, outside).nextFill;
  const half = present(present(interval).upper) - value;
  return { holds: Math.abs(nextDelivery - value) <= half, halfWidth: half / value };
}

/** A season of so many fills, and the shift that is asked about. */
export interface ShiftAsked extends AskedPlan {
  readonly fills: number;
  readonly spread: number;
  readonly shift: number;
}

/** What a steady meter is told it would have found, against what is found of such a shift. */
export interface StatedPowerCell extends ShiftAsked {
  /** Mean of the chances stated on steady seasons that say one. */
  readonly stated: number;
  /** Share of steady seasons that say one. */
  readonly said: number;
  readonly happened: number;
}

export function statedPowerTable(
  plans: readonly ShiftAsked[],
  seasons: number,
  seed: number,
): readonly StatedPowerCell[] {
  return plans.map((plan, i) => {
    const steady = { ...plan, shift: 0 };
    const powers = over(steady, seasons, seed + 2 * i, ({ meter, outside }) => {
      const history = historyWith(meter, outside);
      return powerOf({ history, across: togetherBy(history, outside) }, plan.shift);
    }).flatMap((power) => power ?? []);
    const from = (powers[0]?.fillsBefore ?? 0) + 1;
    const found = over({ ...plan, from }, seasons, seed + 2 * i + 1, ({ meter, outside }) =>
      firstAlarm(historyWith(meter, outside)),
    );
    return {
      ...plan,
      stated: powers.reduce((sum, { chance }) => sum + chance / powers.length, 0),
      said: powers.length / seasons,
      happened: share(found.map((place) => place !== null && place >= from)),
    };
  });
}
