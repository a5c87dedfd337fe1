import { binSetup, type Setup } from "../data/setup.ts";
import type { TurnsPerHectareOf } from "../data/simulated-area.ts";
import { hectaresPerWheelTurn, turnsSetNow } from "../model/drive.ts";
import { driveOf } from "./resolved-setup.ts";

/**
 * The turns of a meter over a hectare, as a setup tells them, for catches that stand for an area: those stated, else
 * ratio ÷ (width × travel in work), the ratio being that of the step that was caught, else the one set now.
 *
 * They are assumed where slip of the wheel is not given, and where they are stated of another step than the one caught.
 *
 * @param setup  null: nothing is known of any meter
 */
export function turnsPerHectareBy(setup: Setup | null): TurnsPerHectareOf {
  return (meter) => {
    if (setup === null) return null;
    const geometry = driveOf(setup, binSetup(setup, meter));
    const { drive, turnsPerHectare, slip } = geometry;
    const now = turnsSetNow(geometry);
    const [set, caught] =
      drive?.kind === "ground-wheel"
        ? [drive.ratio, drive.caughtRatio ?? drive.ratio]
        : [null, null];
    if (turnsPerHectare !== null && set === caught)
      return { value: turnsPerHectare, assumed: false };
    if (caught === null || set === caught)
      return now === null ? null : { value: now.turnsPerHectare.value, assumed: slip === null };
    const hectares = hectaresPerWheelTurn(geometry);
    return hectares === null
      ? null
      : { value: caught / hectares.value, assumed: slip === null || turnsPerHectare !== null };
  };
}
