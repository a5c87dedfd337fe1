const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** A signal came while the work could still be taken back. */
export class Interrupted extends Error {
  override readonly name = "Interrupted";
}

/** Asked and told by work that a signal may cut off. */
export interface Interruption {
  /** Asked between two steps. @throws Interrupted when a signal came, for the work to take back what it has begun */
  readonly goOn: () => void;
  /** Told once nothing can be taken back any more: a signal waits until the work is done. */
  readonly fromHereOn: () => void;
}

/**
 * Does the work; a signal that ends the process waits for the step that is being done, since a file that the system is
 * making at that moment could not be removed before it is there. A second signal does not wait.
 */
export async function interruptible<T>(work: (by: Interruption) => Promise<T>): Promise<T> {
  let waiting: NodeJS.Signals | null = null;
  let waits = false;
  const end = (signal: NodeJS.Signals) => {
    for (const one of signals) process.off(one, leave);
    process.kill(process.pid, signal);
  };
  const leave = (signal: NodeJS.Signals) => {
    if (waiting === null) waiting = signal;
    else end(signal);
  };
  for (const signal of signals) process.on(signal, leave);
  try {
    return await work({
      goOn: () => {
        if (waiting !== null && !waits) throw new Interrupted();
      },
      fromHereOn: () => {
        waits = true;
      },
    });
  } finally {
    if (waiting !== null) end(waiting);
    for (const signal of signals) process.off(signal, leave);
  }
}
