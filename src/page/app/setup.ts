import type { Setup } from "../../data/setup.ts";
import { binEdits, type TypedBin } from "./setup-bin.ts";
import type { SetupFile } from "./setup-edit.ts";
import { machineEdits } from "./setup-machine.ts";
import type { MachineTyped } from "./typed.ts";

/** A setup, and the file that says the same. */
export interface SetupBoth {
  readonly setup: Setup;
  readonly file: SetupFile;
}

const nothing: Setup = {
  source: "setup.json",
  title: null,
  tolerance: null,
  confidence: null,
  assurance: null,
  borrow: null,
  assumedSpread: null,
  assumedScatter: null,
  library: null,
  scale: { divisionKg: null, capacityKg: null, testedError: null },
  cart: {
    workingWidthM: null,
    speedKmPerH: null,
    wheelCircumferenceM: null,
    slip: null,
    turnCountStandardUncertainty: null,
  },
  bins: [],
  trial: null,
  money: {
    currency: null,
    valueOfHour: null,
    minutesPerCatch: null,
    minutesToSetUp: null,
    costPerCatch: null,
    costToSetUp: null,
    areaHectares: null,
    areaPerFillHectares: null,
  },
  fieldChecks: [],
  answered: [],
  cautions: [],
};

/**
 * The setup with what was typed on the page in place of what it says; null: there is neither. The file says the same, so
 * that a report on the catches rests on what the page rested on.
 *
 * @param given  the setup the page was made with; null: none
 */
export function typedSetup(
  given: SetupBoth | null,
  machine: MachineTyped,
  bins: readonly TypedBin[],
): SetupBoth | null {
  const edits = [...machineEdits(machine), ...bins.flatMap((bin) => binEdits(bin, machine))];
  if (edits.length === 0) return given;
  return edits.reduce<SetupBoth>(
    ({ setup, file }, edit) => ({ setup: edit.setup(setup), file: edit.file(file) }),
    given ?? { setup: nothing, file: {} },
  );
}
