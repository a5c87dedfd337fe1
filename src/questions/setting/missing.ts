import { hectaresPerWheelTurn } from "../../model/drive.ts";
import type { MissingForSetting, SettingOptions } from "./result.ts";

/** What is not given and would say more, in the order a person would look for it. */
export function missingForSetting(
  options: SettingOptions,
  ofRates: readonly MissingForSetting[],
): readonly MissingForSetting[] {
  const { drive, workingWidthM, wheelTravelM, speedKmPerH } = options;
  const isMotor = drive?.kind === "motor";
  return [
    ...new Set(ofRates),
    ...(drive === null ? (["drive"] as const) : []),
    ...(workingWidthM === null ? (["working width"] as const) : []),
    ...(drive?.kind === "ground-wheel" &&
    wheelTravelM === null &&
    hectaresPerWheelTurn(options) === null
      ? (["wheel travel"] as const)
      : []),
    ...(isMotor && speedKmPerH === null ? (["working speed"] as const) : []),
    ...(isMotor && drive.meterSpeedTurnsPerMin === null ? (["meter speeds"] as const) : []),
  ];
}
