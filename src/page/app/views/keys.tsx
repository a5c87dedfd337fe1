import type { PageWords } from "../../../wording/words.ts";

const rows = [
  ["7", "8", "9"],
  ["4", "5", "6"],
  ["1", "2", "3"],
] as const;

/** Keys for a finger in a glove, in place of the device's. */
export function Keys({
  page,
  mark,
  press,
  erase,
}: {
  readonly page: PageWords["page"];
  /** Decimal mark of the reader; both are understood. */
  readonly mark: string;
  readonly press: (key: string) => void;
  readonly erase: () => void;
}) {
  const key = (text: string, name = text) => (
    <button
      key={text}
      type="button"
      aria-label={name}
      // The field keeps the focus, so that what is pressed is seen where it goes.
      onPointerDown={(event) => event.preventDefault()}
      onClick={() => press(text)}
    >
      {text}
    </button>
  );
  return (
    <div class="keys">
      {rows.flat().map((digit) => key(digit))}
      {key(mark, page.key.decimal)}
      {key("0")}
      <button
        type="button"
        class="erase"
        aria-label={page.key.erase}
        onPointerDown={(event) => event.preventDefault()}
        onClick={erase}
      >
        ⌫
      </button>
      <button type="submit" class="strong">
        {page.addCatch}
      </button>
    </div>
  );
}
