import type { PageWords } from "../../../wording/words.ts";

const rows = [
  ["7", "8", "9"],
  ["4", "5", "6"],
  ["1", "2", "3"],
] as const;

/** Keys for a finger in a glove, in place of the device's. */
export function Keys({
  words: { page, format },
  press,
  erase,
}: {
  readonly words: PageWords;
  readonly press: (key: string) => void;
  readonly erase: () => void;
}) {
  // As the reader writes it; both marks are understood.
  const mark = format.plain(1.5).replaceAll(/\d/g, "");
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
