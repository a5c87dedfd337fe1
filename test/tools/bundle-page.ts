import { mkdir, writeFile } from "node:fs/promises";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Metafile, type Plugin } from "esbuild";
import { minifySync } from "rolldown/utils";
import { at } from "../../src/errors/at.ts";
import { pageTopics } from "../../src/wording/words.ts";
import { notices } from "./notices.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Where each language stands; the page carries one. */
const languages = {
  en: "./src/wording/en/english.ts",
  de: "./src/wording/de/german.ts",
} as const;

/**
 * Errors speak English by themselves. On a page in another language nobody reads that, so they speak its words there, which
 * have the same shape, and the page does not carry both.
 */
const ownProblems = (language: keyof typeof languages): Plugin => ({
  name: "problems in the language of the page",
  setup: ({ onResolve }) => {
    if (language === "en") return;
    onResolve({ filter: /\/en\/problems\.ts$/ }, () => ({
      path: join(root, "src", "wording", language, "problems.ts"),
    }));
  },
});

/** The page compares no products and reads no setup file, so it need not speak of what is found in either. */
const neverAsked: Plugin = {
  name: "no words about what is never asked",
  setup: ({ onLoad }) => {
    onLoad({ filter: /wording\/(en|de)\/cautions-products\.ts$/ }, () => ({
      contents: "export const cautionsProducts = {};",
    }));
    onLoad({ filter: /sayings\/cautions-products\.ts$/ }, () => ({
      contents: "export const cautionsProductsSayings = () => ({});",
    }));
    onLoad({ filter: /(errors\/en|wording\/de)\/problems-setup\.ts$/ }, () => ({
      contents: "export const setupProblems = {};",
    }));
  },
};

export interface BundledPage {
  readonly code: string;
  readonly metafile: Metafile;
}

/** The page at the drill with the words of one language, opening with the licences of all it contains. */
export async function bundlePage(language: keyof typeof languages): Promise<BundledPage> {
  const topics = pageTopics.join(", ");
  const result = await build({
    absWorkingDir: root,
    stdin: {
      // By name, so that what is not spoken here is left behind.
      contents: `import { start } from "./src/page/app/start.tsx";
import { ${topics} } from "${languages[language]}";
start({ ${topics} });`,
      resolveDir: root,
      loader: "ts",
    },
    bundle: true,
    minify: true,
    format: "iife",
    platform: "browser",
    target: "es2022",
    // Notices are gathered from the packages themselves; few carry them in their code.
    legalComments: "none",
    plugins: [ownProblems(language), neverAsked],
    charset: "utf8",
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  const { metafile } = result;
  // A second minifier saves three parts in a hundred of what a phone loads.
  const { code, errors } = minifySync("page.js", at(result.outputFiles, 0).text, {
    compress: { target: "es2022" },
    mangle: true,
  });
  if (errors.length > 0) throw new Error(`The page cannot be minified: ${String(errors[0])}`);
  return { code: `/*\n${await notices(metafile)}\n*/\n${code}`, metafile };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(root, "dist", "page");
  await mkdir(folder, { recursive: true });
  for (const language of ["en", "de"] as const) {
    const { code } = await bundlePage(language);
    const target = join(folder, `runtime-${language}.txt`);
    await writeFile(target, code);
    console.log(`${relative(root, target)}  ${(code.length / 1024).toFixed(0)} kB`);
  }
}
