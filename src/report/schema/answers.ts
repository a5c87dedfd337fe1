import * as z from "zod";
import {
  answer,
  anything,
  anythingOrNull,
  catchOfFill,
  chance,
  count,
  estimate,
  estimateOrNull,
  figure,
  figureOrNull,
  fillName,
  open,
  textOrNull,
} from "./parts.ts";

export const delivery = open({
  ...answer("delivery"),
  fill: fillName,
  takenAt: textOrNull,
  input: open({ catches: count, turns: figure, massKg: figure, earlierFills: count }),
  estimate,
  halfWidth: figureOrNull,
  nextCatch: open({ turns: figure, estimate }),
  points: z.array(catchOfFill),
});

export const setting = open({
  ...answer("setting"),
  fill: fillName,
  delivery: estimate,
  target: estimateOrNull,
  turnsPerHectare: estimateOrNull,
  ratio: estimateOrNull,
  meterSpeeds: z.array(open({ speedKmPerH: figure, turnsPerMin: estimate })),
  steps: z.array(open({ name: textOrNull, setting: figure, rate: estimate, assumed: z.boolean() })),
  missing: z.array(z.string()),
});

export const catchesNeeded = open({
  ...answer("catches-needed"),
  fill: fillName.nullable(),
  halfWidth: figureOrNull,
  statedHalfWidth: figureOrNull,
  needed: open({ further: count, turns: figure }).nullable(),
});

export const outliers = open({
  ...answer("outliers"),
  catches: z.array(open({ ...catchOfFill.shape, fill: fillName, verdict: z.string() })),
  suspects: z.array(anything),
  pairs: z.array(anything),
});

export const drift = open({
  ...answer("drift"),
  verdict: z.string(),
  nextSteps: z.array(z.string()),
  fills: z.array(open({ fill: fillName, takenAt: textOrNull, catches: count, estimate })),
  stretches: z.array(open({ from: fillName, to: fillName, fills: count, mean: figure })),
  moved: anythingOrNull,
  changes: z.array(anything),
  differs: anythingOrNull,
  trending: anythingOrNull,
});

export const acrossFills = open({
  ...answer("across-fills"),
  fills: count,
  catches: count,
  mean: estimate,
  nextFill: estimate,
  spread: open({
    standardDeviation: estimateOrNull,
    relative: figureOrNull,
    df: figure,
    source: z.enum(["own", "lent", "none"]),
  }),
  catchScatter: open({
    standardDeviation: estimateOrNull,
    relative: figureOrNull,
    turns: figure,
    df: figure,
  }),
  points: z.array(open({ fill: fillName, catches: count, turns: figure, estimate })),
});

export const skipping = open({
  ...answer("skipping"),
  nextFill: estimate,
  today: estimateOrNull,
  chances: z.array(
    open({
      limit: figure,
      heavy: chance,
      light: chance,
      either: chance,
      upperBound: chance,
    }),
  ),
  expected: anythingOrNull,
});

export const uncertaintyBudget = open({
  ...answer("uncertainty-budget"),
  fill: fillName,
  lines: z.array(open({ source: z.string(), value: figure, contribution: figure, share: figure })),
  total: open({ combined: figure, expanded: figure, coverageFactor: figure }).nullable(),
});

export const repeatability = open({
  ...answer("repeatability"),
  fill: fillName,
  input: open({ catches: count, turns: figure, earlierFills: count }),
});

export const cost = open({
  ...answer("cost"),
  setToKgPerTurn: figure,
  missing: z.array(z.string()),
  points: z.array(anything),
  cheapest: anythingOrNull,
});
