/** How two names differ that may be one. */
export type NameDifference = "letter" | "hyphen" | "number" | "invisible" | "look-alike";

/** Names that a slip may have made two of one. */
export interface NamePair {
  readonly one: string;
  readonly other: string;
  readonly difference: NameDifference;
}

/**
 * Cyrillic and Greek letters that look like Latin ones on every screen. A keyboard in another language puts them in, and
 * nobody sees it.
 */
const lookAlikes: ReadonlyMap<string, string> = new Map(
  [
    ["АВЕЅІЈКМНОРСТУХаеорсухіјѕ", "ABESIJKMHOPCTYXaeopcyxijs"],
    ["ΑΒΕΖΗΙΚΜΝΟΡΤΥΧορ", "ABEZHIKMNOPTYXop"],
  ].flatMap(([theirs = "", latin = ""]) =>
    [...theirs].map((sign, i): [string, string] => [sign, latin[i] ?? sign]),
  ),
);

/** Signs that take no room, soft hyphens among them. */
const invisible = /\p{Cf}/gu;

/** Signs of a name that nobody sees, or that pass for others: "U+200B", "а (U+0430)". */
export function strangeSigns(name: string): readonly string[] {
  return [...new Set(name)].flatMap((sign) => {
    const code = `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
    if (sign.search(invisible) !== -1) return [code];
    return lookAlikes.has(sign) || sign.normalize("NFKC") !== sign ? [`${sign} (${code})`] : [];
  });
}

/** Signs of every keyboard, which are what they look like. */
const plain = /^[!-~]+(?: [!-~]+)*$/;

/** A name as an eye sees it. */
function seen(name: string): string {
  if (plain.test(name)) return name.toLowerCase();
  const shown = name.normalize("NFKC").replace(invisible, "");
  const latin = [...shown].map((sign) => lookAlikes.get(sign) ?? sign).join("");
  return latin.toLowerCase().replace(/\s+/g, " ").trim();
}

/** Without what joins words; between two digits a mark tells numbers apart. */
function joined(name: string): string {
  return seen(name).replace(/(?<!\d)[-_ ./]+|[-_ ./]+(?!\d)/g, "");
}

/** With numbers as they count: 01 and 1.0 are 1; 1.10 may be a version and stays. */
function counted(name: string): string {
  const text = seen(name);
  return /^\d+[.,]0+$/.test(text)
    ? `${Number.parseInt(text, 10)}`
    : text.replace(/(?<![\d.,])0+(?=\d)/g, "");
}

/**
 * Pairs among some names that a slip may have made of one. Names that only an eye for signs tells apart are always such a pair,
 * and so is a number written in two ways. Of words only those are that differ in one letter, not the last, in a word of
 * four letters or more, for lots A and B, B1 and B2, and their like are names that somebody gave.
 */
export function samePairs(names: readonly string[]): readonly NamePair[] {
  const found = new Map<string, NamePair>();
  const add = (pairs: readonly Pair[], differenceOf: (pair: Pair) => NameDifference) => {
    for (const pair of pairs) {
      const key = JSON.stringify([pair.one, pair.other]);
      if (!found.has(key)) found.set(key, { ...pair, difference: differenceOf(pair) });
    }
  };
  add(alikeBy(names, seen), differsUnseen);
  add(alikeBy(names, counted), () => "number");
  add(alikeBy(names, joined), () => "hyphen");
  add(oneLetterApart(names), () => "letter");
  return [...found.values()];
}

type Pair = Pick<NamePair, "one" | "other">;

function differsUnseen({ one, other }: Pair): NameDifference {
  const bare = (name: string) => name.replace(invisible, "").trim();
  return bare(one) === bare(other) ? "invisible" : "look-alike";
}

/** Each name with the first that looks the same. */
function alikeBy(names: readonly string[], look: (name: string) => string): readonly Pair[] {
  const first = new Map<string, string>();
  return names.flatMap((other) => {
    const shown = look(other);
    const one = first.get(shown);
    if (one === undefined) first.set(shown, other);
    return one === undefined ? [] : { one, other };
  });
}

/** Words of fewer letters are codes: a letter makes another of them. */
const fewestLetters = 4;
/** Longer ones are no names, and every letter of them would be taken off once. */
const longestName = 200;
/** Nobody looks at more; names of a script with thousands of letters may all be one letter apart. */
const mostPairs = 1_000;

/**
 * Pairs of names with the same numbers, whose words are one slip apart. Names of many meters differ in their numbers only, so that
 * few words remain to be compared.
 */
function oneLetterApart(names: readonly string[]): readonly Pair[] {
  const byWords = new Map<string, Map<string, string>>();
  for (const name of names) {
    const look = seen(name);
    const words = look.replace(/\d+/g, "#");
    if (words.length > longestName || !hasWord(words)) continue;
    const known = byWords.get(words) ?? new Map<string, string>();
    byWords.set(words, known.set(look.replace(/\D+/g, " "), name));
  }
  return slipsAmong([...byWords.keys()]).flatMap(([one, other]) => {
    const theirs = byWords.get(other);
    return [...(byWords.get(one) ?? [])].flatMap(([numbers, name]) => {
      const same = theirs?.get(numbers);
      return same === undefined ? [] : { one: name, other: same };
    });
  });
}

/**
 * Two texts one slip apart have a text in common when one letter is taken off each, or off the longer: they are put together by
 * such texts, since each held against each would take the square of their number.
 */
function slipsAmong(texts: readonly string[]): readonly (readonly [string, string])[] {
  const byRest = new Map<string, string[]>();
  const pairs = new Map<string, readonly [string, string]>();
  for (const other of texts)
    for (const rest of restsOf(other)) {
      const before = byRest.get(rest) ?? [];
      byRest.set(rest, before);
      for (const one of before)
        if (pairs.size < mostPairs && isSlip(one, other))
          pairs.set(JSON.stringify([one, other]), [one, other]);
      before.push(other);
    }
  return [...pairs.values()];
}

function hasWord(name: string): boolean {
  return new RegExp(`\\p{L}{${fewestLetters}}`, "u").test(name);
}

/** A digit is never a slip here, so only letters are taken off. */
function restsOf(name: string): ReadonlySet<string> {
  const rests = new Set([name]);
  for (let i = 0; i < name.length; i++)
    if (isLetter.test(name.charAt(i))) rests.add(name.slice(0, i) + name.slice(i + 1));
  return rests;
}

const isLetter = /^\p{L}$/u;

/** Whether one letter was added, lost, changed, or swapped with its neighbour. */
function isSlip(one: string, other: string): boolean {
  let from = 0;
  while (from < one.length && one[from] === other[from]) from += 1;
  let same = 0;
  const shorter = Math.min(one.length, other.length);
  while (same < shorter - from && one.at(-1 - same) === other.at(-1 - same)) same += 1;
  const [ours, theirs] = [one, other].map((name) => name.slice(from, name.length - same));
  if (ours === undefined || theirs === undefined) return false;
  const isSwap = ours.length === 2 && theirs === ours.charAt(1) + ours.charAt(0);
  const isOne = ours.length <= 1 && theirs.length <= 1 && ours !== theirs;
  return (
    (isOne || isSwap) &&
    [one, other].every((name) => slipsWithinWord(name, from, name.length - same))
  );
}

/** Whether what differs is letters, not at the end of the name, in a word that has enough of them. */
function slipsWithinWord(name: string, from: number, to: number): boolean {
  if (to >= name.length || !/^\p{L}*$/u.test(name.slice(from, to))) return false;
  const before = /\p{L}*$/u.exec(name.slice(0, from))?.[0] ?? "";
  const after = /^\p{L}*/u.exec(name.slice(to))?.[0] ?? "";
  return before.length + (to - from) + after.length >= fewestLetters;
}
