import type { PlainRow } from "../../data/write-csv.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Analysis, MeterAnswers } from "../analyse.ts";
import { estimateCells } from "./cells.ts";

/** Every fill: one row a fill, in order of bin and time, with its delivery, where it stands and what its screening found. */
export function fillTable({ meters }: Analysis): readonly PlainRow[] {
  return meters.flatMap((answers) => {
    const { bin, product, acrossFills, drift } = answers;
    const screened = screeningOf(answers);
    return (acrossFills?.points ?? []).map((point, i): PlainRow => {
      const { value } = point.estimate;
      const upper = point.estimate.interval?.upper ?? null;
      return {
        bin,
        product,
        fill: point.fill,
        place_in_time: i + 1,
        taken_at: point.takenAt,
        catches: point.catches,
        turns: point.turns,
        ...estimateCells(point.estimate),
        half_width: upper === null ? null : upper / value - 1,
        stands: point.stands,
        stretch: placeFrom1(drift?.fills[i]?.stretch ?? null),
        ...screened(point.fill),
      };
    });
  });
}

/** Places count from 0 in results, and from 1 in tables, as fills and catches do. */
export function placeFrom1(place: number | null): number | null {
  return place === null ? null : place + 1;
}

function screeningOf({ outliers }: MeterAnswers): (fill: FillName) => PlainRow {
  if (outliers === null) return () => notScreened;
  const screened = new Map(outliers.fills.map((one) => [one.fill, one]));
  const leftOut = new Map(outliers.leftOut.map((one) => [one.fill, one.catches.length]));
  const setAside = new Map<FillName, number>();
  for (const { fill } of outliers.scatter.setAside)
    setAside.set(fill, (setAside.get(fill) ?? 0) + 1);
  return (fill) => {
    const found = screened.get(fill);
    return {
      screening: found?.status ?? null,
      relative_range: found?.relativeRange ?? null,
      standing_out: found?.standingOut.length ?? null,
      catches_left_out: leftOut.get(fill) ?? 0,
      catches_set_aside: setAside.get(fill) ?? 0,
    };
  };
}

const notScreened: PlainRow = {
  screening: null,
  relative_range: null,
  standing_out: null,
  catches_left_out: null,
  catches_set_aside: null,
};
