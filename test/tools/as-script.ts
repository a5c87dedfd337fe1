import { type ModuleExportName, parseSync } from "oxc-parser";

/**
 * A bundled module as a script that asks for others with `require` and gives `module.exports` what it exports: names become
 * constants, so that none is looked up through an object each time it is used, as it is where a bundler does the same.
 * Modules must not import one another in a circle.
 *
 * @param module  has no `export default`, no `export * from` and waits for nothing at its top
 */
export function asScript(module: string): string {
  const { program, module: parts } = parseSync("module.js", module);
  const imports = program.body.filter((node) => node.type === "ImportDeclaration");
  const exports = program.body.filter((node) => node.type === "ExportNamedDeclaration");
  const required = imports.flatMap(({ specifiers, source }) => {
    const call = `require(${source.raw})`;
    const names = specifiers.flatMap((one) =>
      one.type === "ImportSpecifier" ? [`${nameOf(one.imported)}:${one.local.name}`] : [],
    );
    const whole = specifiers.filter(({ type }) => type !== "ImportSpecifier");
    return [
      `const{${names.join()}}=${call};`,
      ...whole.map(({ local }) => `const ${local.name}=${call};`),
    ];
  });
  const exported = exports.flatMap(({ specifiers }) =>
    specifiers.map(({ exported, local }) => `${nameOf(exported)}:${nameOf(local)}`),
  );
  const edits: readonly Edit[] = [
    ...[...imports, ...exports].map(({ start, end }) => ({ start, end, by: "" })),
    ...parts.dynamicImports.map(({ start, end, moduleRequest }) => {
      const from = module.slice(moduleRequest.start, moduleRequest.end);
      return { start, end, by: `Promise.resolve().then(()=>require(${from}))` };
    }),
    ...parts.importMetas.map(({ start, end }) => ({ start, end, by: "here" })),
  ];
  return `"use strict";${required.join("")}${edited(module, edits)}module.exports={${exported.join()}};\n`;
}

function nameOf(name: ModuleExportName): string {
  return name.type === "Literal" ? JSON.stringify(name.value) : name.name;
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly by: string;
}

function edited(text: string, edits: readonly Edit[]): string {
  let result = "";
  let from = 0;
  for (const { start, end, by } of edits.toSorted((a, b) => a.start - b.start)) {
    result += text.slice(from, start) + by;
    from = end;
  }
  return result + text.slice(from);
}
