import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";

/** A server of its own on this machine, gone when it is stopped. */
export interface Server {
  readonly port: number;
  readonly query: (sql: string) => Promise<readonly Readonly<Record<string, unknown>>[]>;
  readonly stop: () => Promise<void>;
}

const debian = "/usr/lib/postgresql";

/** Where the programs of the newest PostgreSQL are; null: not installed. */
export function postgresPrograms(): string | null {
  if (!existsSync(debian)) return null;
  const newest = readdirSync(debian).sort((a, b) => Number(b) - Number(a))[0];
  const programs = join(debian, newest ?? "", "bin");
  return existsSync(join(programs, "postgres")) ? programs : null;
}

/** The server refuses to run as root, and Debian's package brings a user for it. */
function user(): { readonly uid?: number; readonly gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (flag: string) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
  return { uid: id("-u"), gid: id("-g") };
}

export async function startPostgres(programs: string): Promise<Server> {
  const folder = mkdtempSync(join(tmpdir(), "evencatch-postgres-"));
  const as = user();
  if (as.uid !== undefined && as.gid !== undefined) chownSync(folder, as.uid, as.gid);
  const data = join(folder, "data");
  execFileSync(
    join(programs, "initdb"),
    ["-D", data, "-U", "evencatch", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync"],
    { ...as, cwd: folder, stdio: "ignore" },
  );
  const port = await freePort();
  const settings = ["listen_addresses=127.0.0.1", "fsync=off", "shared_buffers=32MB"];
  const server = spawn(
    join(programs, "postgres"),
    ["-D", data, "-p", String(port), "-k", folder, ...settings.flatMap((one) => ["-c", one])],
    { ...as, cwd: folder, stdio: "ignore" },
  );
  const client = await connected(port);
  return {
    port,
    query: async (sql) => (await client.query(sql)).rows,
    stop: async () => {
      await client.end();
      await ended(server);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function freePort(): Promise<number> {
  return new Promise((fulfil, reject) => {
    const probe = createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      const port = typeof address === "object" && address !== null ? address.port : 0;
      probe.close(() => fulfil(port));
    });
  });
}

async function connected(port: number): Promise<Client> {
  for (let tries = 0; ; tries++) {
    const client = new Client({ host: "127.0.0.1", port, user: "evencatch", database: "postgres" });
    try {
      await client.connect();
      return client;
    } catch (error) {
      if (tries > 200) throw error;
      await new Promise((fulfil) => setTimeout(fulfil, 100));
    }
  }
}

function ended(server: ChildProcess): Promise<void> {
  return new Promise((fulfil) => {
    server.once("exit", () => fulfil());
    server.kill("SIGINT");
  });
}
