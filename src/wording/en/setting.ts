import type { MissingForSetting } from "../../questions/setting.ts";
import type { Counts, Facts } from "./facts.ts";

type Who = Facts<"bin" | "product"> & Counts<"fill">;

/** A figure with its interval. */
export const ranged = ({ value, range, level }: Facts<"value" | "level", "range">) =>
  range === null ? value : `${value} (${range}, ${level} interval)`;

/** What is said of what to set the drive to. */
export const setting = {
  orMore: "or more",
  turns: (f: Facts<"turns" | "area">) => `${f.turns} turns/${f.area}`,
  atSpeed: (f: Facts<"turnsPerMin" | "speed" | "unit">) =>
    `${f.turnsPerMin} turns/min at ${f.speed} ${f.unit}`,
  noTarget: (f: Who) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: what to set cannot be said without a target rate.`,
  needsRatio: (f: Who & Facts<"target" | "value" | "level", "range">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.target} need a drive ratio of ${ranged(f)}.`,
  needsTurns: (f: Who & Facts<"target" | "value" | "level", "range" | "atSpeeds">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}: ${f.target} need ${ranged(f)}${f.atSpeeds === null ? "" : `, that is ${f.atSpeeds}`}.`,
  nearestStep: (f: Facts<"step" | "rate", "error"> & { readonly assumed: boolean }) =>
    `The nearest step, ${f.step}, ${f.assumed ? "is assumed to put" : "puts"} out ${f.rate}${f.error === null ? "" : `, ${f.error}`}.`,
  /** Figures a setting needs, as a person names them. */
  missing: {
    "target rate": "the target rate",
    "thousand-kernel mass": "the thousand-kernel mass",
    germination: "germination",
    emergence: "emergence",
    "working width": "the working width",
    drive: "what turns the meter",
    "wheel travel": "the drive wheel's travel per turn",
    "working speed": "the working speed",
    "meter speeds": "the meter speeds the drive can hold",
  } satisfies Record<MissingForSetting, string>,
};
