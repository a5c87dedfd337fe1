import { at } from "../errors/at.ts";
import type { Model } from "../model/model.ts";
import { falseAlarmsOf } from "../questions/drift/rates.ts";
import { type FleetComparison, type FleetMeter, fleet } from "../questions/fleet.ts";
import type { DecidedBin } from "./decided-bin.ts";
import type { Action } from "./decision.ts";

/**
 * Why a meter needs attention. look-first: the decision asks for it · moved: it has moved, is trending, or a fill differs ·
 * the others, found among all meters with false discoveries controlled: it delivers more, or less, than the others with
 * its product; its catches scatter more, or its fills differ more, than those of the other meters.
 */
export type WhyAttention =
  | "look-first"
  | "moved"
  | "delivers-more"
  | "delivers-less"
  | "catches-scatter"
  | "fills-differ";

/** One meter among the others, and why it needs attention. */
export interface FleetStanding extends FleetMeter {
  /** Null: another product is in the bin. */
  readonly action: Action | null;
  /** Empty: it needs none. */
  readonly why: readonly WhyAttention[];
}

/** What a log of many meters says of them together. */
export interface Fleet extends Omit<FleetComparison, "meters"> {
  /** The most urgent first, else in the order of the file. */
  readonly meters: readonly FleetStanding[];
  readonly counts: {
    readonly set: number;
    readonly catchMore: number;
    readonly lookFirst: number;
    /** Another product is in the bin. */
    readonly notInTheBin: number;
    readonly attention: number;
  };
  /** Meters asked whether they have moved, and how many of them would be called so if all were steady. */
  readonly watched: { readonly meters: number; readonly byChance: number };
}

/**
 * All meters of a log together, from what was decided of each.
 *
 * @param decided  one a meter of the model, in its order
 * @returns        null below ten meters
 */
export function fleetOf(model: Model, decided: readonly DecidedBin[]): Fleet | null {
  const comparison = fleet(model);
  if (comparison === null) return null;
  const standings = comparison.meters.map((meter, i) => standingOf(meter, at(decided, i)));
  const asked = model.meters.filter(({ history }) => history.status !== "not asked");
  const doing = (wanted: Action | null) =>
    standings.filter(({ action }) => action === wanted).length;
  return {
    ...comparison,
    meters: standings.toSorted((a, b) => urgency(a) - urgency(b)),
    counts: {
      set: doing("set"),
      catchMore: doing("catch-more"),
      lookFirst: doing("look-first"),
      notInTheBin: doing(null),
      attention: standings.filter(needsAttention).length,
    },
    watched: {
      meters: asked.length,
      byChance: asked.reduce((sum, meter) => sum + falseAlarmsOf(meter).season, 0),
    },
  };
}

export function needsAttention({ why }: FleetStanding): boolean {
  return why.length > 0;
}

function standingOf(meter: FleetMeter, { decision, drift }: DecidedBin): FleetStanding {
  const action = decision?.action ?? null;
  const { delivery, scatter, spread } = meter;
  const moved = drift !== null && movedVerdicts.has(drift.verdict);
  const why: readonly (WhyAttention | null)[] = [
    action === "look-first" ? "look-first" : null,
    moved ? "moved" : null,
    delivery?.unlike == null ? null : `delivers-${delivery.unlike}`,
    scatter?.unlike === "more" ? "catches-scatter" : null,
    spread?.unlike === "more" ? "fills-differ" : null,
  ];
  return { ...meter, action, why: why.filter((one) => one !== null) };
}

const movedVerdicts: ReadonlySet<string> = new Set([
  "moved",
  "trending",
  "fill differs",
  "fill differs, confirmed",
]);

const actions: readonly (Action | null)[] = ["look-first", "catch-more", "set", null];

/** A meter to look at first, then one that needs attention, then by what is to be done. */
function urgency(standing: FleetStanding): number {
  const { action } = standing;
  if (action === "look-first") return -2;
  return needsAttention(standing) ? -1 : actions.indexOf(action);
}
