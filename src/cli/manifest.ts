import { createHash } from "node:crypto";

/** Lies beside what evencatch wrote, and says what that was. */
export const manifestName = "evencatch-manifest.json";

export type WritingCommand =
  | "report"
  | "template"
  | "plan"
  | "sheet"
  | "page"
  | "spreads"
  | "import";

/** A file as it was written: by which command, and the SHA-256 of its bytes. */
export interface ManifestEntry {
  readonly command: WritingCommand;
  readonly sha256: string;
}

/** Entries by name relative to the folder, with "/" between the parts. */
export type Manifest = Readonly<Record<string, ManifestEntry>>;

const kind = "evencatch-manifest";
const about =
  "What evencatch wrote into this folder. It writes over these files only, and only while they are unchanged.";

export function sha256Of(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}

/** Texts and pictures by name relative to the folder. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** Entries for files a command writes. */
export function entriesOf(command: WritingCommand, files: Files): Manifest {
  return Object.fromEntries(
    Object.entries(files).map(([name, content]) => [name, { command, sha256: sha256Of(content) }]),
  );
}

/** The manifest as text; the same entries give the same bytes, on every machine. */
export function manifestText(manifest: Manifest): string {
  const names = Object.keys(manifest).sort();
  const files = Object.fromEntries(
    names.map((name) => [
      name,
      { command: manifest[name]?.command, sha256: manifest[name]?.sha256 },
    ]),
  );
  return `${JSON.stringify({ kind, about, files }, null, 2)}\n`;
}

/** The entries of a manifest's text; null when it is none. Names that could lead out of the folder are left out. */
export function parseManifest(text: string): Manifest | null {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(parsed) || parsed.kind !== kind || !isObject(parsed.files)) return null;
  const entries = Object.entries(parsed.files).flatMap(([name, entry]) =>
    isInside(name) && isEntry(entry) ? [[name, entry] as const] : [],
  );
  return Object.fromEntries(entries);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isEntry(value: unknown): value is ManifestEntry {
  return isObject(value) && typeof value.command === "string" && typeof value.sha256 === "string";
}

export function isInside(name: string): boolean {
  return name.split("/").every((part) => part !== "" && !/^\.{1,2}$|[\\:]/.test(part));
}
