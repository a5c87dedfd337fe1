import type { PlainRow } from "../../data/write-csv.ts";
import type { WorkedOut } from "../../model/worked-out.ts";
import type { Setting } from "../../questions/setting.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Analysis } from "../analyse.ts";
import { endCells, estimateCells, rowsOfEach } from "./cells.ts";

function ofEach(
  analysis: Analysis,
  rowsOf: (setting: Setting) => readonly PlainRow[],
): readonly PlainRow[] {
  return rowsOfEach(
    analysis,
    ({ setting }) => setting,
    (setting) => rowsOf(setting).map((row) => ({ fill: setting.fill, ...row })),
  );
}

/** What the target needs of the drive: one row a quantity; a meter speed for each working speed. */
export function settingTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, ({ target, turnsPerHectare, ratio, meterSpeeds }) => {
    const row = (quantity: string, figure: WorkedOut | null, speed: number | null = null) =>
      figure === null
        ? []
        : [{ quantity, speed_km_h: speed, ...estimateCells(figure), method: figure.method }];
    return [
      ...row("target rate", target),
      ...row("turns per hectare", turnsPerHectare),
      ...row("drive ratio", ratio),
      ...meterSpeeds.flatMap(({ speedKmPerH, turnsPerMin }) =>
        row("meter speed", turnsPerMin, speedKmPerH),
      ),
    ];
  });
}

interface Place {
  readonly kind: "step" | "around" | "now";
  readonly step: string | null;
  readonly setting: number;
  readonly of: "ratio" | "turns/ha";
  readonly nearest: boolean;
  /** null: no step. */
  readonly assumed: boolean | null;
  readonly rate: Estimate;
  readonly rateError: Estimate | null;
}

/** What single settings of the drive put out: one row a step, a setting around the one needed, and where it stands now. */
export function settingRateTable(analysis: Analysis): readonly PlainRow[] {
  return ofEach(analysis, (setting) => placesOf(setting).map(placeCells));
}

function placesOf({ steps, nearest, around, now }: Setting): readonly Place[] {
  return [
    ...steps.map(({ name, setting, rate, rateError, assumed }, i) => ({
      kind: "step" as const,
      step: name,
      setting,
      of: "ratio" as const,
      nearest: nearest?.nearest === i,
      assumed,
      rate,
      rateError,
    })),
    ...(around?.rows ?? []).map(({ name, setting, rate, rateError }) => ({
      kind: "around" as const,
      step: name,
      setting,
      of: around?.of ?? "ratio",
      nearest: false,
      assumed: null,
      rate,
      rateError,
    })),
    ...(now === null
      ? []
      : [
          {
            kind: "now" as const,
            step: null,
            setting: now.turnsPerHectare.value,
            of: "turns/ha" as const,
            nearest: false,
            assumed: null,
            rate: now.rate,
            rateError: now.rateError,
          },
        ]),
  ];
}

function placeCells({
  kind,
  step,
  setting,
  of,
  nearest,
  assumed,
  rate,
  rateError,
}: Place): PlainRow {
  return {
    kind,
    step,
    setting,
    setting_unit: of,
    nearest,
    assumed,
    ...estimateCells(rate),
    rate_error: rateError?.value ?? null,
    ...endCells("rate_error", rateError?.interval ?? null),
  };
}
