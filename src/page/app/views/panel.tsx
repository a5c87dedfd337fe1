import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { close } from "../route.ts";

/** A part of the page that is opened over the drill: its heading takes the focus, and one button leads back. */
export function Panel({
  heading,
  back,
  children,
}: {
  readonly heading: string;
  readonly back: string;
  readonly children: ComponentChildren;
}) {
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => top.current?.focus({ preventScroll: true }), []);
  return (
    <main class="panel">
      <div class="panel-head">
        <button type="button" class="back" onClick={close}>
          <span aria-hidden="true">‹ </span>
          {back}
        </button>
        <h1 tabIndex={-1} ref={top}>
          {heading}
        </h1>
      </div>
      {children}
    </main>
  );
}
