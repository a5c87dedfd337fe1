import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { root } from "../../../support/compiler.ts";

const rates = z.object({ covered: z.number(), equivalentAtMargin: z.number() });
const band = z.object({ atLeast: z.number().nullable(), atMost: z.number().nullable() });

const shapes = {
  coverage: z.array(
    z.object({
      interval: z.string(),
      situation: z.string(),
      achieved: z.number(),
      kept: z.boolean().nullable(),
    }),
  ),
  "lending-study": z.object({
    sections: z.array(
      z.object({
        name: z.string(),
        rows: z.array(
          z.object({
            situation: z.string(),
            cells: z.array(
              z.object({
                at: z.string(),
                of: z.string(),
                found: z.number().nullable(),
                claim: band.nullable(),
                verdict: z.string().nullable(),
              }),
            ),
          }),
        ),
      }),
    ),
  }),
  "decision-study": z.object({
    replicates: z.number(),
    overTolerances: z.array(
      z.object({
        name: z.string(),
        stated: z.number(),
        happened: z.number(),
        claimed: z.boolean(),
      }),
    ),
    clean: z.array(z.object({ fills: z.number(), errors: z.string(), alarmed: z.number() })),
  }),
  "outlier-study": z.object({
    logAlarms: z.array(
      z.object({
        fills: z.number(),
        catches: z.number(),
        everyFillByItself: z.number(),
        logAsFamily: z.number(),
      }),
    ),
    otherErrors: z.array(
      z.object({ errors: z.string(), fills: z.number(), logAsFamily: z.number() }),
    ),
  }),
  "drift-study": z.object({
    alarms: z.array(
      z.object({
        name: z.string(),
        by: z.array(z.object({ fills: z.number(), share: z.number() })),
      }),
    ),
    lasting: z.array(
      z.object({ name: z.string(), shift: z.number(), from: z.number(), found: z.number() }),
    ),
    nextFills: z.array(z.object({ name: z.string(), covered: z.number() })),
  }),
  "skipping-study": z.object({
    calibration: z.array(
      z.object({
        fills: z.number(),
        overall: z.object({ stated: z.number(), happened: z.number() }),
      }),
    ),
    bounds: z.array(z.object({ boundHolds: z.number() })),
  }),
  "stopping-study": z.object({
    tolerance: z.number(),
    summary: z.array(
      z.object({
        rule: z.string(),
        mean: z.number(),
        worstOfOneScatter: z.number(),
        worst: z.number(),
        claim: z.number().nullable(),
      }),
    ),
  }),
  "money-study": z.object({
    situations: z.array(
      z.object({
        lent: z.string(),
        fills: z.number(),
        rules: z.array(z.object({ name: z.string(), above: z.number(), meanCatches: z.number() })),
      }),
    ),
  }),
  "blocks-study": z.object({
    equal: z.array(
      z.object({
        products: z.number(),
        blocks: z.number(),
        tukey: rates,
        dunnett: rates,
        paired: rates,
      }),
    ),
    unlike: z.array(z.object({ blocks: z.number(), tukey: rates, dunnett: rates, paired: rates })),
  }),
} as const;

type Name = keyof typeof shapes;

/** What the studies found, each read from the file it keeps; a file of another shape is an error that names it. */
export type Studies = { readonly [N in Name]: z.infer<(typeof shapes)[N]> };

export function readStudies(): Studies {
  const read = <N extends Name>(name: N) => {
    const found = shapes[name].safeParse(
      JSON.parse(readFileSync(join(root, "reports", `${name}.json`), "utf8")),
    );
    if (!found.success)
      throw new Error(`reports/${name}.json: ${z.prettifyError(found.error).slice(0, 400)}`);
    return found.data as Studies[N];
  };
  return {
    coverage: read("coverage"),
    "lending-study": read("lending-study"),
    "decision-study": read("decision-study"),
    "outlier-study": read("outlier-study"),
    "drift-study": read("drift-study"),
    "skipping-study": read("skipping-study"),
    "stopping-study": read("stopping-study"),
    "money-study": read("money-study"),
    "blocks-study": read("blocks-study"),
  };
}

/** How each kept study is run again, for the figures that are read from it. */
export const commands: Readonly<Record<Name, string>> = {
  coverage: "npm run study -- --replicates 4000 --seed 1",
  "lending-study": "npm run study:lending -- --replicates 4000 --seed 1",
  "decision-study": "npm run study:decision",
  "outlier-study": "npm run study:outliers",
  "drift-study": "npm run study:drift",
  "skipping-study": "npm run study:skipping",
  "stopping-study": "npm run study:stopping",
  "money-study": "npm run study:money",
  "blocks-study": "npm run study:blocks",
};

/** "94.4 %", or "94.4 % to 95.8 %" of several. */
export function percent(...values: readonly (number | null | undefined)[]): string {
  const known = values.map((value) => {
    if (value == null || !Number.isFinite(value))
      throw new Error("A figure of the methods is missing from its study.");
    return (100 * value).toFixed(1);
  });
  const ends = [
    known[values.indexOf(Math.min(...(values as number[])))],
    known[values.indexOf(Math.max(...(values as number[])))],
  ];
  return ends[0] === ends[1] ? `${ends[0]} %` : `${ends[0]} % to ${ends[1]} %`;
}
