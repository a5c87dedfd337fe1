import type { Session } from "../session.ts";

/** How safe the catches are; loud only where they are not. */
export function StorageNote({ session }: { readonly session: Session }) {
  const { storage: say } = session.words.value.page;
  switch (session.storage.value) {
    case "denied":
      return (
        <p class="warning" role="alert">
          {location.protocol === "file:" ? say.fromDisk : say.denied}
        </p>
      );
    case "full":
      return (
        <p class="warning" role="alert">
          {say.full}
        </p>
      );
    case "kept":
      return <p class="quiet">{say.kept}</p>;
    case "may-go":
      return <p class="quiet">{say.mayGo}</p>;
    default:
      return null;
  }
}
