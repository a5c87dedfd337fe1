import { at, lastOf } from "../../errors/at.ts";
import { fillOrderOf } from "../../model/fill-order.ts";
import type { MeterHistory, Stretch } from "../../model/history/result.ts";
import { stretchInForce } from "../../model/history.ts";
import { deliveriesOf, type Meter } from "../../model/meters.ts";
import { estimateOf, type MeterModel } from "../../model/model.ts";
import { requireModelOptions } from "../../results/options.ts";
import { mean } from "../../statistics/summary.ts";
import { driftCautions } from "./cautions.ts";
import type { DriftLooks } from "./looks.ts";
import { falseAlarmsOf } from "./rates.ts";
import type { Drift, DriftFill, DriftOptions, DriftStretch } from "./result.ts";
import { settlingTests } from "./settling.ts";
import { nextSteps } from "./verdict.ts";

/** Has a meter moved? As `drift` says it, with what is looked at beside the decision. */
export function driftBy(
  looks: DriftLooks,
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[],
  asked: number,
): Drift {
  const { order, explained, settling, cautions } = foundBy(looks, meter, options, meters, asked);
  const { level, tolerance, shiftOfInterest } = options;
  const { history, fills, bin, product } = meter;
  const center = history.differs?.earlier ?? meter.across.mean.value;
  return {
    kind: "drift",
    bin,
    product,
    options,
    input: {
      fills: fills.length,
      fillsInForce: stretchInForce(history).length,
      otherProducts: order.otherProducts,
      gaps: order.gaps,
    },
    verdict: history.status,
    nextSteps: nextSteps(history.status),
    fills: driftFills(meter, options),
    stretches: history.stretches.map(stretchOf),
    ...findingsOf(history),
    toleranceLines: {
      center,
      lower: center * (1 - tolerance),
      upper: center * (1 + tolerance),
    },
    falseAlarms: falseAlarmsOf(meter),
    power: looks.powerOf(meter, shiftOfInterest),
    noticing: looks.noticingOf(meter),
    ...looks.changesOf(explained, fills, level),
    scoreCharts: looks.scoreCharts(fills, level),
    byName: looks.byName(fills),
    settling,
    cautions,
  };
}

/** The findings of `driftBy`, and what they are made from, without what is drawn. */
export function foundBy(
  looks: DriftLooks,
  meter: MeterModel,
  options: DriftOptions,
  meters: readonly Meter[],
  asked: number,
) {
  requireModelOptions(options);
  const { level } = options;
  const order = fillOrderOf(meter, meters);
  const explained = looks.changeTests(meter.fills);
  const settling = settlingTests(meter.fills, level);
  const cautions = driftCautions({
    meter,
    order,
    explained,
    settling,
    columns: looks.splittingColumns(meter, asked),
    level,
  });
  return { order, explained, settling, cautions };
}

function driftFills(meter: MeterModel, options: DriftOptions): readonly DriftFill[] {
  const { history, fills } = meter;
  return fills.map((fill, i) => {
    const stretch = history.stretches.findIndex((one) => one.fills.includes(fill));
    return {
      fill: fill.fill,
      takenAt: fill.takenAt,
      catches: fill.totals.catches,
      estimate: estimateOf(meter, fill, options).estimate,
      stretch: stretch === -1 ? null : stretch,
      step: history.steps[i] ?? null,
    };
  });
}

function stretchOf({ fills, begins }: Stretch): DriftStretch {
  return {
    from: at(fills, 0).fill,
    to: lastOf(fills).fill,
    fills: fills.length,
    begins,
    mean: mean(deliveriesOf(fills)),
  };
}

function findingsOf({ moved, changes, differs, trending, stoodApart }: MeterHistory) {
  return { moved, changes, differs, trending, stoodApart };
}
