import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Metafile } from "esbuild";

const root = fileURLToPath(new URL("../../", import.meta.url));

/**
 * The licence texts of all packages in a bundle, each text once, under the packages that have it and whose they are. Where
 * lines break is not part of a text.
 */
export async function notices(metafile: Metafile): Promise<string> {
  const byText = new Map<string, string[]>();
  for (const folder of packageFolders(metafile)) {
    const { owners, text } = parted(await licenceText(folder));
    const head = [await nameAndVersion(folder), ...owners].join(", ");
    byText.set(text, [...(byText.get(text) ?? []), head]);
  }
  return [...byText].map(([text, heads]) => `${heads.join("\n")}\n\n${text}`).join("\n\n----\n\n");
}

// Not in capitals: "COPYRIGHT HOLDERS BE LIABLE" is a line of the text itself.
const ownersLine = /^Copyright .*/;

function parted(licence: string): { readonly owners: readonly string[]; readonly text: string } {
  const lines = licence.split("\n").map((line) => line.trim());
  const rest = lines.filter((line) => !ownersLine.test(line)).join(" ");
  return {
    owners: lines.filter((line) => ownersLine.test(line)),
    text: rest
      .replace(/\s+/g, " ")
      .replace(/^(The )?MIT License( \(MIT\))? /i, "The MIT License. ")
      .replace(/^(The )?ISC License( \(ISC\))? /i, "The ISC License. "),
  };
}

function packageFolders(metafile: Metafile): readonly string[] {
  const folders = Object.keys(metafile.inputs).flatMap((path) => {
    const folder = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0];
    return folder === undefined ? [] : [join(root, folder)];
  });
  return [...new Set(folders)].sort();
}

async function nameAndVersion(folder: string): Promise<string> {
  const { name, version } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
  return `${name} ${version}`;
}

async function licenceText(folder: string): Promise<string> {
  const file = (await readdir(folder)).find((name) => /^licen[cs]e/i.test(name));
  if (file !== undefined) {
    const text = await readFile(join(folder, file), "utf8");
    return text.replaceAll("*/", "* /").replaceAll("\r", "").trim();
  }
  const { license, author } = JSON.parse(await readFile(join(folder, "package.json"), "utf8"));
  return `${license}, ${typeof author === "string" ? author : (author?.name ?? "its authors")}`;
}
