import { fitModel, type MeterModel } from "../../../src/model/model.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { drift } from "../../../src/questions/drift.ts";
import { present } from "../../../test/support/reference.ts";
import { fillsBefore, type Season, type SeasonPlan, seasonOf, usualSeason } from "./season.ts";

const level = 0.95;
const options = { level, tolerance: 0.05, scaleDivisionKg: null };

function meterOf({ catches }: Season): MeterModel {
  return present(fitModel(catches, options).meters[0]);
}

/** Every season of a plan, reduced to what is counted. */
function over<T>(
  given: Partial<SeasonPlan>,
  seasons: number,
  seed: number,
  count: (season: Season, plan: SeasonPlan) => T,
): readonly T[] {
  const plan = { ...usualSeason, ...given };
  const random = randomStream(seed);
  return Array.from({ length: seasons }, () => count(seasonOf(plan, random), plan));
}

function share(list: readonly boolean[]): number {
  return list.filter((one) => one).length / Math.max(1, list.length);
}

const alarming = ["differs", "moved", "trending"];

/** Place of the first fill with which something was found, from 1; null: nothing was. */
function firstAlarm({ history }: MeterModel): number | null {
  const place = history.steps.findIndex(({ outcome }) => alarming.includes(outcome));
  return place === -1 ? null : place + 1;
}

/** How often something has been found by a number of fills in a season without any change, asked after every fill. */
export interface AlarmCell extends Partial<SeasonPlan> {
  /** By these fills, in their order. */
  readonly by: readonly { readonly fills: number; readonly share: number }[];
}

export function alarmTable(
  plans: readonly Partial<SeasonPlan>[],
  byFills: readonly number[],
  seasons: number,
  seed: number,
): readonly AlarmCell[] {
  return plans.map((plan, i) => {
    const longest = Math.max(...byFills);
    const first = over({ ...plan, fills: longest }, seasons, seed + i, (season) =>
      firstAlarm(meterOf(season)),
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
export interface FoundCell extends Partial<SeasonPlan> {
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
  plans: readonly Partial<SeasonPlan>[],
  seasons: number,
  seed: number,
): readonly FoundCell[] {
  return plans.map((plan, i) => {
    const found = over({ fills: 12, ...plan }, seasons, seed + i, (season, whole) =>
      whatWasFound(meterOf(season), whole),
    );
    const changes = found.flatMap(({ since }) => since ?? []);
    const truth = fillsBefore({ ...usualSeason, fills: 12, ...plan }) + 1;
    return {
      ...plan,
      found: share(found.map((one) => one.first !== null)),
      withinThree: share(found.map(({ first }) => first !== null && first <= truth + 2)),
      atOnce: share(found.map((one) => one.atOnce)),
      placed: share(changes.map((since) => Math.abs(since - truth) <= 1)),
      sizeHeld: share(found.flatMap(({ sizeHeld }) => sizeHeld ?? [])),
      moved: share(found.map(({ since }) => since !== null)),
      trending: share(found.map(({ trending }) => trending)),
    };
  });
}

function whatWasFound(meter: MeterModel, plan: SeasonPlan) {
  const { steps, changes } = meter.history;
  const interval = changes.at(-1)?.size.interval ?? null;
  return {
    first: firstAlarm(meter),
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
export interface NextFillCell extends Partial<SeasonPlan> {
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
  plans: readonly Partial<SeasonPlan>[],
  seasons: number,
  seed: number,
): readonly NextFillCell[] {
  return plans.map((plan, i) => {
    const all = over({ fills: 12, ...plan }, seasons, seed + i, (season) => {
      const meter = meterOf(season);
      const asOne = present(fitModel(season.catches, options, { asked: "never" }).meters[0]);
      return {
        byStretches: bandOf(meter, season),
        asOne: bandOf(asOne, season),
        alarmed: firstAlarm(meter) !== null,
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

function bandOf({ across }: MeterModel, { nextDelivery }: Season) {
  const { value, interval } = across.nextFill;
  const half = present(present(interval).upper) - value;
  return { holds: Math.abs(nextDelivery - value) <= half, halfWidth: half / value };
}

function middle(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** What a steady meter is told it would have found, against what is found of such a shift. */
export interface StatedPowerCell {
  readonly fills: number;
  readonly spread: number;
  readonly shift: number;
  /** Mean of the chances stated on steady seasons that say one. */
  readonly stated: number;
  /** Share of steady seasons that say one. */
  readonly said: number;
  readonly happened: number;
}

export function statedPowerTable(
  cells: readonly Pick<StatedPowerCell, "fills" | "spread" | "shift">[],
  seasons: number,
  seed: number,
): readonly StatedPowerCell[] {
  return cells.map(({ fills, spread, shift }, i) => {
    const powers = over({ fills, spread }, seasons, seed + 2 * i, (season) => {
      const meter = meterOf(season);
      return drift(meter, { ...options, shiftOfInterest: shift }).power;
    }).flatMap((power) => power ?? []);
    const from = (powers[0]?.fillsBefore ?? 0) + 1;
    const found = over({ fills, spread, shift, from }, seasons, seed + 2 * i + 1, (season) =>
      firstAlarm(meterOf(season)),
    );
    return {
      fills,
      spread,
      shift,
      stated: powers.reduce((sum, { chance }) => sum + chance / powers.length, 0),
      said: powers.length / seasons,
      happened: share(found.map((place) => place !== null && place >= from)),
    };
  });
}
