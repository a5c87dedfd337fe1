/** The box that follows the pointer and shows what vega reports for the mark beneath it. */
export interface Hint {
  show(value: unknown, x: number, y: number): void;
  hide(): void;
}

const distance = 14;

/**
 * Vega's own hint is a `title` attribute, slow and plain. This one is a positioned box: text goes in as text
 * nodes, and the position through the style object, which a policy without inline styles allows.
 */
export function createHint(document: Document): Hint {
  const box = document.createElement("div");
  box.className = "hint";
  box.hidden = true;
  document.body.append(box);
  const hide = (): void => {
    box.hidden = true;
  };
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") hide();
  });
  return {
    hide,
    show(value, x, y) {
      box.replaceChildren(...rows(document, value));
      box.hidden = false;
      place(box, x, y);
    },
  };
}

function rows(document: Document, value: unknown): Node[] {
  if (typeof value !== "object" || value === null) return [document.createTextNode(String(value))];
  return Object.entries(value).map(([name, shown]) => {
    const row = document.createElement("div");
    for (const text of [name, String(shown)]) {
      const part = document.createElement("span");
      part.textContent = text;
      row.append(part);
    }
    return row;
  });
}

/** Beside the pointer, turned to the other side where it would leave the window. */
function place(box: HTMLElement, x: number, y: number): void {
  const { innerWidth, innerHeight } = window;
  const { width, height } = box.getBoundingClientRect();
  const left = x + distance + width > innerWidth ? x - distance - width : x + distance;
  const top = y + distance + height > innerHeight ? y - distance - height : y + distance;
  box.style.left = `${Math.max(4, left)}px`;
  box.style.top = `${Math.max(4, top)}px`;
}
