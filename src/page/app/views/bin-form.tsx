import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { tidyText } from "../../../data/table.ts";
import type { PageBin } from "../log.ts";
import { close } from "../route.ts";
import type { Session } from "../session.ts";
import { Field } from "./field.tsx";
import { Panel } from "./panel.tsx";

/** A new bin, or the names and the next filling of one. */
export function BinForm({
  session,
  bin,
  first = false,
}: {
  readonly session: Session;
  readonly bin: PageBin | null;
  /** Asked on the drill itself, where there is no bin yet. */
  readonly first?: boolean;
}) {
  const { page } = session.words.value;
  const typed = useSignal({ bin: bin?.bin ?? "", product: bin?.product ?? "" });
  const error = useSignal<string | null>(null);
  const others = session.log.value.bins.filter((one) => one.bin !== bin?.bin);
  const checked = () => {
    const names = { bin: tidyText(typed.value.bin), product: tidyText(typed.value.product) };
    const taken = others.some((one) => one.bin.toLowerCase() === names.bin.toLowerCase());
    error.value =
      names.bin === "" || names.product === "" ? page.nameMissing : taken ? page.nameTaken : null;
    // Spelled as it is spelled already: the reader refuses one name in two spellings.
    const known = session.log.value.bins.find(
      ({ product }) => product.toLowerCase() === names.product.toLowerCase(),
    );
    return error.value === null ? { ...names, product: known?.product ?? names.product } : null;
  };
  const done = (name: string) => {
    session.tab.value = name;
    close();
  };
  const add = () => {
    const names = checked();
    if (names === null) return;
    session.act({ kind: "bin-added", ...names });
    done(names.bin);
  };
  const rename = (old: PageBin) => {
    const names = checked();
    if (names === null) return;
    if (names.bin !== old.bin || names.product !== old.product)
      session.act({ kind: "bin-renamed", bin: old.bin, product: old.product, to: names });
    done(names.bin);
  };
  const refill = (old: PageBin) => {
    const names = checked();
    if (names === null) return;
    session.act({ kind: "fill-started", bin: old.bin, product: names.product });
    done(old.bin);
  };
  const form = (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        if (bin === null) add();
        else rename(bin);
      }}
    >
      <Field
        label={page.binName}
        value={typed.value.bin}
        change={(text) => {
          typed.value = { ...typed.value, bin: text };
        }}
      />
      <Field
        label={page.product}
        value={typed.value.product}
        error={error.value}
        change={(text) => {
          typed.value = { ...typed.value, product: text };
        }}
      />
      <button type="submit" class="strong">
        {bin === null ? page.add : page.rename}
      </button>
      {bin === null ? null : (
        <button type="button" onClick={() => refill(bin)}>
          {page.newFillOf}
        </button>
      )}
    </form>
  );
  return first ? (
    <First heading={page.firstBin}>{form}</First>
  ) : (
    <Panel heading={bin === null ? page.addBin : page.ofBin} back={page.back}>
      {form}
    </Panel>
  );
}

function First({
  heading,
  children,
}: {
  readonly heading: string;
  readonly children: ComponentChildren;
}) {
  return (
    <section class="first">
      <h2>{heading}</h2>
      {children}
    </section>
  );
}
