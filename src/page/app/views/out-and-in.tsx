import { useSignal } from "@preact/signals";
import { keyColumns } from "../../../data/column-kinds.ts";
import { checkTyped } from "../../../data/read-text.ts";
import { formatOf, unknownType } from "../../../data/source.ts";
import { fileName } from "../answer.ts";
import { cellsOf, csvOf } from "../cells.ts";
import { canShare, fileOf, saveFile, shareFiles } from "../files.ts";
import { close } from "../route.ts";
import type { Session } from "../session.ts";
import { Panel } from "./panel.tsx";
import { StorageNote } from "./storage-note.tsx";

/** Catches leave as the file that everything else reads, and come in from one. */
export function OutAndIn({ session }: { readonly session: Session }) {
  const words = session.words.value;
  const { page } = words;
  const refused = useSignal<string | null>(null);
  const { rows } = session.log.value;
  const catches = () => csvOf(rows);
  const setup = session.both.value;
  const setupText = () => `${JSON.stringify(setup?.file ?? {}, null, 2)}\n`;
  const files = () => [
    fileOf(fileName, catches(), "text/csv"),
    ...(setup === null ? [] : [fileOf("setup.json", setupText(), "application/json")]),
  ];
  const read = async (file: File) => {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const found = readFile(file.name, bytes, session);
    refused.value = found;
    if (found === null) close();
  };
  return (
    <Panel heading={page.log.heading} back={page.back}>
      <StorageNote session={session} />
      <div class="stack">
        <button
          type="button"
          class="strong"
          disabled={rows.length === 0}
          onClick={() => saveFile(fileName, catches(), "text/csv")}
        >
          {page.log.save}
        </button>
        {setup === null ? null : (
          <button
            type="button"
            onClick={() => saveFile("setup.json", setupText(), "application/json")}
          >
            {page.log.setup}
          </button>
        )}
        {rows.length > 0 && canShare(files()) ? (
          <button type="button" onClick={() => shareFiles(files())}>
            {page.log.share}
          </button>
        ) : null}
        <button type="button" disabled={rows.length === 0} onClick={() => print()}>
          {page.log.print}
        </button>
        <label class="file">
          <span>{page.log.read}</span>
          <input
            type="file"
            accept=".csv,.tsv,.txt"
            aria-describedby="read-told"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              event.currentTarget.value = "";
              if (file !== undefined) void read(file);
            }}
          />
        </label>
        <p id="read-told" class="hint">
          {page.log.readHint}
        </p>
        {refused.value === null ? null : (
          <p class="error" role="alert">
            {refused.value}
          </p>
        )}
        <button type="button" onClick={() => startFresh(session)}>
          {page.log.fresh}
        </button>
      </div>
      <Logs session={session} />
    </Panel>
  );
}

function startFresh(session: Session): void {
  session.startLog();
  close();
}

/** Reads a file into a log of its own, unless this one has no catches. Returns why it cannot be read; null: it was. */
function readFile(name: string, bytes: Uint8Array, session: Session): string | null {
  const { page, problems } = session.words.value;
  const format = formatOf(name);
  if (format === "xlsx" || format === "json") return page.log.noTable;
  if (format === null) return problems.ofFile(name, [unknownType(name)]);
  const read = checkTyped({ name, bytes });
  if (!read.ok) return problems.ofFile(name, read.issues);
  const { catches, massUnit } = read.value;
  const holdsSeveral = keyColumns.some((key) => new Set(catches.map((row) => row[key])).size > 1);
  if (holdsSeveral) return page.log.several;
  const action = {
    kind: "file-read",
    source: name,
    rows: catches.map((row) => cellsOf(row, massUnit)),
  } as const;
  if (session.log.peek().rows.length === 0) session.act(action);
  else session.startLog(action);
  return null;
}

function Logs({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  const others = session.logs.value.filter(({ id }) => id !== session.current.value).reverse();
  if (others.length === 0) return null;
  return (
    <section>
      <h2>{page.log.others}</h2>
      <div class="stack">
        {others.map(({ id, at, catches }) => (
          <button
            key={id}
            type="button"
            onClick={() => {
              session.openLog(id);
              close();
            }}
          >
            {page.logOf(at.slice(0, 16), catches)}
          </button>
        ))}
      </div>
    </section>
  );
}
