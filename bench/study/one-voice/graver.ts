import type { Action } from "../../../src/analysis/decision.ts";
import type { InventedLog } from "./log.ts";
import { analysisOf } from "./surfaces.ts";

const strength: Readonly<Record<Action, number>> = { "look-first": 2, "catch-more": 1, set: 0 };

/** Every serious finding that makes the action milder when it is turned on; empty when none does. */
export async function milderWhenGraver(log: InventedLog): Promise<readonly string[]> {
  const before = await actionsOf(log);
  const graver = [
    { what: "target out of reach", log: withUnreachableTarget(log) },
    { what: "a misplaced decimal today", log: withDecimalMoved(log) },
  ];
  const milder: string[] = [];
  for (const { what, log: after } of graver) {
    const then = await actionsOf(after);
    for (const [bin, action] of before) {
      const now = then.get(bin);
      if (now !== undefined && strength[now] < strength[action])
        milder.push(`${what}: ${action} becomes ${now}`);
    }
  }
  return milder;
}

async function actionsOf(log: InventedLog): Promise<ReadonlyMap<string, Action>> {
  const { meters } = await analysisOf(log);
  return new Map(
    meters.flatMap(({ bin, decision }) => (decision === null ? [] : [[bin, decision.action]])),
  );
}

function withUnreachableTarget(log: InventedLog): InventedLog {
  const bins = [...new Set(log.rows.map(({ bin }) => bin))].map((bin) => ({
    bin,
    target_rate: { value: 5000, unit: "kg/ha" },
    drive: {
      kind: "motor",
      meter_speed: {
        from: { value: 10, unit: "turns/min" },
        to: { value: 20, unit: "turns/min" },
      },
    },
  }));
  const cart = {
    working_width: { value: 8, unit: "m" },
    speed: { from: { value: 7, unit: "km/h" }, to: { value: 8, unit: "km/h" } },
  };
  return { ...log, setup: { ...log.setup, cart, bins } };
}

function withDecimalMoved(log: InventedLog): InventedLog {
  const last = log.rows.length - 1;
  return {
    ...log,
    rows: log.rows.map((row, i) => (i === last ? { ...row, netKg: row.netKg * 10 } : row)),
  };
}
