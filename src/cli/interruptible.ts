import { unlinkSync } from "node:fs";

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * Does the work; a signal that ends the process takes what is unfinished with it. Once the work says so, a signal waits
 * until it is done.
 *
 * @param unfinished  files to remove, in this order, where the work is cut off
 */
export async function interruptible<T>(
  unfinished: () => Iterable<string>,
  work: (fromHereOn: () => void) => Promise<T>,
): Promise<T> {
  let waits = false;
  let waiting: NodeJS.Signals | null = null;
  const end = (signal: NodeJS.Signals) => {
    for (const one of signals) process.off(one, leave);
    process.kill(process.pid, signal);
  };
  const leave = (signal: NodeJS.Signals) => {
    waiting = signal;
    if (waits) return;
    for (const path of unfinished()) {
      try {
        unlinkSync(path);
      } catch {
        // Not written yet, or renamed already.
      }
    }
    end(signal);
  };
  for (const signal of signals) process.on(signal, leave);
  try {
    return await work(() => {
      waits = true;
    });
  } finally {
    if (waits && waiting !== null) end(waiting);
    for (const signal of signals) process.off(signal, leave);
  }
}
