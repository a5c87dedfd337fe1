import type { ComponentChildren } from "preact";
import { route } from "../route.ts";
import type { Session } from "../session.ts";
import { Answer, Beneath } from "./answer.tsx";
import { Bar } from "./bar.tsx";
import { BinForm } from "./bin-form.tsx";
import { CatchForm } from "./catch-form.tsx";
import { Catches } from "./catches.tsx";
import { Curve } from "./curve.tsx";
import { Entry } from "./entry.tsx";
import { OutAndIn } from "./out-and-in.tsx";
import { Safety, SafetyStrip } from "./safety.tsx";
import { Said } from "./said.tsx";
import { Settings } from "./settings.tsx";
import { Sheet } from "./sheet.tsx";
import { StorageNote } from "./storage-note.tsx";
import { Tabs } from "./tabs.tsx";

/** The page: the drill, or the part of it that is open, and the sheet that is printed. */
export function Page({ session }: { readonly session: Session }) {
  return (
    <>
      <div class="screen">
        <Open session={session} />
      </div>
      <Sheet session={session} />
    </>
  );
}

function Open({ session }: { readonly session: Session }) {
  const open = route.value;
  switch (open.is) {
    case "settings":
      return <Settings session={session} />;
    case "log":
      return <OutAndIn session={session} />;
    case "safety":
      return <Safety session={session} />;
    case "bin":
      return <BinForm key="new" session={session} bin={null} />;
    case "rename":
      return <BinForm key="old" session={session} bin={session.bin.value?.bin ?? null} />;
    case "catch":
      return <CatchForm key={open.row} session={session} row={open.row} />;
    default:
      return <Drill session={session} />;
  }
}

function Drill({ session }: { readonly session: Session }) {
  const { page } = session.words.value;
  if (session.storage.value === "opening")
    return (
      <Main session={session}>
        <p class="quiet">{page.storage.opening}</p>
      </Main>
    );
  const answer = session.bin.value;
  if (answer === null)
    return (
      <Main session={session}>
        <StorageNote session={session} />
        <BinForm session={session} bin={null} first />
      </Main>
    );
  return (
    <Main session={session}>
      <Tabs session={session} />
      {session.issues.value.length === 0 ? null : (
        <p class="error" role="alert">
          {session.issues.value.map((issue) => session.words.value.problems.text(issue)).join(" ")}
        </p>
      )}
      <div class="columns">
        <div class="hand">
          <Answer session={session} answer={answer} />
          <Entry session={session} answer={answer} />
          <Beneath session={session} answer={answer} />
          <Catches session={session} answer={answer} />
        </div>
        <div class="eye">
          <Behind session={session} />
          <StorageNote session={session} />
        </div>
      </div>
    </Main>
  );
}

/** Drawn when the answer is on the screen. */
function Behind({ session }: { readonly session: Session }) {
  const said = session.behind.value;
  if (said === null) return null;
  return (
    <>
      <Curve session={session} answer={said.answer} />
      <Said session={session} said={said} />
    </>
  );
}

function Main({
  session,
  children,
}: {
  readonly session: Session;
  readonly children: ComponentChildren;
}) {
  const { page } = session.words.value;
  return (
    <>
      <header>
        <h1 class="unseen">{page.title}</h1>
        <SafetyStrip session={session} />
      </header>
      <main>{children}</main>
      <Bar session={session} />
    </>
  );
}
