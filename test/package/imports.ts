import { readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { parseSync } from "oxc-parser";

/** The packages that a compiled file, or a file of declarations, asks for by name. */
export function packagesOf(path: string): readonly string[] {
  const text = readFileSync(path, "utf8");
  const { module } = parseSync(path, text);
  const from = [
    ...module.staticImports.map(({ moduleRequest }) => moduleRequest.value),
    ...module.staticExports.flatMap(({ entries }) =>
      entries.map(({ moduleRequest }) => moduleRequest?.value ?? ""),
    ),
    // Called in code, or within a type.
    ...[...text.matchAll(/\b(?:import|require)\("([^"]+)"\)/g)].map(([, request = ""]) => request),
  ];
  const outside = from.filter((request) => !/^\.|^$/.test(request) && !isBuiltin(request));
  return [
    ...new Set(outside.map((request) => /^(?:@[^/]+\/)?[^/]+/.exec(request)?.[0] ?? request)),
  ];
}
