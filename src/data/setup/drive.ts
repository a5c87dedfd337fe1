import * as z from "zod";
import { entryOf, needed, optional } from "./field.ts";
import { messageOf } from "./needs.ts";
import { above0, list, quantity, type Span, span, text } from "./values.ts";

export type DriveSetup = GroundWheelSetup | MotorSetup;

export interface GroundWheelSetup {
  readonly kind: "ground-wheel";
  /** Meter turns per wheel turn as set now. */
  readonly ratio: number | null;
  /** Ratios that can be set, in the order given; null: any ratio. */
  readonly steps: readonly number[] | null;
  /** Names of the steps, in the same order. */
  readonly stepNames: readonly string[] | null;
}

export interface MotorSetup {
  readonly kind: "motor";
  readonly meterSpeedTurnsPerMin: Span | null;
}

const kinds = '"ground-wheel" or "motor"';

function kind<K extends DriveSetup["kind"]>(which: K) {
  return needed(
    "kind",
    z.literal(which).meta({ title: kinds }),
    "What turns the meter; must be given with a drive",
    "ground-wheel",
  );
}

const groundWheel = entryOf<GroundWheelSetup>(
  {
    kind: kind("ground-wheel"),
    ratio: optional("ratio", above0, "Meter turns per wheel turn as set now (ground-wheel)", 0.85),
    steps: optional(
      "steps",
      list(above0)
        .min(1, { error: messageOf({ problem: "setup-no-step", facts: {} }) })
        .meta({ title: "list of numbers" }),
      "Ratios that can be set (ground-wheel)",
      [0.8, 0.85, 0.9],
    ),
    stepNames: optional(
      "step_names",
      list(text).meta({ title: "list of texts" }),
      "A name for each step (ground-wheel)",
      ["low", "middle", "high"],
    ),
  },
  {
    rules: [
      {
        holds: ({ steps, stepNames }) => stepNames === null || stepNames.length === steps?.length,
        at: "step_names",
        need: { problem: "setup-step-names", facts: {} },
      },
    ],
  },
);

const motor = entryOf<MotorSetup>({
  kind: kind("motor"),
  meterSpeedTurnsPerMin: optional(
    "meter_speed",
    span("rotation", "turns/min"),
    "Meter speeds the drive can hold (motor)",
    { from: quantity(5, "turns/min"), to: quantity(120, "turns/min") },
  ),
});

/** @internal */
export const drive = z.discriminatedUnion("kind", [groundWheel, motor], {
  error: messageOf({ problem: "setup-kind", facts: { kinds: ["ground-wheel", "motor"] } }),
});
