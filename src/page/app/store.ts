import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { PageEvent } from "./events.ts";

interface Schema extends DBSchema {
  readonly events: { readonly key: number; readonly value: PageEvent };
}

/**
 * How safe what was typed is · opening: not known yet · kept: on this device, for good · may-go: there, but the browser may
 * clear it when room is short · denied: nothing is kept · full: what was typed last is not kept.
 */
export type Storage = "opening" | "kept" | "may-go" | "denied" | "full";

/** The list of events as the device keeps it: it only grows, and every tab appends to the same one. */
export interface Store {
  /** Appends; those that could not be kept before are tried again first. */
  readonly append: (events: readonly PageEvent[]) => void;
  /** Asks the browser not to clear what is kept; some ask the person, so it is done after the first catch. */
  readonly askToKeep: () => Promise<void>;
  readonly close: () => void;
}

const name = "evencatch";

/**
 * Opens the list, and tells of everything that comes into it, whoever appends.
 *
 * @param heard  all events so far, in the order they were kept
 * @param state  how safe they are
 */
export async function openStore(
  heard: (events: readonly PageEvent[]) => void,
  state: (storage: Storage) => void,
): Promise<Store> {
  const database = await open().catch(() => null);
  if (database === null) {
    state("denied");
    return { append: () => {}, askToKeep: async () => {}, close: () => {} };
  }
  const others = channel();
  const tell = async () => heard(await database.getAll("events"));
  let safe: Storage = await durability();
  let waiting: readonly PageEvent[] = [];
  let work: Promise<void> = Promise.resolve();

  const write = async () => {
    const batch = waiting;
    if (batch.length === 0) return;
    try {
      const { store, done } = database.transaction("events", "readwrite");
      await Promise.all([...batch.map((event) => store.add(event)), done]);
      waiting = waiting.filter((event) => !batch.includes(event));
      state(safe);
      others?.postMessage("more");
    } catch {
      state("full");
    }
  };

  others?.addEventListener("message", () => {
    work = work.then(tell).catch(() => {});
  });
  await tell().catch(() => {
    safe = "denied";
  });
  state(safe);
  return {
    append: (events) => {
      waiting = [...waiting, ...events];
      work = work.then(nextTask).then(write);
    },
    askToKeep: async () => {
      await storageOf(navigator)
        ?.persist?.()
        .catch(() => false);
      safe = await durability();
      if (waiting.length === 0) state(safe);
    },
    close: () => {
      others?.close();
      database.close();
    },
  };
}

/** What was typed is answered first: opening a transaction takes as long as half an answer. */
function nextTask(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}

/** Async, since a browser that denies it may throw at once. */
async function open(): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, 1, {
    upgrade: (database) => {
      database.createObjectStore("events", { autoIncrement: true });
    },
  });
}

/** A page without an origin of its own has none; then no other tab shares the list either. */
function channel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel(name);
  } catch {
    return null;
  }
}

async function durability(): Promise<Storage> {
  const lasting = await storageOf(navigator)
    ?.persisted?.()
    .catch(() => false);
  return lasting === true ? "kept" : "may-go";
}

/** Only where the page came over an encrypted connection, or from this device, can a browser be asked. */
function storageOf({ storage }: { readonly storage?: StorageManager }): StorageManager | undefined {
  return storage;
}
