import { execFile } from "node:child_process";
import { cp, mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { root } from "../support/compiler.ts";

const run = promisify(execFile);

/** The package as a stranger has it: packed, and installed from there into a project of their own. */
export interface Installed {
  /** Folder of that project. */
  readonly project: string;
  readonly tarball: string;
  /** The package's folder below node_modules. */
  readonly home: string;
}

/** What keeps npm from installing although nothing is wrong with the package. */
const unreachable =
  /\b(?:ENOTFOUND|ENOTCACHED|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH)\b/;

/**
 * Builds and packs the package as it would be published, and installs it with its dependencies into an empty project in
 * a folder of the system's. What npm has in its cache is not downloaded again.
 *
 * @returns the reason, where no package registry can be reached
 */
export async function installPacked(): Promise<Installed | string> {
  const folder = await mkdtemp(join(tmpdir(), "evencatch-package-"));
  try {
    await npm(root, "pack", "--pack-destination", folder);
    const name = (await readdir(folder)).find((file) => file.endsWith(".tgz")) ?? "none";
    const [tarball, project] = [join(folder, name), join(folder, "project")];
    await mkdir(project);
    await writeFile(
      join(project, "package.json"),
      JSON.stringify({ name: "a-project", version: "1.0.0", private: true, type: "module" }),
    );
    await npm(project, "install", "--prefer-offline", "--no-audit", "--no-fund", tarball);
    await cp(join(root, "test", "fixtures", "package"), project, { recursive: true });
    return { project, tarball, home: join(project, "node_modules", "evencatch") };
  } catch (error) {
    await rm(folder, { recursive: true });
    const { message, stderr = "" } = error as Error & { readonly stderr?: string };
    if (!unreachable.test(stderr)) throw error;
    return `no package registry can be reached: ${message.split("\n")[0]}`;
  }
}

/** Removes what `installPacked` made. */
export function remove({ project }: Installed): Promise<void> {
  return rm(join(project, ".."), { recursive: true, force: true });
}

/** As from a shell of its own: npm tells the scripts it runs about their package, and that is not this one's. */
export function npm(cwd: string, ...args: readonly string[]): Promise<{ readonly stdout: string }> {
  const env = Object.entries(process.env).filter(
    ([name]) => !/^npm_(?:lifecycle|package|command|config_local_prefix)/.test(name),
  );
  return run("npm", args, { cwd, env: Object.fromEntries(env), maxBuffer: 2 ** 26 });
}
