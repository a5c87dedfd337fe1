import { describe, expect, it } from "vitest";
import { englishIn } from "../support/bilingual.ts";
import { english, german } from "../support/words.ts";

type Say = ReturnType<typeof english>["command"];

const names = "a.md, b/c.json";
const inTheWay = { names, manifest: "manifest.json" };
/** Each line of the command, made with facts that must come back in it. */
const lines: Readonly<Record<Exclude<keyof Say, "inTheWay" | "ownFault">, (say: Say) => string>> = {
  report: (say) => say.report("out/report.html"),
  sheet: (say) => say.sheet("trial/sheet.csv"),
  setupFound: (say) => say.setupFound("farm/setup.json"),
  libraryWaits: (say) => say.libraryWaits,
  readAs: (say) => say.readAs([{ turns: "20", mass: "6.3 kg" }]),
  tooFewProducts: (say) => say.tooFewProducts("Raps"),
  kept: (say) => say.kept({ folder: "f/g", names }),
  nothingWritten: (say) => say.nothingWritten("f/g"),
  cannotWrite: (say) => say.cannotWrite({ folder: "f/g", why: "EACCES" }),
  notAllPlaced: (say) => say.notAllPlaced({ folder: "f/g", why: "EACCES" }),
  beingWritten: (say) => say.beingWritten({ folder: "f/g", file: "manifest.json" }),
  added: (say) =>
    say.added({
      where: { bin: "1", product: "Raps", fill: 12, catch: 20 },
      spilled: null,
      caught: { turns: "20", net: "6.3 kg", tare: "12 kg" },
    }),
  locked: (say) => say.locked({ file: "f/g", lock: "f/g.lock" }),
  cannotAdd: (say) => say.cannotAdd({ file: "f/g", why: "EACCES" }),
  andMore: (say) => say.andMore({ names, more: 12 }),
};
const facts =
  /out\/report\.html|trial\/sheet\.csv|farm\/setup\.json|Raps|a\.md, b\/c\.json|f\/g|EACCES|12|manifest\.json|--[a-z-]+|evencatch|20|6\.3 kg/g;

const oneTurn = { turns: "1", net: "6.3 kg", tare: null };

const { command: en } = english();
const { command: de } = german();
const said: readonly (readonly [string, inEnglish: string, inGerman: string])[] = [
  ...Object.entries(lines).map(([key, line]) => [key, line(en), line(de)] as const),
  ...keysOf(en.inTheWay).map(
    (key) => [key, en.inTheWay[key](inTheWay), de.inTheWay[key](inTheWay)] as const,
  ),
  [
    "added to a file of one bin",
    en.added({ where: null, spilled: null, caught: oneTurn }),
    de.added({ where: null, spilled: null, caught: oneTurn }),
  ],
  [
    "spilled",
    en.added({ where: null, spilled: "Raps", caught: null }),
    de.added({ where: null, spilled: "Raps", caught: null }),
  ],
  ["no product", en.tooFewProducts(null), de.tooFewProducts(null)],
  ["own fault", en.ownFault, de.ownFault],
];

describe("what the command says beside its answers", () => {
  it.each(said)(
    "is said in German as in English, with the same facts: %s",
    (_, inEnglish, inGerman) => {
      expect(inGerman).not.toBe(inEnglish);
      expect(inGerman.match(facts)?.sort()).toEqual(inEnglish.match(facts)?.sort());
      expect(englishIn(inGerman.replaceAll(facts, " "))).toEqual([]);
    },
  );
});

function keysOf<T extends object>(table: T): readonly (keyof T & string)[] {
  return Object.keys(table) as (keyof T & string)[];
}
