/**
 * Names people gave (bins, products), each with an id that can stand in a page and in a file name. Accents are
 * dropped, everything but a–z and 0–9 becomes a hyphen, and names that end up alike are numbered in order.
 *
 * @param names  any text; repeats get one id
 * @returns      name → id matching [a-z0-9-]+, all different, the same for the same names in the same order
 */
export function slugs(names: readonly string[]): ReadonlyMap<string, string> {
  const result = new Map<string, string>();
  const taken = new Set<string>();
  for (const name of names) {
    if (result.has(name)) continue;
    const free = firstFree(plain(name), taken);
    taken.add(free);
    result.set(name, free);
  }
  return result;
}

function plain(name: string): string {
  const hyphenated = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  const short = hyphenated.slice(0, 40) || "unnamed";
  return devices.test(short) ? `${short}-name` : short;
}

/** Names that Windows keeps for devices, whatever ending follows. */
const devices = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

function firstFree(wanted: string, taken: ReadonlySet<string>): string {
  let candidate = wanted;
  for (let n = 2; taken.has(candidate); n++) candidate = `${wanted}-${n}`;
  return candidate;
}
