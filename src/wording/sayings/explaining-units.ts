import type { Variable } from "../../questions/explaining-variables/result.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { Format } from "../format.ts";

const litresPerM3 = 1000;
const cubicInchesPerCubicFoot = 1728;

/** Volumes and effects of recorded variables in the units a person reads. */
export function explainingUnits(format: Format) {
  const [perTurn, density] = [format.convert(1, "delivery", 1), format.convert(1, "density", 1)];
  const us = format.units === "us";
  const volumePerM3 = us ? (cubicInchesPerCubicFoot * perTurn) / density : litresPerM3;
  const unitOf = (name: string, variables: readonly Variable[]) =>
    variables.find((variable) => variable.name === name)?.unit ?? null;
  /** One unit of the result in units of the reader. */
  const oneOf = (name: string, variables: readonly Variable[]) =>
    unitOf(name, variables) === "kg/m³" ? density : 1;

  return {
    volumeUnit: us ? "in³" : "L",
    /** @param error  the smallest of a column */
    volume: (volumeM3: number, error: number | null): string =>
      format.sized(
        volumeM3 * volumePerM3,
        (error ?? volumeM3) * volumePerM3,
        error === null ? 4 : 2,
      ),
    /** As the reader writes it; null: the file gives none. */
    unit: (name: string, variables: readonly Variable[]): string | null => {
      const unit = unitOf(name, variables);
      return unit === "kg/m³" ? format.unit("density", 1) : unit;
    },
    /** Relative change for one unit of the reader. */
    relative: (value: number, name: string, variables: readonly Variable[]): number =>
      value / oneOf(name, variables),
    /** Delivery for one unit of the reader, as precise as the error of the effect deserves. */
    effect: (
      value: number,
      { standardError }: Pick<Estimate, "standardError">,
      name: string,
      variables: readonly Variable[],
    ): string => {
      const scale = perTurn / oneOf(name, variables);
      return standardError === null
        ? format.sized(value * scale, value * scale, 3)
        : format.sized(value * scale, standardError * scale, 2);
    },
  };
}
