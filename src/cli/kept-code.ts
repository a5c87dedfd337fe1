import { accessSync, constants, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { deserialize, serialize } from "node:v8";
import { Script } from "node:vm";
import { crc32 } from "node:zlib";

/** Loads scripts, with what a process before this one had compiled of them. */
export interface CodeLoader {
  /** What the script at this path exports. */
  load(path: string): unknown;
  /** Keeps what is compiled by now for the next process, where there is something new and the place can be written to. */
  keep(): void;
}

/** What is kept of one script: the checksum of its source, and what the engine made of it. */
interface Kept {
  readonly source: number;
  readonly code: Buffer;
}

/** The script as it runs here, and whether the engine had to compile it. */
interface Running {
  readonly source: number;
  readonly script: Script;
  readonly fresh: boolean;
}

type Require = (name: string) => unknown;
type Body = (
  exports: object,
  require: Require,
  module: { exports: unknown },
  here: { readonly url: string },
) => void;

/**
 * A loader of scripts that ask for one another with `require`, by paths that begin with a dot. Half of the time of a short
 * answer goes into compiling, and what Node can keep of that by itself it keeps from version 22 on.
 *
 * @param keptIn   the file for it. Compiled code is believed without another look, so that it must stand where nobody may
 *                 write who could not change the scripts themselves
 * @param outside  finds what is asked for by name
 */
export function codeLoader(keptIn: string, outside: Require): CodeLoader {
  const kept = readKept(keptIn);
  // What is kept may be moved together with the scripts.
  const nameOf = (path: string) => relative(dirname(keptIn), path);
  const running = new Map<string, Running>();
  const modules = new Map<string, { exports: unknown }>();

  function load(path: string): unknown {
    const known = modules.get(path);
    if (known !== undefined) return known.exports;
    const module = { exports: {} };
    modules.set(path, module);
    const require: Require = (name) =>
      name.startsWith(".") ? load(join(dirname(path), name)) : outside(name);
    const one = compiled(path, kept.get(nameOf(path)));
    running.set(path, one);
    const body: Body = one.script.runInThisContext();
    body(module.exports, require, module, { url: pathToFileURL(path).href });
    return module.exports;
  }

  function keep(): void {
    const all = [...running];
    if (!all.some(([, { fresh }]) => fresh)) return;
    writeKept(keptIn, () => {
      const now = all.map(([path, { source, script }]): [string, Kept] => [
        nameOf(path),
        { source, code: script.createCachedData() },
      ]);
      return new Map([...kept, ...now]);
    });
  }

  return { load, keep };
}

function compiled(path: string, kept: Kept | undefined): Running {
  const text = readFileSync(path, "utf8");
  const source = crc32(text);
  const known = kept?.source === source ? { cachedData: kept.code } : {};
  const script = new Script(
    `(function(exports,require,module,here){${path.endsWith(".cjs") ? text : asBody(text)}\n})`,
    { ...known, filename: path },
  );
  return { source, script, fresh: script.cachedDataRejected !== false };
}

/**
 * A bundled module as the body of a function: packages that the library shares are modules. The bundler writes what one
 * imports before everything else and what it exports behind.
 */
function asBody(module: string): string {
  const head = /^(?:import(?:\{[^}]*\}from)?"[^"]*";)*/.exec(module)?.[0] ?? "";
  const tail = module.lastIndexOf("export{");
  const imports = head.replace(
    /import(?:\{([^}]*)\}from)?("[^"]*");/g,
    (_, names: string | undefined, path: string) =>
      `const{${(names ?? "").replaceAll(" as ", ":")}}=require(${path});`,
  );
  const names = /\{([^}]*)\}/.exec(module.slice(tail))?.[1] ?? "";
  const exports = names.replace(/([^,\s]+) as ([^,\s]+)/g, "$2:$1");
  return `"use strict";${imports}${module.slice(head.length, tail)}module.exports={${exports}};`;
}

/** The checksum stands first: the engine of a release believes what it is given. */
function readKept(path: string): ReadonlyMap<string, Kept> {
  try {
    const bytes = readFileSync(path);
    const body = bytes.subarray(4);
    return bytes.readUInt32LE() === crc32(body) ? deserialize(body) : new Map();
  } catch {
    return new Map();
  }
}

/**
 * Whole or not at all, and nothing is said where it cannot be: the next process compiles again.
 *
 * @param made  asked for where it can be written, for it takes as long as compiling
 */
function writeKept(path: string, made: () => ReadonlyMap<string, Kept>): void {
  const folder = dirname(path);
  const unfinished = `${path}.${process.pid}.tmp`;
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
    const body = serialize(made());
    const sum = Buffer.alloc(4);
    sum.writeUInt32LE(crc32(body));
    writeFileSync(unfinished, Buffer.concat([sum, body]));
    renameSync(unfinished, path);
  } catch {
    // As before.
  }
}
