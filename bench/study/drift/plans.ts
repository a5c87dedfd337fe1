import type { Claim } from "../support/claims.ts";
import type { ShiftAsked } from "./decision.ts";
import type { AskedPlan } from "./judge.ts";
import { type Library, twoByNine } from "./library.ts";
import type { TogetherPlan } from "./together.ts";

/** A row of a table: what it is called, what is simulated, and what it is held to; null: printed without claim. */
export interface Row<Plan = AskedPlan> {
  readonly name: string;
  readonly plan: Plan;
  readonly claim: Claim | null;
}

const row = (name: string, plan: AskedPlan, claim: Claim | null = null): Row => ({
  name,
  plan,
  claim,
});

const thirtyBySix: Library = { ...twoByNine, meters: 30, fills: 6 };
const lent = (more: AskedPlan = {}, library: Partial<Library> = {}): AskedPlan => ({
  ...more,
  library: { ...twoByNine, ...library },
});

const once20: Claim = { from: 0.04, to: 0.055 };
const wide: AskedPlan = { catches: [1, 8], spread: 0.01 };

/** Of seasons without any change. */
export const steadyRows: readonly Row[] = [
  row("by itself", {}, once20),
  row("by itself, 1 to 8 catches a fill, spread 1 %", wide, once20),
  row("by itself, heavy tails (t on 4 degrees of freedom)", { law: "heavy tails" }),
  row("by itself, skewed (exponential)", { law: "skewed" }),
  row("by itself, neighbours alike, correlation 0.3", { correlation: 0.3 }),
  row("by itself, neighbours alike, correlation 0.6", { correlation: 0.6 }),
  row("2 × 9", lent(), once20),
  row("2 × 9, 1 to 8 catches a fill, spread 1 %", lent(wide), once20),
  row("30 × 6", { library: thirtyBySix }, once20),
  row("1 × 5", lent({}, { meters: 1, fills: 5 })),
  row("2 × 9, meters more unlike than declared (0.8)", lent({}, { heterogeneity: 0.8 })),
  row("2 × 9, heavy tails", lent({ law: "heavy tails" })),
  row("2 × 9, skewed", lent({ law: "skewed" })),
  row("2 × 9, neighbours alike, correlation 0.3", lent({ correlation: 0.3 })),
  row("2 × 9, neighbours alike, correlation 0.6", lent({ correlation: 0.6 })),
  row("2 × 9, fills differ 2 times as much as the library's", lent({}, { timesAsWild: 2 })),
  row("2 × 9, fills differ 3 times as much", lent({}, { timesAsWild: 3 })),
  row("2 × 9, fills differ half as much", lent({}, { timesAsWild: 0.5 })),
];

/** By itself, with a library drawn like the meter, and with the meter in the middle of its library. */
const everyWay = (
  plan: AskedPlan,
  claims: { readonly own: Claim; readonly lent: Claim } | null = null,
): readonly Row[] => [
  row("by itself", plan, claims?.own ?? null),
  row("2 × 9", lent(plan), claims?.lent ?? null),
  row("2 × 9, in its middle", lent(plan, { timesAsWild: 1 }), claims?.lent ?? null),
];
const both = (plan: AskedPlan): readonly Row[] => everyWay(plan).slice(0, 2);

/** Of changes that last. */
export const lastingRows: readonly Row[] = [
  ...both({ shift: 0.05, from: 4 }),
  ...everyWay({ shift: 0.05, from: 7 }, { own: { from: 0.6 }, lent: { from: 0.7 } }),
  ...both({ shift: 0.05, from: 10 }),
  ...both({ shift: 0.08, from: 3 }),
  ...everyWay({ shift: 0.08, from: 4 }, { own: { from: 0.85 }, lent: { from: 0.92 } }),
  ...both({ shift: 0.08, from: 7 }),
  ...both({ shift: 0.12, from: 4 }),
  ...both({ shift: 0.05, from: 7, spreadGrows: true }),
  ...both({ shift: 0.08, from: 4, spreadGrows: true }),
];

export const onceRows: readonly Row[] = [
  ...both({ shift: 0.08, from: 7, once: true }),
  ...[4, 7, 10].flatMap((from) => both({ shift: 0.12, from, once: true })),
];

export const risingRows: readonly Row[] = [...both({ perFill: 0.01 }), ...both({ perFill: 0.005 })];

const held: Claim = { from: 0.93, to: 0.975 };
const bothBands = (name: string, plan: AskedPlan, claim: Claim | null = null): readonly Row[] => [
  row(`${name}, by itself`, { own: "drawn", ...plan }, claim),
  row(`${name}, 2 × 9`, lent({ own: "drawn", ...plan }), claim),
];

/** Of the band for the next fill; the meter's spread is drawn as those of the library are. */
export const nextFillRows: readonly Row[] = [
  ...bothBands("steady", {}, held),
  ...[0.05, 0.08].flatMap((shift) =>
    [4, 7].flatMap((from) =>
      bothBands(`${100 * shift} % from fill ${from}`, { shift, from }, held),
    ),
  ),
  ...bothBands("5 % from fill 7, known by the eighth", { fills: 8, shift: 0.05, from: 7 }),
  ...bothBands("12 % in fill 7 only", { shift: 0.12, from: 7, once: true }),
  ...bothBands("0.5 % a fill", { perFill: 0.005 }),
  ...bothBands("neighbours alike, correlation 0.6", { correlation: 0.6 }),
  ...bothBands("skewed (exponential)", { law: "skewed" }),
  row("steady, fills differ 2 times as much as the library's", lent({}, { timesAsWild: 2 })),
  row("steady, fills differ 3 times as much", lent({}, { timesAsWild: 3 })),
  row("steady, fills differ half as much", lent({}, { timesAsWild: 0.5 })),
];

/** Of bins of one log that lend each other their spread. */
export const togetherRows: readonly Row<TogetherPlan>[] = [
  ...[2, 3, 5].map((bins) => ({ name: `${bins} bins`, plan: { bins, shared: 0 }, claim: null })),
  {
    name: "3 bins, their fills alike (correlation 0.5)",
    plan: { bins: 3, shared: 0.5 },
    claim: null,
  },
  { name: "3 bins", plan: { bins: 3, shared: 0, shift: 0.05, from: 7 }, claim: null },
  { name: "3 bins", plan: { bins: 3, shared: 0, shift: 0.08, from: 4 }, claim: null },
];

/** Of what is said to have shown by now. */
export const statedPlans: readonly ShiftAsked[] = [null, twoByNine].flatMap((library) =>
  [6, 9, 12].flatMap((fills) =>
    [0.01, 0.02, 0.03].map((spread) => ({ fills, spread, shift: 0.05, library })),
  ),
);
