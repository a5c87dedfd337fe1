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
    return { append: () => {}, close: () => {} };
  }
  const others = channel();
  const tell = async () => heard(await database.getAll("events"));
  let waiting: readonly PageEvent[] = [];
  let work: Promise<void> = Promise.resolve();

  const write = async () => {
    const batch = waiting;
    if (batch.length === 0) return;
    try {
      const { store, done } = database.transaction("events", "readwrite");
      await Promise.all([...batch.map((event) => store.add(event)), done]);
      waiting = waiting.filter((event) => !batch.includes(event));
      state(await durability());
      others?.postMessage("more");
    } catch {
      state("full");
    }
  };

  others?.addEventListener("message", () => {
    work = work.then(tell).catch(() => {});
  });
  await tell().catch(() => state("denied"));
  state(await durability());
  return {
    append: (events) => {
      waiting = [...waiting, ...events];
      work = work.then(write);
    },
    close: () => {
      others?.close();
      database.close();
    },
  };
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
  // Only where the page came over an encrypted connection, or from this device, can a browser be asked.
  const { storage } = navigator as { readonly storage?: StorageManager };
  const lasting = (await storage?.persisted?.().catch(() => false)) ?? false;
  return lasting ? "kept" : "may-go";
}

/** Asks the browser not to clear what is kept; some ask the person, so it is done after the first catch. */
export async function askToKeep(): Promise<void> {
  const { storage } = navigator as { readonly storage?: StorageManager };
  await storage?.persist?.().catch(() => false);
}
