import { describe, expect, it } from "vitest";
import type { Catch } from "../../../src/data/types.ts";
import { fitModel, type MeterModel } from "../../../src/model/model.ts";
import { delivery } from "../../../src/questions/delivery.ts";
import { outliers } from "../../../src/questions/outliers.ts";
import { cautionSentence } from "../../../src/report/sections/cautions.ts";
import type { Caution } from "../../../src/results/caution.ts";
import { fillOf, outliersOptions as options, quietFills } from "../../support/outliers.ts";
import { present } from "../../support/reference.ts";
import { english } from "../../support/words.ts";

const meterOf = (...fills: readonly (readonly Catch[])[]): MeterModel =>
  present(fitModel(fills.flat(), options).meters[0]);
const findingsIn = (...fills: readonly (readonly Catch[])[]): readonly Caution[] =>
  outliers(meterOf(...fills), options).cautions;
const ofDelivery = (...fills: readonly (readonly Catch[])[]): readonly Caution[] =>
  delivery(meterOf(...fills), { ...options, varianceLaw: "proportional" }).cautions;
const standing = ({ code, severity, asks }: Caution) => [code, severity, asks];

const words = english("metric");

function pValueOf([first]: readonly Caution[]): number {
  const { facts } = present(first);
  return "pValue" in facts ? facts.pValue : Number.NaN;
}

function noted(rows: readonly Catch[], number: number, given: Partial<Catch>): readonly Catch[] {
  return rows.map((row) => (row.catch === number ? { ...row, ...given } : row));
}

const today = (mass: number) => fillOf(4, [6.02, mass, 5.95, 6.0]);

describe("a catch of the newest fill", () => {
  it("asks to look first from p = 1 % a fill on, and for one more catch up to 5 %", () => {
    const grave = findingsIn(...quietFills, today(6.36));
    expect(grave.map(standing)).toEqual([["suspect-catch", "serious", "look-first"]]);
    expect(pValueOf(grave)).toBeLessThanOrEqual(0.01);
    const slight = findingsIn(...quietFills, today(6.18));
    expect(slight.map(standing)).toEqual([["catch-stands-out", "doubt", "catch-more"]]);
    expect(pValueOf(slight)).toBeGreaterThan(0.01);
    expect(pValueOf(slight)).toBeLessThan(0.05);
  });

  it("asks for nothing when somebody looked at it, and says what was written", () => {
    const checked = noted(today(6.44), 2, { checked: "weighed again", note: "windy" });
    const found = findingsIn(...quietFills, checked);
    expect(found.map(standing)).toEqual([["suspect-checked", "note", "to-know"]]);
    expect(found[0]?.facts).toMatchObject({
      remark: { catch: 2, checked: "weighed again", note: "windy" },
    });
  });

  it("carries its note, its operator and the person's own columns", () => {
    const beside = { note: "bag slipped", operator: "A", extra: { lot: "7" } };
    const [found] = findingsIn(...quietFills, noted(today(6.44), 2, beside));
    expect(found?.facts).toMatchObject({ remark: { catch: 2, checked: null, ...beside } });
  });

  it("one beyond what a fill can tell apart counts only at 1 %", () => {
    const [, more] = findingsIn(...quietFills, fillOf(4, [6.02, 6.5, 6.9])).map(standing);
    expect(more).toEqual(["more-than-can-be-told", "serious", "look-first"]);
  });
});

describe("a catch of an earlier fill", () => {
  const later = [5, 6, 7, 8].map((fill) => fillOf(fill, [6.04, 5.96, 6.02, 5.91]));
  const second = (mass: number) => fillOf(2, [6.21, mass, 6.25, 6.18]);
  const logWith = (fill: readonly Catch[]) =>
    findingsIn(present(quietFills[0]), fill, present(quietFills[2]), ...later);

  it("is history: by itself, among all catches, and beyond doubt, none of it asks for anything", () => {
    expect(logWith(second(6.44)).map(standing)).toEqual([
      ["suspect-only-in-fill", "note", "to-know"],
    ]);
    expect(logWith(second(6.5)).map(standing)).toEqual([
      ["suspect-in-earlier-fill", "note", "to-know"],
    ]);
    expect(logWith(second(6.6)).map(standing)).toEqual([["catch-set-aside", "doubt", "to-know"]]);
  });

  it("that is left out says by how much, and what the next fill would look like with it", () => {
    const meter = meterOf(
      present(quietFills[0]),
      noted(second(12.4), 2, { note: "two bags?" }),
      present(quietFills[2]),
      ...later,
    );
    const [found] = outliers(meter, options).cautions;
    const upper = present(meter.across.nextFill.interval?.upper);
    expect(found).toMatchObject({
      code: "catch-set-aside",
      where: { fill: 2, catches: [2] },
      facts: {
        timesFellows: expect.closeTo(12.4 / ((6.21 + 6.25 + 6.18) / 3), 12),
        setAside: 1,
        mishaps: expect.arrayContaining(["bag-not-emptied"]),
        nextFill: expect.closeTo(upper / meter.across.nextFill.value - 1, 12),
        nextFillWithAll: meter.withAll?.nextFillHalfWidth,
        remark: { note: "two bags?" },
      },
    });
  });

  it("stays when somebody looked at it, and is told as any other", () => {
    const kept = noted(second(6.6), 2, { checked: "counted twice" });
    const found = logWith(kept);
    expect(found.map(({ code }) => code)).toEqual(["suspect-in-earlier-fill"]);
    expect(found[0]?.facts).toMatchObject({ remark: { checked: "counted twice" } });
  });
});

describe("a catch whose fellows agree so exactly that it cannot be held against them", () => {
  // Three agree to a ten-millionth of a gram: scatter beside 9 kg, and rounding beside 6000.
  const masses = [6, 6 + 1e-10, 6 - 1e-10, 9, 6000];
  const told = (...fills: readonly (readonly Catch[])[]) => {
    const without = { ...options, scaleDivisionKg: null };
    const meter = present(fitModel(fills.flat(), without).meters[0]);
    return outliers(meter, without).cautions.flatMap((one) =>
      one.where.catches?.[0] === 5 ? [[one.code, pValueOf([one])]] : [],
    );
  };

  it("has a p value of 1, and no more, in whatever fill it is", () => {
    expect(told(fillOf(1, masses), fillOf(2, [6]))).toEqual([["catch-set-aside", 1]]);
    const checked = noted(fillOf(1, masses), 5, { checked: "weighed again" });
    expect(told(checked, fillOf(2, [6]))).toEqual([["suspect-in-earlier-fill", 1]]);
    expect(told(fillOf(1, [6]), fillOf(2, masses))).toEqual([["catch-stands-out", 1]]);
  });
});

describe("two catches", () => {
  it("of the newest fill: below 1 % one of them is wrong, below 5 % one more is asked for", () => {
    const grave = findingsIn(...quietFills, fillOf(4, [6.0, 6.5]));
    expect(grave.map(standing)).toEqual([["two-disagree", "serious", "look-first"]]);
    const slight = findingsIn(...quietFills, fillOf(4, [6.0, 6.19]));
    expect(slight.map(standing)).toEqual([["two-lie-apart", "doubt", "catch-more"]]);
    expect(findingsIn(...quietFills, fillOf(4, [6.0, 6.1]))).toEqual([]);
  });

  it("that were both looked at ask for nothing", () => {
    const checked = fillOf(4, [6.0, 6.5], { checked: "weighed twice" });
    expect(findingsIn(...quietFills, checked).map(standing)).toEqual([
      ["two-checked", "note", "to-know"],
    ]);
  });

  it("of which one was looked at still ask to look first: the other may be the wrong one", () => {
    for (const one of [1, 2]) {
      const checked = noted(fillOf(4, [6.0, 6.5]), one, { checked: "weighed twice" });
      expect(findingsIn(...quietFills, checked).map(standing)).toEqual([
        ["two-disagree", "serious", "look-first"],
      ]);
    }
  });

  it("tell the delivery's reader why there is no ±, in the same words as the answer about catches", () => {
    const fills = [...quietFills, fillOf(4, [6.0, 6.5])];
    const [fromDelivery] = ofDelivery(...fills).filter(({ code }) => code === "two-disagree");
    const [fromCatches] = findingsIn(...fills);
    expect(fromDelivery?.where).toEqual(fromCatches?.where);
    const said = [fromDelivery, fromCatches].map((one) => cautionSentence(present(one), words));
    expect(said[0]).toBe(said[1]);
  });

  it("of an earlier fill: a note among all catches of the log, and out of every figure beyond doubt", () => {
    const pairs = (apart: number) => [
      ...[1, 2, 4, 5, 6, 7].map((fill) => fillOf(fill, [6.06, 5.94, 6.0])),
      fillOf(3, [6 + apart / 2, 6 - apart / 2]),
    ];
    expect(findingsIn(...pairs(0.46)).map(standing)).toEqual([
      ["two-disagreed-earlier", "note", "to-know"],
    ]);
    const gone = findingsIn(...pairs(0.6));
    expect(gone.map(standing)).toEqual([["fill-set-aside", "doubt", "to-know"]]);
    expect(gone[0]).toMatchObject({ where: { fill: 3, catches: [1, 2] } });
  });
});

describe("two or three catches that range over more than 15 %", () => {
  it("are said by the delivery, once, with what each pair gives; the drive waits", () => {
    const fills = [fillOf(1, [6.0, 6.06, 9.6])];
    const [found] = ofDelivery(...fills).filter(({ code }) => code === "catches-disagree");
    expect(present(found)).toMatchObject({
      severity: "serious",
      asks: "look-first",
      where: { fill: 1, catches: [1, 3] },
      facts: { relativeRange: expect.closeTo(3.6 / 7.22, 12) },
    });
    expect(findingsIn(...fills)).toEqual([]);
    const { today, disagree } = outliers(meterOf(...fills), options);
    expect(today.relativeRange).toBe(present(disagree).range);
    const pair = [...quietFills, fillOf(4, [6.0, 7.9])];
    expect(ofDelivery(...pair).map(({ code }) => code)).toContain("catches-disagree");
    expect(findingsIn(...pair)).toEqual([]);
  });

  it("are not called wrong any more where somebody looked and kept the odd one", () => {
    const kept = noted(fillOf(1, [6.0, 6.06, 9.6]), 3, { checked: "weighed twice" });
    const said = [...findingsIn(kept), ...ofDelivery(kept)].map((one) =>
      cautionSentence(one, words),
    );
    expect(findingsIn(kept).map(({ code }) => code)).toEqual(["too-few-to-judge"]);
    expect(said.join(" ")).not.toMatch(/wrong|catch again/);
  });
});
