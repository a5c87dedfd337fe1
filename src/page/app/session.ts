import { computed, signal } from "@preact/signals";
import type { MassUnit } from "../../data/types.ts";
import { type PageLanguage, pageWordsIn } from "../../wording/words.ts";
import type { Given } from "../given.ts";
import { checkEntry } from "./answer.ts";
import { answering } from "./answering.ts";
import { type Cells, changed, massIn } from "./cells.ts";
import { type Action, lastToUndo, type PageEvent, standing } from "./events.ts";
import { logOf } from "./log.ts";
import { typedSetup } from "./setup.ts";
import { openStore, type Storage, type Store } from "./store.ts";

/** Everything the page holds, and what can be done with it. What is shown follows from it by itself. */
export type Session = ReturnType<typeof startSession>;

export function startSession(language: PageLanguage, given: Given) {
  const events = signal<readonly PageEvent[]>([]);
  const storage = signal<Storage>("opening");
  const chosen = signal<string | null>(null);
  const logs = computed(() => logsOf(events.value));
  const last = computed(() => events.value.findLast((event) => event.log !== null)?.log ?? null);
  const current = computed(() => chosen.value ?? last.value);
  const ownEvents = computed(() => events.value.filter(({ log }) => log === current.value));
  const log = computed(() => logOf(ownEvents.value));
  const machine = computed(() => log.value.machine);
  const units = computed(() => (machine.value.units?.text === "us" ? "us" : given.units));
  const words = computed(() => {
    const typed = machine.value.units?.text;
    return pageWordsIn(language, typed === "us" || typed === "metric" ? typed : units.value);
  });
  const mark = computed(() => words.value.format.marks.decimal);
  const massUnit = computed<MassUnit>(() => {
    const typed = machine.value.mass?.text;
    const usual = words.value.format.units === "us" ? "lb" : "kg";
    if (isMassUnit(typed)) return typed;
    // The scale of the catch before is mostly that of the next.
    const last = log.value.rows.at(-1)?.cells ?? {};
    return (massIn(last, "gross") ?? massIn(last, "net"))?.unit ?? usual;
  });
  const both = computed(() => typedSetup(given.setup, machine.value, log.value.bins));
  const setup = computed(() => both.value?.setup ?? null);
  const tab = signal<string | null>(null);
  const found = answering({ log, setup, library: given.library, words, tab });

  let store: Store | null = null;
  let early: readonly PageEvent[] = [];
  const keep = (added: readonly PageEvent[]) => {
    if (store === null) early = [...early, ...added];
    else store.append(added);
  };
  /** Does what a person did, at once; it is kept in the background. */
  const act = (...actions: readonly Action[]) => {
    const started = current.value ?? newId();
    const first: readonly Action[] = current.value === null ? [{ kind: "log-started" }] : [];
    const added = [...first, ...actions].map((action) => eventOf(action, started));
    chosen.value = started;
    events.value = [...events.value, ...added];
    keep(added);
  };

  const ready = openStore(
    (kept) => {
      // What is not kept yet comes last, as it was done last.
      const known = new Set(kept.map(({ id }) => id));
      events.value = [...kept, ...events.value.filter(({ id }) => !known.has(id))];
    },
    (state) => {
      storage.value = state;
    },
  ).then((opened) => {
    store = opened;
    if (early.length > 0) store.append(early);
    early = [];
  });

  return {
    given,
    events,
    storage,
    logs,
    current,
    log,
    machine,
    words,
    massUnit,
    mark,
    both,
    tab,
    ...found,
    ready,
    undoable: computed(() => lastToUndo(ownEvents.value)),
    safetyRead: computed(() => lastRead(events.value)),
    act,
    undo: () => {
      const last = lastToUndo(ownEvents.peek());
      if (last !== null) act({ kind: "undone", event: last.id });
    },
    openLog: (id: string) => {
      chosen.value = id;
      tab.value = null;
    },
    startLog: (...actions: readonly Action[]) => {
      chosen.value = newId();
      tab.value = null;
      act({ kind: "log-started" }, ...actions);
    },
    readSafety: () => {
      const read = { ...eventOf({ kind: "safety-read" }, ""), log: null };
      events.value = [...events.value, read];
      keep([read]);
    },
    /** Adds a catch, or changes one; what the reader would refuse is not done. Returns its problems. */
    putCatch: (row: string | null, cells: Cells) => {
      const { rows } = log.peek();
      const id = row ?? newId();
      const [before] = rows.filter((one) => one.id === id);
      const read = checkEntry(before === undefined ? cells : changed(before.cells, cells));
      if (!read.ok) return read.issues;
      const kind = before === undefined ? "catch-added" : "catch-changed";
      act({ kind, row: id, cells });
      if (rows.length === 0) void store?.askToKeep();
      return [];
    },
  };
}

export interface KeptLog {
  readonly id: string;
  readonly at: string;
  readonly catches: number;
}

function logsOf(events: readonly PageEvent[]): readonly KeptLog[] {
  const byLog = new Map<string, PageEvent[]>();
  for (const event of events)
    if (event.log !== null) byLog.set(event.log, [...(byLog.get(event.log) ?? []), event]);
  // The log that somebody worked on last comes last.
  const last = (id: string) => events.findLastIndex(({ log }) => log === id);
  return [...byLog]
    .map(([id, own]) => ({ id, at: own[0]?.at ?? "", catches: logOf(own).rows.length }))
    .sort((a, b) => last(a.id) - last(b.id));
}

function lastRead(events: readonly PageEvent[]): string | null {
  return standing(events).findLast(({ action }) => action.kind === "safety-read")?.at ?? null;
}

function eventOf(action: Action, log: string): PageEvent {
  return { id: newId(), log, at: new Date().toISOString(), action };
}

/** Drawn where a page without a secure connection may draw too. */
function newId(): string {
  return [...crypto.getRandomValues(new Uint32Array(4))]
    .map((part) => part.toString(36).padStart(7, "0"))
    .join("");
}

function isMassUnit(text: string | undefined): text is MassUnit {
  return text === "kg" || text === "g" || text === "lb" || text === "oz";
}
