import type { PlainRow } from "../../data/write-csv.ts";
import type { AcrossFills } from "../../questions/across-fills.ts";
import type { Interval } from "../../results/estimate.ts";
import type { Analysis } from "../analyse.ts";
import { intervalCells, rowsOfEach } from "./cells.ts";

interface Component {
  readonly component: string;
  readonly method: "moments" | "REML";
  readonly standardDeviation: number | null;
  readonly unit: "kg" | "kg/turn";
  readonly relative?: number | null;
  readonly df?: number | null;
  readonly interval?: Interval | null;
  readonly turns?: number;
  readonly intraclassCorrelation?: number;
  readonly from?: string;
  readonly meters?: number | null;
}

/**
 * What a meter's catches and fills scatter by, in its parts: one row a component. By moments, as every interval has it, and by
 * restricted maximum likelihood beside it. The scatter of catches is that of a catch of `turns` turns, in kg.
 */
export function varianceComponentTable(analysis: Analysis): readonly PlainRow[] {
  return rowsOfEach(
    analysis,
    ({ acrossFills }) => acrossFills,
    (acrossFills) => componentsOf(acrossFills).map(componentCells),
  );
}

function componentsOf(answer: AcrossFills): readonly Component[] {
  const { catchScatter, spread, between } = answer;
  return [
    {
      component: "catches within fills",
      method: "moments",
      unit: "kg",
      standardDeviation: catchScatter.standardDeviation?.value ?? null,
      relative: catchScatter.relative,
      df: catchScatter.df,
      interval: catchScatter.standardDeviation?.interval ?? null,
      turns: catchScatter.turns,
    },
    {
      component: "fills as measured",
      method: "moments",
      unit: "kg/turn",
      standardDeviation: spread.standardDeviation?.value ?? null,
      relative: spread.relative,
      df: spread.df,
      interval: spread.standardDeviation?.interval ?? null,
      from: spread.source,
      meters: spread.lentBy?.meters ?? null,
    },
    ...(between === null ? [] : partsOf(between)),
    ...remlOf(answer),
  ];
}

function partsOf(between: NonNullable<AcrossFills["between"]>): readonly Component[] {
  const common = { method: "moments", unit: "kg/turn" } as const;
  return [
    {
      ...common,
      component: "catch scatter in fills",
      standardDeviation: between.catchScatter.value,
      df: between.catchScatter.df,
    },
    {
      ...common,
      component: "fills beyond catch scatter",
      standardDeviation: between.value,
      intraclassCorrelation: between.intraclassCorrelation,
    },
  ];
}

function remlOf({ reml, catchScatter: { turns } }: AcrossFills): readonly Component[] {
  if (reml === null) return [];
  const { mean, betweenVariance, withinVariance } = reml;
  const catches = Math.sqrt(withinVariance * turns);
  const fills = Math.sqrt(betweenVariance);
  return [
    {
      component: "catches within fills",
      method: "REML",
      unit: "kg",
      standardDeviation: catches,
      relative: catches / (mean * turns),
      turns,
    },
    {
      component: "fills beyond catch scatter",
      method: "REML",
      unit: "kg/turn",
      standardDeviation: fills,
      relative: fills / mean,
    },
  ];
}

function componentCells(one: Component): PlainRow {
  const { standardDeviation } = one;
  return {
    component: one.component,
    method: one.method,
    standard_deviation: standardDeviation,
    unit: one.unit,
    ...intervalCells(one.interval ?? null),
    variance: standardDeviation === null ? null : standardDeviation ** 2,
    relative: one.relative ?? null,
    df: one.df ?? null,
    turns: one.turns ?? null,
    intraclass_correlation: one.intraclassCorrelation ?? null,
    spread_from: one.from ?? null,
    meters_lending: one.meters ?? null,
  };
}
