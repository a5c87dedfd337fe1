import { studentTQuantile } from "../../../src/numeric/distributions/student-t.ts";
import { randomStream } from "../../../src/numeric/random.ts";
import { changePoint } from "../../../src/statistics/change-point.ts";
import { changePointInterval } from "../../../src/statistics/change-point-interval.ts";

/** How often the interval for a shift, and the range of its places, hold the truth. */
export interface IntervalCell {
  readonly fills: number;
  readonly before: number;
  /** In fill-to-fill standard deviations. */
  readonly shift: number;
  /** Share of seasons in which the change-point test rejects. */
  readonly found: number;
  readonly size: number;
  readonly sizeWhereFound: number;
  readonly place: number;
  readonly placeWhereFound: number;
  /** A t interval at the best split, for comparison. */
  readonly tSizeWhereFound: number;
}

const level = 0.95;

export function intervalTable(seasons: number, seed: number): readonly IntervalCell[] {
  return [6, 8, 12, 20].flatMap((fills) =>
    [Math.floor(fills / 2), 2].flatMap((before) =>
      [1, 1.5, 2, 3, 5].map((shift, i) =>
        intervalCell(fills, before, shift, seasons, seed + 1000 * fills + 10 * before + i),
      ),
    ),
  );
}

function intervalCell(
  fills: number,
  before: number,
  shift: number,
  seasons: number,
  seed: number,
): IntervalCell {
  const random = randomStream(seed);
  const t = studentTQuantile((1 + level) / 2, fills - 2);
  const count = { found: 0, size: 0, sizeFound: 0, place: 0, placeFound: 0, tFound: 0 };
  for (let season = 0; season < seasons; season++) {
    const values = Array.from(
      { length: fills },
      (_, i) => random.normal() + (i < before ? 0 : shift),
    );
    const change = changePoint(values);
    if (change === null) continue;
    const { difference, before: places } = changePointInterval(values, change, level);
    const found = change.pValue <= 1 - level;
    const size = difference.lower <= shift && shift <= difference.upper;
    const place = places.fewest <= before && before <= places.most;
    if (found) count.found++;
    if (size) count.size++;
    if (place) count.place++;
    if (found && size) count.sizeFound++;
    if (found && place) count.placeFound++;
    if (found && Math.abs(change.difference - shift) <= t * change.standardError) count.tFound++;
  }
  return {
    fills,
    before,
    shift,
    found: count.found / seasons,
    size: count.size / seasons,
    sizeWhereFound: count.sizeFound / count.found,
    place: count.place / seasons,
    placeWhereFound: count.placeFound / count.found,
    tSizeWhereFound: count.tFound / count.found,
  };
}
