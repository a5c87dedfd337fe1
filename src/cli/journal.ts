import { lstat, readFile, rename, unlink, writeFile } from "node:fs/promises";
import { hostname } from "node:os";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { isRecord } from "../data/json.ts";
import { isInside } from "./manifest.ts";

/** Lies in a folder while a run writes into it, and afterwards only where the run was cut off. */
export const journalName = "evencatch-unfinished.json";

/** A file that is put in its place: SHA-256 of what lay there before (null: nothing) and of what will. */
export interface Move {
  readonly before: string | null;
  readonly after: string;
}

/** What a run is about to do, so that the next one can finish it, or take back what was not begun. */
export interface Journal {
  readonly process: number;
  readonly host: string;
  /** Follows the name of a file until it is put in its place. */
  readonly ending: string;
  /** By name; empty until every one is written out beside its place. From then on nothing can be lost. */
  readonly moves: Readonly<Record<string, Move>>;
  /** Names that are being written beside their place. */
  readonly writing: readonly string[];
  /** Files of the last time that go, with the SHA-256 they have. */
  readonly outdated: Readonly<Record<string, string>>;
}

const start = '{"kind":"evencatch-unfinished"';

export function journalOf(given: Omit<Journal, "process" | "host">): Journal {
  return { process: process.pid, host: hostname(), ...given };
}

/** Takes the folder for this run. @throws the error EEXIST of the file system when another has it */
export function takeFolder(folder: string, ending: string): Promise<void> {
  const nothingYet = journalOf({ ending, moves: {}, writing: [], outdated: {} });
  return writeFile(join(folder, journalName), textOf(nothingYet), { flag: "wx" });
}

/** Puts a new text in the place of the journal at once. */
export async function rewriteJournal(folder: string, journal: Journal): Promise<void> {
  const beside = join(folder, journalName + journal.ending);
  await writeFile(beside, textOf(journal), { flag: "wx" });
  await rename(beside, join(folder, journalName));
}

export async function leaveFolder(folder: string): Promise<void> {
  await unlink(join(folder, journalName)).catch(() => {});
}

/**
 * What an earlier run left unfinished: nothing, a journal to go on from, or "taken" while that run, or another, may still
 * be at work.
 */
export async function unfinishedIn(folder: string): Promise<Journal | "taken" | "torn" | null> {
  const path = join(folder, journalName);
  const about = await lstat(path).catch(() => null);
  if (about === null) return null;
  if (!about.isFile()) return "taken";
  const text = await readFile(path, "utf8").catch(() => "");
  const age = Date.now() - about.mtimeMs;
  const journal = parsed(text);
  if (journal !== null) return isAtWork(journal, age) ? "taken" : journal;
  // Anything else of this name is somebody's own.
  if (!start.startsWith(text.slice(0, start.length))) return "taken";
  // Being written this moment, or cut off while it was.
  if (age > writtenWithin) return "torn";
  await setTimeout(writtenWithin);
  return unfinishedIn(folder);
}

/** Milliseconds that writing a journal never takes, nor writing a report. */
const writtenWithin = 1_000;
const atWorkFor = 3_600_000;

function isAtWork({ process: id, host }: Journal, age: number): boolean {
  if (age > atWorkFor) return false;
  // Of another machine that shares the folder, nobody knows.
  if (host !== hostname()) return true;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return !(error instanceof Error && "code" in error && error.code === "ESRCH");
  }
}

function textOf(journal: Journal): string {
  return `${start},${JSON.stringify(journal).slice(1)}\n`;
}

function parsed(text: string): Journal | null {
  if (!text.startsWith(start)) return null;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isRecord(value)) return null;
  const { process: id, host, ending, moves, writing, outdated } = value;
  const known =
    typeof id === "number" &&
    typeof host === "string" &&
    typeof ending === "string" &&
    /^\.[0-9a-f]+\.tmp$/.test(ending) &&
    isRecord(moves) &&
    Array.isArray(writing) &&
    isRecord(outdated);
  if (!known) return null;
  return {
    process: id,
    host,
    ending,
    moves: Object.fromEntries(
      Object.entries(moves).flatMap(([name, move]) =>
        isInside(name) && isMove(move) ? [[name, move]] : [],
      ),
    ),
    writing: writing.filter((name) => typeof name === "string" && isInside(name)),
    outdated: Object.fromEntries(
      Object.entries(outdated).flatMap(([name, sha256]) =>
        isInside(name) && typeof sha256 === "string" ? [[name, sha256]] : [],
      ),
    ),
  };
}

function isMove(value: unknown): value is Move {
  return (
    isRecord(value) &&
    typeof value.after === "string" &&
    (value.before === null || typeof value.before === "string")
  );
}
