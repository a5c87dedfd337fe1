import { randomBytes } from "node:crypto";
import type { Io } from "./io.ts";

/**
 * What a terminal would act on instead of showing it: control characters but for the ends of lines and tabulators, marks that
 * turn the direction of text, separators of lines that are no line feed, and halves of characters.
 */
const active =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2028\u2029\u2066-\u2069\ufeff]|\p{Cs}/gu;

/** The text with what a terminal would act on written out, as JSON writes it, so that an answer in JSON stays the same. */
export function inert(text: string): string {
  return text.replace(active, (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`);
}

/** Speaks as the other does, but for names of the data that would act on the terminal. Its own colours stay. */
export function inertIo(io: Io): Io {
  // Colours are put in last: in a text nobody could tell them from those that came with the data.
  const mark = randomBytes(8).toString("hex");
  const coloured: string[] = [];
  const place = new RegExp(`${mark}:(\\d+);`, "g");
  const withColours = (text: string) =>
    inert(text).replace(place, (_, index: string) => coloured[Number(index)] ?? "");
  const keeping = (colours: Io["outColors"]): Io["outColors"] => ({
    ...colours,
    red: (text) => `${mark}:${coloured.push(colours.red(inert(String(text)))) - 1};`,
    yellow: (text) => `${mark}:${coloured.push(colours.yellow(inert(String(text)))) - 1};`,
  });
  return {
    ...io,
    out: (text) => io.out(withColours(text)),
    err: (text) => io.err(withColours(text)),
    outColors: keeping(io.outColors),
    errColors: keeping(io.errColors),
  };
}
