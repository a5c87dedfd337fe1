import { mkdir, writeFile } from "node:fs/promises";
import { basename, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build, type Metafile, type Plugin, transform } from "esbuild";
import { minifySync } from "rolldown/utils";
import { at } from "../../src/errors/at.ts";
import { pageTopics } from "../../src/wording/words.ts";
import { idbWithoutCursors } from "./idb-without-cursors.ts";
import { withoutNeverAsked } from "./never-asked.ts";
import { notices } from "./notices.ts";
import { papaparseOfTexts } from "./papaparse-of-texts.ts";
import { statisticsAtRest } from "./statistics-at-rest.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Where each language stands; the page carries one. */
const languages = {
  en: "./src/wording/en/english.ts",
  de: "./src/wording/de/german.ts",
} as const;

type PageTag = keyof typeof languages;

/**
 * Errors speak English by themselves. On a page in another language nobody reads that, so they speak its words there, which
 * have the same shape, and the page does not carry both.
 */
const ownProblems = (language: PageTag): Plugin => ({
  name: "problems in the language of the page",
  setup: ({ onResolve }) => {
    if (language === "en") return;
    onResolve({ filter: /\/en\/problems(-option)?\.ts$/ }, ({ path }) => ({
      path: join(root, "src", "wording", language, basename(path)),
    }));
  },
});

const readsTexts: Plugin = {
  name: "no streams, files and workers to read from",
  setup: ({ onLoad }) => {
    onLoad({ filter: /papaparse(\.min)?\.js$/ }, () => ({ contents: papaparseOfTexts() }));
  },
};

const computesOnly: Plugin = {
  name: "nothing that statistics do when they are loaded",
  setup: ({ onLoad }) => {
    onLoad({ filter: /simple-statistics\.m?js$/ }, () => ({ contents: statisticsAtRest() }));
  },
};

const storesOnly: Plugin = {
  name: "no loops over what is stored",
  setup: ({ onLoad }) => {
    onLoad({ filter: /idb[\\/]build[\\/]index\.js$/ }, () => ({ contents: idbWithoutCursors() }));
  },
};

export interface BundledPage {
  readonly code: string;
  readonly metafile: Metafile;
}

/**
 * The page as a module in plain letters, without the words that nothing in it asks for.
 *
 * @param besides  further lines of the module that starts it
 */
export async function pageModule(language: PageTag, besides = "") {
  const topics = pageTopics.join(", ");
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    stdin: {
      // By name, so that what is not spoken here is left behind.
      contents: `import { start } from "./src/page/app/start.tsx";
import { ${topics} } from "${languages[language]}";
const language = { ${topics} };
start(language);
${besides}`,
      resolveDir: root,
      loader: "ts",
    },
    bundle: true,
    format: "esm",
    platform: "browser",
    target: "es2022",
    // Notices are gathered from the packages themselves; few carry them in their code.
    legalComments: "none",
    plugins: [ownProblems(language), readsTexts, computesOnly, storesOnly],
    charset: "utf8",
    write: false,
    metafile: true,
    logLevel: "silent",
  });
  return { ...withoutNeverAsked(at(outputFiles, 0).text), metafile };
}

/** The page at the drill with the words of one language, opening with the licences of all it contains. */
export async function bundlePage(language: PageTag): Promise<BundledPage> {
  const { code, metafile } = await pageModule(language);
  return { code: `/*\n${await notices(metafile)}\n*/\n${await minified(code)}`, metafile };
}

/** A second minifier saves three parts in a hundred of what a phone loads. */
async function minified(module: string): Promise<string> {
  const once = await transform(module, {
    minify: true,
    treeShaking: true,
    format: "iife",
    target: "es2022",
    charset: "utf8",
  });
  const { code, errors } = minifySync("page.js", once.code, {
    compress: { target: "es2022" },
    mangle: true,
  });
  if (errors.length > 0) throw new Error(`The page cannot be minified: ${String(errors[0])}`);
  return code;
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
