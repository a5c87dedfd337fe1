import { signal } from "@preact/signals";

/** Which part of the page is open; "" is the drill itself. It stands in the address, so that a phone's back key closes it. */
export type Route =
  | { readonly is: "" | "settings" | "log" | "safety" | "bin" | "rename" }
  | { readonly is: "catch"; readonly row: string };

const plain = ["settings", "log", "safety", "bin", "rename"] as const;

function routeOf(hash: string): Route {
  const [, row] = /^#catch\/(.+)$/.exec(hash) ?? [];
  if (row !== undefined) return { is: "catch", row: decodeURIComponent(row) };
  return { is: plain.find((one) => hash === `#${one}`) ?? "" };
}

export const route = signal<Route>({ is: "" });

/** Follows the address from now on. */
export function followAddress(): void {
  const read = () => {
    route.value = routeOf(location.hash);
    scrollTo(0, 0);
  };
  addEventListener("hashchange", read);
  read();
}

export function goTo(to: Route): void {
  location.hash = to.is === "catch" ? `#catch/${encodeURIComponent(to.row)}` : `#${to.is}`;
}

/** Back to the drill. */
export function close(): void {
  goTo({ is: "" });
}
