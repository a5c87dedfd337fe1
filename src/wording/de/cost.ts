import type { cost as english } from "../en/cost.ts";
import { nouns } from "./nouns.ts";

const { catches } = nouns;

/** What is said of the money in rate errors and catches. */
export const cost: typeof english = {
  notYet: ({ bin, product }) =>
    `Tank ${bin} (${product}): Was Proben kosten und sparen, lässt sich noch nicht ausrechnen.`,
  skippingLeast: (f) =>
    `Tank ${f.bin} (${f.product}): Nicht abzudrehen kostet am wenigsten, ${f.total} für die verbleibenden Mengenfehler${f.season === null ? "" : `, ${f.season} in der Saison`}.`,
  catchesLeast: (f) =>
    `Tank ${f.bin} (${f.product}): ${catches(f.count)} je Füllung ${f.count === 1 ? "kostet" : "kosten"} am wenigsten, ${f.total} für das Abdrehen und die verbleibenden Mengenfehler${f.nearly === null ? "" : ` (${catches(f.nearly)} bis auf 5 % genauso günstig)`}${f.season === null ? "" : `, ${f.season} in der Saison`}${f.skipping === null ? ". Was es kostet, nicht abzudrehen, lässt sich aus diesen Füllungen nicht sagen" : `; nicht abzudrehen kostet ${f.skipping}`}.`,
  withScatter: (f) =>
    `Dabei zählt die Streuung der Proben nicht als Unterschied der Füllungen; zählt sie mit, kostet es ${f.skipping}, nicht abzudrehen${f.least === null ? "" : `, und am wenigsten ${f.least === 1 ? "kostet" : "kosten"} ${catches(f.least)} je Füllung`}.`,
  toleranceNotTold: (tolerance) =>
    `Ob eine Füllung ohne Abdrehen innerhalb von ${tolerance} bleibt, sagen so wenige Füllungen nicht.`,
};
