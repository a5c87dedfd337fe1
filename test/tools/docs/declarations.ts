import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { compiler, root } from "../../support/compiler.ts";

/** Has the compiler write the declarations of src into a folder that exists for as long as `use` needs it. */
export async function withDeclarations<T>(use: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "evencatch-declarations-"));
  const project = join(root, "tsconfig.build.json");
  try {
    await new Promise<void>((resolve, reject) => {
      const args = [compiler, "-p", project, "--emitDeclarationOnly", "--outDir", folder];
      // An error of types elsewhere is for `npm run check` to tell; declarations are written all the same.
      execFile(process.execPath, args, (error, stdout) =>
        existsSync(join(folder, "index.d.ts"))
          ? resolve()
          : reject(new Error(stdout, { cause: error })),
      );
    });
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
