import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

/** `adjusted`: the p beside the other tests of the same question. */
type Test = Facts<"statistic" | "p" | "adjusted"> & Numbers<"df">;

type Settled = Test & Facts<"where" | "change"> & { readonly byHolm: boolean };

/** What is said of what stands behind the verdict on a meter's fills, and what else can be said of them. */
export const driftDetail = {
  level: (
    f: Facts<"mean"> &
      Counts<"from" | "to" | "fills"> & {
        readonly inForce: boolean;
        /** Null: no change was found here. */
        readonly foundWith: FillName | null;
        readonly proof: Facts<"evidence" | "limit"> | null;
      },
  ) =>
    `${nouns.fillsFromTo(f)}: ${f.mean} on average over ${nouns.fills(f.fills)}${f.inForce ? ", the level in force" : ""}${f.foundWith === null ? "" : `; found with fill ${f.foundWith}`}${f.proof === null ? "" : `, evidence ${f.proof.evidence} (limit ${f.proof.limit})`}.`,
  odds: (evidence: string) => `${evidence} to 1`,
  overwhelming: "more than a million to 1",
  apart: (f: Facts<"difference"> & Counts<"fill">) =>
    `Fill ${f.fill} stood apart (${f.difference}) and is in no mean and no spread.`,
  explanation:
    "For explanation, the same fills looked at once, at the end. None of this changes the verdict, which is asked after every fill:",
  trend: (f: Test & Facts<"slope">) =>
    `Trend: slope ${f.slope} a fill, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.p}, beside the shift ${f.adjusted} (Holm).`,
  shift: (f: Test & Facts<"size"> & Counts<"since">) =>
    `Shift: most likely at fill ${f.since}, ${f.size}, largest |t| over the splits ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.p}, beside the trend ${f.adjusted} (Holm). The interval uses the critical value of that test, because the place was looked for.`,
  ranks: (f: Facts<"score" | "p" | "method" | "slope">) =>
    `Mann–Kendall: score ${f.score}, ${f.p} (${f.method}). Theil–Sen slope ${f.slope} a fill.`,
  rankMethods: { exact: "exact", normal: "normal approximation" },
  individuals: (f: Facts<"limits", "outside">) =>
    `Individuals chart: control limits ${f.limits} (mean ± 2.66 mean moving ranges); ${f.outside === null ? "no fill outside" : `outside: fill ${f.outside}`}. With few fills this chart seldom finds a shift.`,
  scopes: {
    "this fill": "Within this fill",
    "within fills": "Within fills",
    "between fills": "From fill to fill",
  } satisfies Record<SettlingTest["scope"], string>,
  byCatch: (f: Settled) =>
    `${f.where}: delivery ${f.change} from catch to catch, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.adjusted}${f.byHolm ? " (Holm)" : ""}.`,
  byBinLevel: (f: Settled) =>
    `${f.where}: delivery ${f.change} from an empty to a full bin, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.adjusted}${f.byHolm ? " (Holm)" : ""}.`,
};
