import type { PlainRow } from "../../data/write-csv.ts";
import type { Analysis, MeterAnswers } from "../analyse.ts";
import { estimateCells } from "./cells.ts";

/** Every fill: one row a fill, in order of bin and time, with its delivery, where it stands and what its screening found. */
export function fillTable({ meters }: Analysis): readonly PlainRow[] {
  return meters.flatMap((answers) => {
    const { bin, product, acrossFills, drift } = answers;
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
        ...screeningCells(answers, point.fill),
      };
    });
  });
}

/** Places count from 0 in results, and from 1 in tables, as fills and catches do. */
export function placeFrom1(place: number | null): number | null {
  return place === null ? null : place + 1;
}

function screeningCells({ outliers }: MeterAnswers, fill: string | number): PlainRow {
  const screened = outliers?.fills.find((one) => one.fill === fill);
  const leftOut = outliers?.leftOut.find((one) => one.fill === fill);
  const setAside = outliers?.scatter.setAside.filter((one) => one.fill === fill);
  return {
    screening: screened?.status ?? null,
    relative_range: screened?.relativeRange ?? null,
    standing_out: screened?.standingOut.length ?? null,
    catches_left_out: outliers === null ? null : (leftOut?.catches.length ?? 0),
    catches_set_aside: setAside?.length ?? null,
  };
}
