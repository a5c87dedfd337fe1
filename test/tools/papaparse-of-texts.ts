import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseSync, Visitor } from "oxc-parser";

/**
 * Ways to read that need a network, a file, a stream or a worker, pieces, the guess of a separator, and rows made objects with
 * numbers in them: the page reads texts that it has, whose separator is known by then, and takes cells as they stand.
 */
const unused = [
  "parse",
  "CsvToJson",
  "ChunkStreamer",
  "StringStreamer",
  "ParserHandle",
  "NetworkStreamer",
  "FileStreamer",
  "ReadableStreamStreamer",
  "DuplexStreamStreamer",
  "newWorker",
  "getWorkerBlob",
  "mainThreadReceivedMessage",
  "workerThreadReceivedMessage",
  "completeWorker",
  "notImplemented",
  "guessDelimiter",
  "fillHeaderFields",
  "processRow",
  "parseDynamic",
  "shouldApplyDynamicTyping",
  "testFloat",
];

/** What reads a whole text once all that stands around it is gone. */
const reading =
  "Papa.parse = (text, config) => new Parser(config).parse(stripBom(text), 0, false);";

/** The reader and writer of CSV without what nobody uses there; for a text it does the same. */
export function papaparseOfTexts(): string {
  const path = fileURLToPath(import.meta.resolve("papaparse"));
  const code = readFileSync(path, "utf8");
  const cuts: { readonly start: number; readonly end: number }[] = [];
  new Visitor({
    FunctionDeclaration: ({ id, start, end }) => {
      if (id !== null && unused.includes(id.name)) cuts.push({ start, end });
    },
    ExpressionStatement: ({ start, end }) => {
      const isSetUp = unused.some((name) =>
        new RegExp(`^(Papa\\.)?${name}(\\.prototype(\\.constructor)?)? = `).test(
          code.slice(start, end),
        ),
      );
      if (isSetUp) cuts.push({ start, end });
    },
  }).visit(parseSync(path, code).program);
  const outer = cuts
    .filter((cut) => !cuts.some((other) => other.start < cut.start && cut.end < other.end))
    .sort((a, b) => a.start - b.start);
  if (outer.length < unused.length) throw new Error("papaparse is not put together as it was.");
  const kept = outer.map(({ start }, i) => code.slice(outer[i - 1]?.end ?? 0, start));
  // Empty statements stand where a condition wants one.
  return [...kept, code.slice(outer.at(-1)?.end ?? 0)]
    .join(";")
    .replace("Papa.unparse = JsonToCsv;", (writing) => `${writing} ${reading}`);
}
