import type { Catch } from "../../../src/data/types.ts";
import type { RandomStream } from "../../../src/numeric/random.ts";
import type { Mishap } from "../../../src/results/mishap.ts";
import { convert } from "../../../src/units/convert.ts";
import { read, type Scene } from "./simulate.ts";

/** What a mishap needs to know of the catch it happens to. */
interface Scenery {
  readonly row: Catch;
  readonly previous: Catch | null;
  readonly scene: Scene;
  readonly random: RandomStream;
}

type Fault = (scenery: Scenery) => Catch;

/** Every mishap as it changes what is written; the catch itself is as it was simulated. */
export const faults: Readonly<Record<Mishap, Fault>> = {
  "tare-left-in": ({ row, scene }) =>
    row.grossKg === null
      ? { ...row, netKg: read(row.netKg + scene.bagKg, scene) }
      : { ...row, tareKg: 0, netKg: row.grossKg },
  "tare-taken-off-twice": (at) => withMass(at, at.row.netKg - at.scene.bagKg),
  "one-turn-more": (at) => withTurns(at, 1),
  "one-turn-fewer": (at) => withTurns(at, -1),
  "two-turns-more": (at) => withTurns(at, 2),
  "two-turns-fewer": (at) => withTurns(at, -2),
  "bag-not-emptied": (at) => withMass(at, at.row.netKg + (at.previous ?? at.row).netKg),
  "two-catches-in-one": (at) => withTurns(at, at.scene.turns),
  "meter-starved": (at) => withMass(at, at.row.netKg * (0.4 + 0.4 * at.random.uniform())),
  "other-unit": (at) => withMass(at, at.row.netKg * convert(1, "kg", "lb")),
  "digits-swapped": (at) => withReading(at, swapDigits(at)),
  "decimal-moved": (at) => withReading(at, 10 * (at.row.grossKg ?? at.row.netKg)),
};

/** A second bag, a lid or a bucket on the scale, though the tare was written down and taken off. */
export function withSecondBag(
  catches: readonly Catch[],
  at: number,
  scene: Scene,
): readonly Catch[] {
  return catches.map((row, i) => {
    if (i !== at) return row;
    const netKg = read(row.netKg + scene.bagKg, scene);
    return { ...row, netKg, grossKg: netKg + (row.tareKg ?? 0) };
  });
}

/** The catches with a mishap at one of them. */
export function withFault(
  catches: readonly Catch[],
  at: number,
  mishap: Mishap,
  scene: Scene,
  random: RandomStream,
): readonly Catch[] {
  const previous = catches[at - 1] ?? null;
  return catches.map((row, i) =>
    i === at ? faults[mishap]({ row, previous, scene, random }) : row,
  );
}

function withTurns(at: Scenery, by: number): Catch {
  const { row, scene, random } = at;
  const own = row.netKg / row.turns;
  const scatter = scene.scatter * scene.kgPerTurn * Math.sqrt(Math.abs(by) * scene.turns);
  return withMass(at, row.netKg + own * by + scatter * random.normal());
}

function withMass({ row, scene }: Scenery, netKg: number): Catch {
  const net = read(netKg, scene);
  return row.grossKg === null
    ? { ...row, netKg: net }
    : { ...row, netKg: net, grossKg: net + (row.tareKg ?? 0) };
}

function withReading({ row }: Scenery, readingKg: number): Catch {
  return row.grossKg === null
    ? { ...row, netKg: readingKg }
    : { ...row, grossKg: readingKg, netKg: readingKg - (row.tareKg ?? 0) };
}

// Of all neighbouring digits, a pair whose exchange changes the number most: small slips are lost in the scatter.
function swapDigits({ row }: Scenery): number {
  const reading = row.grossKg ?? row.netKg;
  const [whole = "0", decimals = "00"] = reading.toFixed(2).split(".");
  const digits = `${whole}${decimals}`;
  const swapped = [...digits].slice(1).map((digit, i) => {
    const characters = [...digits];
    characters[i + 1] = characters[i] ?? "";
    characters[i] = digit;
    return Number(characters.join("")) / 100;
  });
  return swapped.reduce((most, value) =>
    Math.abs(value - reading) > Math.abs(most - reading) ? value : most,
  );
}
