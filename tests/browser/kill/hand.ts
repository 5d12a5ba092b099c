// What a hand does in the page, as functions that run inside it: any engine can be given their text.

/** What a restarted app shows. */
export type Shown = {
  /** The names of the Flock's rows. */
  rows: string[];
  /** Whether lines of the book could not be read. */
  unread: boolean;
  /** How many marks local storage still has, of one for each tick. */
  marks: number;
};

/** How far to wait: until the button is pressed, or until the tick stands. */
export type Far = "pressed" | "ticked";

/** Notes a ewe by her tag with the app's own buttons. At the tick it leaves a mark in local storage, and only there. */
export async function note(tag: string, far: Far): Promise<void> {
  const until = async <T>(find: () => T | null | undefined): Promise<T> => {
    for (const late = Date.now() + 10_000; Date.now() < late; ) {
      const found = find();
      if (found) return found;
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
    throw new Error(`${tag}: waited in vain for ${find}, on ${document.body.innerText}`);
  };
  const named = (kind: string, text: string) => () =>
    [...document.querySelectorAll<HTMLElement>(kind)].find((one) => one.textContent?.trim() === text);
  location.hash = "#/lambing";
  const label = await until(named("label", "Her tag"));
  const field = (label as HTMLLabelElement).control as HTMLInputElement;
  field.value = tag;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  (await until(named("button", `Add ewe ${tag}`))).click();
  if (far === "pressed") return;
  await until(named("h1", `Ewe ${tag} lambing`));
  await until(() => document.querySelector(".save-mark[data-state=saved]"));
  localStorage.setItem(`mark/${tag}`, "ticked");
}

/** Returns what the Flock shows once both copies of the book are open. */
export async function look(): Promise<Shown> {
  const there = async (find: () => unknown) => {
    for (const late = Date.now() + 10_000; !find(); ) {
      if (Date.now() > late) throw new Error(`waited in vain for ${find}, on ${document.body.innerText}`);
      await new Promise((resolve) => setTimeout(resolve, 2));
    }
  };
  location.hash = "#/flock";
  await there(() => document.querySelector("h1")?.textContent === "Flock");
  await there(() => document.querySelector(".save-mark[data-state=saved]"));
  // A long list comes in two frames: it is whole once it has stood for a while.
  const names = () => [...document.querySelectorAll(".row-name, .tile-name")].map((name) => name.textContent?.trim() ?? "");
  let rows = names();
  for (let since = Date.now(); Date.now() - since < 250; ) {
    await new Promise((resolve) => setTimeout(resolve, 20));
    if (names().length !== rows.length) [rows, since] = [names(), Date.now()];
  }
  const marks = Object.keys(localStorage).filter((key) => key.startsWith("mark/")).length;
  return { rows, unread: document.body.textContent?.includes("could not be read") ?? false, marks };
}
