import type { Meter } from "../../model/meters.ts";
import { type ModelOptions, modelOptionsOf } from "../../model/model.ts";
import { caution } from "../../results/caution.ts";
import { requireModelOptions } from "../../results/options.ts";
import type { Delivery } from "../delivery/result.ts";
import { speedsCaught } from "./caught-speeds.ts";
import { missingForSetting } from "./missing.ts";
import type { SettingChoices } from "./options.ts";
import type { Setting } from "./result.ts";

const nothing: SettingChoices = {
  workingWidthM: null,
  drive: null,
  wheelTravelM: null,
  slip: null,
  turnsPerHectare: null,
  target: null,
  lowestRate: null,
  highestRate: null,
  seed: null,
  speedKmPerH: null,
};

/** What `setting` answers where nobody told anything of drive, field or rate: what it would need. */
export function settingOfNothing(
  meter: Meter,
  { bin, product, fill, estimate }: Pick<Delivery, "bin" | "product" | "fill" | "estimate">,
  model: ModelOptions,
): Setting {
  requireModelOptions(model);
  const options = { ...modelOptionsOf(model), ...nothing };
  const missing = missingForSetting(options, ["target rate"]);
  return {
    kind: "setting",
    bin,
    product,
    fill,
    options,
    delivery: estimate,
    target: null,
    turnsPerHectare: null,
    ratio: null,
    steps: [],
    caughtStep: null,
    nearest: null,
    around: null,
    meterSpeeds: [],
    reach: null,
    now: null,
    lawful: null,
    caughtTurnsPerMin: speedsCaught(meter, fill),
    missing,
    cautions: [caution("setting-needs", { bin, product, fill }, { missing })],
  };
}
