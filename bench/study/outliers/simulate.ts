import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch } from "../../../src/data/types.ts";
import { usualBorrowing } from "../../../src/model/lenders.ts";
import { type Fill, metersOf } from "../../../src/model/meters.ts";
import type { FillFinding } from "../../../src/model/screening/finding.ts";
import { screenLog } from "../../../src/model/screening/screen-log.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";

/** A meter that is simulated: relative scatter is that of a catch of `turns`. */
export interface Scene {
  readonly kgPerTurn: number;
  readonly turns: number;
  /** Catch scatter, as a fraction. */
  readonly scatter: number;
  /** Fill-to-fill spread, as a fraction. */
  readonly spread: number;
  readonly bagKg: number;
  readonly divisionKg: number;
  /** What the file has: net mass only, or gross and tare. */
  readonly columns: "net" | "gross and tare";
  /** Normal errors, or Student's t on 4 degrees of freedom scaled to the same standard deviation. */
  readonly tails: "normal" | "heavy";
  /** Every other catch has so many times the turns. */
  readonly longer: number;
  /** Whether the variance of a catch grows with its turns or with their square. */
  readonly growth: "turns" | "turns squared";
}

/** 6 kg catches of 20 turns, as in all tables unless they say otherwise. */
export const usualScene: Scene = {
  kgPerTurn: 0.3,
  turns: 20,
  scatter: 0.015,
  spread: 0.03,
  bagKg: 0.4,
  divisionKg: 0.01,
  columns: "net",
  tails: "normal",
  longer: 1,
  growth: "turns",
};

/** Catches of one fill as somebody weighed and wrote them, all as they should be. */
export function simulateFill(
  scene: Scene,
  fill: number,
  catches: number,
  random: RandomStream,
): readonly Catch[] {
  const delivery = scene.kgPerTurn * (1 + scene.spread * random.normal());
  return Array.from({ length: catches }, (_, i) => {
    const times = i % 2 === 0 ? 1 : scene.longer;
    const turns = scene.turns * times;
    const sd = scene.growth === "turns" ? Math.sqrt(times) : times;
    const error = scene.scatter * scene.kgPerTurn * scene.turns * sd * errorOf(scene, random);
    return written(scene, fill, i + 1, turns, delivery * turns + error, random);
  });
}

/** An error of mean 0 and standard deviation 1. */
function errorOf({ tails }: Scene, random: RandomStream): number {
  const normal = random.normal();
  return tails === "normal" ? normal : normal / Math.sqrt(random.chiSquared(4) / 2);
}

/** The catches as the model's fills, in order of fill, every one with all its catches. */
export function asFills(catches: readonly Catch[]): readonly Fill[] {
  return metersOf(catches)[0]?.fills ?? [];
}

/** What the model finds in the catches of one meter, fill by fill. */
export function findingsIn(
  catches: readonly Catch[],
  { divisionKg }: Pick<Scene, "divisionKg">,
): readonly FillFinding[] {
  return (
    screenLog(metersOf(catches), { divisionKg, borrowing: usualBorrowing })[0]?.screening
      .findings ?? []
  );
}

function written(
  scene: Scene,
  fill: number,
  number: number,
  turns: number,
  kg: number,
  random: RandomStream,
): Catch {
  const tareKg = read(scene.bagKg + 0.01 * random.normal(), scene);
  const grossKg = read(kg + scene.bagKg, scene);
  const hasGross = scene.columns === "gross and tare";
  return makeCatch({
    row: 100 * fill + number,
    bin: "1",
    product: "wheat",
    fill,
    catch: number,
    turns,
    grossKg: hasGross ? grossKg : null,
    tareKg: hasGross ? tareKg : null,
    netKg: hasGross ? grossKg - tareKg : read(kg, scene),
  });
}

/** What the scale shows. */
export function read(kg: number, { divisionKg }: Pick<Scene, "divisionKg">): number {
  const shown = Math.round(kg / divisionKg) * divisionKg;
  // 637 × 0.01 is not 6.37 to the last bit, but what a person writes down is.
  return Math.round(shown * 1e6) / 1e6;
}
