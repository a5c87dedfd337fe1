import { beforeAll, describe, expect, it } from "vitest";
import type { Words } from "../../../src/wording/words.ts";
import { englishIn, numbersIn } from "../../support/bilingual.ts";
import { leavesOf, listening, type Said } from "../../support/listening.ts";
import { type Occasion, occasions } from "../../support/occasions.ts";
import { english, german } from "../../support/words.ts";

let all: readonly Occasion[];
beforeAll(async () => {
  all = await occasions();
});

function saidOn(occasion: Occasion, words: Words): readonly Said[] {
  const { words: heard, said } = listening(words);
  occasion.say(heard);
  return said;
}

const lines = ({ text }: Said): readonly string[] =>
  Array.isArray(text) ? text : typeof text === "string" ? [text] : [];

/** What is wrong with a German line that says the same as an English one. */
function faultsOf(inEnglish: string, inGerman: string): readonly string[] {
  const [wanted, found] = [numbersIn(inEnglish, "en"), numbersIn(inGerman, "de")];
  return [
    ...((inEnglish === "") === (inGerman === "") ? [] : ["says nothing"]),
    ...(/undefined|NaN|Infinity|\[object/.test(inGerman) ? ["holds a word of code"] : []),
    ...(/\bnull\b/.test(inGerman) && !/\b(zero|none|0)\b/.test(inEnglish) ? ["holds null"] : []),
    ...englishIn(inGerman).map((word) => `holds the English word ${word}`),
    ...(`${wanted}` === `${found}` ? [] : [`has the numbers ${found} instead of ${wanted}`]),
  ];
}

describe.each(["metric", "us"] as const)("everything said in German, %s units", (units) => {
  it("is said as often as in English, in whole German sentences, with the same numbers", () => {
    const faults = all.flatMap((occasion) => {
      const inEnglish = saidOn(occasion, english(units));
      const inGerman = saidOn(occasion, german(units));
      expect(inGerman.map(({ by }) => by)).toEqual(inEnglish.map(({ by }) => by));
      return inEnglish.flatMap((one, i) => {
        const other = inGerman[i] ?? { by: "", text: null };
        expect(lines(other).length, `${one.by} of ${occasion.name}`).toBe(lines(one).length);
        return lines(one).flatMap((line, k) => {
          const said = lines(other)[k] ?? "";
          return faultsOf(line, said).map((fault) => `${one.by} ${fault}: ${line} / ${said}`);
        });
      });
    });
    expect(faults).toEqual([]);
  });
});

describe("the functions that speak", () => {
  it("are all heard above; cautions, what to look at for them, problems, and what goes round files, tables, commands and the page have a test of their own", () => {
    const heard = new Set(all.flatMap((one) => saidOn(one, german()).map(({ by }) => by)));
    const silent = [...leavesOf(german())]
      .filter(([path, leaf]) => typeof leaf === "function" && !heard.has(path))
      .map(([path]) => path)
      .filter(
        (path) =>
          !/^(cautions|decision\.looks|problems|spreads|tables|template|usage|command|imported|page)\./.test(
            path,
          ),
      );
    expect(silent).toEqual([]);
  });
});
