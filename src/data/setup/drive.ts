import * as z from "zod";
import { entryOf, needed, optional, optionalKey } from "./field.ts";
import { messageOf } from "./needs.ts";
import { above0, list, name, quantity, type Span, span, text } from "./values.ts";

export type DriveSetup = GroundWheelSetup | MotorSetup;

export interface GroundWheelSetup {
  readonly kind: "ground-wheel";
  /** Meter turns per wheel turn as set now. */
  readonly ratio: number | null;
  /** Ratios that can be set, in the order given; null: any ratio. */
  readonly steps: readonly number[] | null;
  /** Names of the steps, in the same order. */
  readonly stepNames: readonly string[] | null;
  /** Ratio of the one step at which the meter was caught; left out: not told. */
  readonly caughtRatio?: number | undefined;
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

/** The same as a file tells it. */
interface GroundWheelTold extends Omit<GroundWheelSetup, "caughtRatio"> {
  /** By its name, or by its ratio. */
  readonly caughtStep?: string | undefined;
}

const groundWheelTold = entryOf<GroundWheelTold>(
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
    caughtStep: optionalKey(
      "caught_step",
      name,
      "Step at which the catches were made, by name or ratio, where it was one only: what other steps put out is then called assumed (ground-wheel)",
      "middle",
    ),
  },
  {
    rules: [
      {
        holds: ({ steps, stepNames }) => stepNames === null || stepNames.length === steps?.length,
        at: "step_names",
        need: { problem: "setup-step-names", facts: {} },
      },
      {
        holds: (entry) => entry.caughtStep === undefined || ratioCaught(entry) !== undefined,
        at: "caught_step",
        need: { problem: "setup-step-unknown", facts: {} },
      },
    ],
  },
);

const groundWheel = groundWheelTold.transform(({ caughtStep, ...drive }): GroundWheelSetup => {
  const ratio = ratioCaught({ ...drive, caughtStep });
  return ratio === undefined ? drive : { ...drive, caughtRatio: ratio };
});

function ratioCaught({ steps, stepNames, caughtStep }: GroundWheelTold): number | undefined {
  if (steps === null || caughtStep === undefined) return undefined;
  return (
    steps[stepNames?.indexOf(caughtStep) ?? -1] ??
    steps.find((ratio) => ratio === Number(caughtStep))
  );
}

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
