import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answersOf, checkEntry, readRows } from "../../src/page/app/answer.ts";
import type { Cells } from "../../src/page/app/cells.ts";
import type { Action } from "../../src/page/app/events.ts";
import { logOf } from "../../src/page/app/log.ts";
import { typedSetup } from "../../src/page/app/setup.ts";
import {
  type BinField,
  binFields,
  isAllowed,
  type MachineField,
  machineFields,
  unitOf,
} from "../../src/page/app/typed.ts";
import { type Draw, drawing, wrongWith } from "../support/any-input.ts";
import { eventsOf } from "../support/mornings.ts";

const hostile = ["<b>", "=1+1", "__proto__", "NaN", "1e999", "-0", "٣", "1,234", "\u202e", " "];
/** What somebody types, or pastes, or a child that found the telephone. */
const typed = ({ oneOf, text, likely }: Draw) =>
  oneOf(["6.36", "6.4", "20", String(likely()), oneOf(hostile), text()]);
const bins = ["1", "2", "<b>", "__proto__"];
const keysOf = <K extends string>(fields: Readonly<Record<K, unknown>>) =>
  Object.keys(fields) as K[];

/** Mostly what is right. */
const mostly = (draw: Draw, good: string, other: () => string) =>
  draw.whole(19) === 0 ? other() : good;

function entry(draw: Draw): Cells {
  const { oneOf, whole } = draw;
  const any = () => typed(draw);
  const cells = {
    bin: mostly(draw, oneOf(bins), draw.text),
    product: mostly(draw, "wheat", draw.text),
    fill: mostly(draw, oneOf(["1", "1", "2"]), any),
    turns: mostly(draw, "20", any),
    [mostly(draw, "net_kg", () => oneOf(["gross_kg", "net_lb"]))]: mostly(
      draw,
      `6.${whole(9)}`,
      any,
    ),
    taken_at: mostly(draw, "", () => oneOf(["2026-03-24T06:20", any()])),
    exclude: mostly(draw, "", () => oneOf(["yes", any()])),
    reason: mostly(draw, "", () => oneOf(["slipped", draw.text()])),
    note: mostly(draw, "", draw.text),
  };
  return Object.fromEntries(Object.entries(cells).filter(([, text]) => text !== ""));
}

/** A figure of a field, which the page takes only where it may stand there. */
function figure<F extends MachineField | BinField>(draw: Draw, field: F) {
  const rule = { ...machineFields, ...binFields }[field];
  const text = draw.oneOf(["values" in rule ? draw.oneOf(rule.values) : "12", typed(draw)]);
  const unit = unitOf(field, { units: draw.oneOf(["metric", "us"] as const), mass: "kg" });
  return isAllowed(field, text) ? { text, unit } : null;
}

function action(draw: Draw, n: number): readonly Action[] {
  const row = `r${draw.whole(n)}`;
  const bin = draw.oneOf(bins);
  const product = draw.oneOf(["wheat", "rape", draw.text()]);
  switch (draw.whole(24)) {
    case 0:
      return [{ kind: "bin-added", bin, product }];
    case 1:
      return [{ kind: "bin-renamed", bin, product, to: { bin: draw.oneOf(bins), product } }];
    case 2:
      return [{ kind: "fill-started", bin, product }];
    case 3:
      return [{ kind: "catch-deleted", row }];
    case 4:
      return [{ kind: "undone", event: `e${draw.whole(n)}` }];
    case 5: {
      const field = draw.oneOf(keysOf(machineFields));
      return [{ kind: "machine-typed", field, typed: figure(draw, field) }];
    }
    case 6: {
      const field = draw.oneOf(keysOf(binFields));
      return [{ kind: "bin-typed", bin, field, typed: figure(draw, field) }];
    }
    default: {
      const cells = entry(draw);
      return checkEntry(cells).ok ? [{ kind: "catch-added", row: `r${n}`, cells }] : [];
    }
  }
}

describe("anything done on the page at the drill", () => {
  it("has an answer without a number that is none, or problems that say what is wrong", async () => {
    let answered = 0;
    await fc.assert(
      fc.asyncProperty(fc.gen(), async (g) => {
        const draw = drawing(g);
        const begun = bins.map((bin): Action => ({ kind: "bin-added", bin, product: "wheat" }));
        const done = Array.from({ length: 2 + draw.whole(14) }, (_, n) => action(draw, n)).flat();
        const log = logOf(eventsOf([...begun, ...done]));
        const wrong = await wrongWith(() => {
          const both = typedSetup(null, log.machine, log.bins);
          const answers = answersOf(log, both?.setup ?? null);
          const all = log.bins.map((bin) => answers.of(bin));
          answered += all.filter((one) => one.answers !== null).length;
          return [
            all,
            answers.issues.map(({ problem }) => problem),
            readRows(log.rows).ok,
            both?.file,
          ];
        });
        expect(wrong).toBeNull();
      }),
      { numRuns: 150, seed: 1, endOnFailure: true },
    );
    // Not everything is refused.
    expect(answered).toBeGreaterThan(100);
  });
});
