import type { MimeBundle, ShownByCell } from "./notebook-file.ts";

// One notebook runs in one process, so what it shows can be gathered here.
const shown: Record<string, MimeBundle[]> = {};
let current: MimeBundle[] | null = null;

/** Everything shown from now on belongs to this cell. Called between the cells of a joined notebook. */
export function beginCell(id: string): void {
  current = [];
  shown[id] = current;
}

/** @returns false when no notebook is being run, so that nobody will look at what was gathered */
export function collect(bundle: MimeBundle): boolean {
  current?.push(bundle);
  return current !== null;
}

export function everythingShown(): ShownByCell {
  return shown;
}
