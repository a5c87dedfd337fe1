import { useId } from "preact/hooks";

/** A text field under its name, with what stands in it unless something is typed, and why it is refused. */
export function Field({
  label,
  value,
  hint,
  error,
  decimal = false,
  change,
  commit,
}: {
  readonly label: string;
  readonly value: string;
  readonly hint?: string | undefined;
  readonly error?: string | null | undefined;
  readonly decimal?: boolean;
  readonly change?: (text: string) => void;
  /** When the person leaves the field or presses Enter. */
  readonly commit?: (text: string) => void;
}) {
  const id = useId();
  const told = error ?? hint;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        inputMode={decimal ? "decimal" : "text"}
        value={value}
        aria-invalid={error == null ? undefined : "true"}
        aria-describedby={told === undefined ? undefined : `${id}-told`}
        onInput={(event) => change?.(event.currentTarget.value)}
        onChange={(event) => commit?.(event.currentTarget.value)}
      />
      {told === undefined ? null : (
        <p id={`${id}-told`} class={error == null ? "hint" : "error"}>
          {told}
        </p>
      )}
    </div>
  );
}
