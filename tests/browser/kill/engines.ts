// Three engines on a profile of their own on the disk, started, used and killed as a whole.
import { spawn, type ChildProcess } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { launchChromium, launchFirefox, miniBrowser, noGraphics } from "../installed";
import { Site, type Answer } from "../site";
import { look, note, type Far, type Shown } from "./hand";

/** A running browser with the app open. */
export interface Running {
  note(tag: string, far: Far): Promise<void>;
  look(): Promise<Shown>;
  /** Ends every process of it with signal 9 and waits until none is left. */
  kill(): Promise<void>;
}

export type Engine = "chromium" | "firefox" | "webkit";

/** A browser's processes inherit this variable with its profile's folder, by which they are found. */
const MARK = "YEANLING_PROFILE";

export function start(engine: Engine, profile: string, site: Site): Promise<Running> {
  return engine === "webkit" ? startWebKit(profile, site) : startPuppet(engine, profile, site);
}

async function startPuppet(engine: "chromium" | "firefox", profile: string, site: Site): Promise<Running> {
  const launch = engine === "chromium" ? launchChromium : launchFirefox;
  const browser = await launch(profile, { [MARK]: profile, HOME: profile });
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  await page.goto(site.address, { waitUntil: "load" });
  return {
    note: (tag, far) => page.evaluate(note, tag, far),
    look: () => page.evaluate(look),
    kill: () => killAll(profile, browser.process()),
  };
}

/** WebKit keeps its storage only while it is not driven, so the page asks the site what to do and tells what came of it. */
async function startWebKit(profile: string, site: Site): Promise<Running> {
  const page = await site.file("index.html");
  const body = page.replace("</body>", '<script src="./drive.js"></script></body>');
  site.instead.set("index.html", { kind: "text/html", body });
  site.instead.set("drive.js", { kind: "text/javascript", body: `(${drive})(${note}, ${look});` });
  let task: Task = { number: 0 };
  let heard: (said: string, fault: string | null) => void = () => {};
  const json = (what: unknown): Answer => ({ kind: "application/json", body: JSON.stringify(what) });
  site.asked.set("drive/next", () => json(task));
  site.asked.set("drive/said", ({ searchParams: said }) => {
    if (said.get("number") === `${task.number}`) heard(said.get("said") ?? "null", said.get("fault"));
    return json(null);
  });
  const tell = (what: Omit<Task, "number">): Promise<unknown> =>
    new Promise((resolve, reject) => {
      heard = (said, fault) => (fault ? reject(new Error(fault)) : resolve(JSON.parse(said)));
      task = { ...what, number: task.number + 1 };
    });
  const env = {
    ...process.env,
    [MARK]: profile,
    HOME: profile,
    XDG_DATA_HOME: join(profile, "data"),
    XDG_CACHE_HOME: join(profile, "cache"),
    XDG_CONFIG_HOME: join(profile, "config"),
    ...noGraphics,
  };
  const browser = spawn(miniBrowser(), [site.address], { env, detached: true, stdio: "ignore" });
  return {
    note: async (tag, far) => void (await tell({ note: { tag, far } })),
    look: async () => (await tell({ look: true })) as Shown,
    kill: () => killAll(profile, browser),
  };
}

/** What the page is to do next; nothing new as long as the number stays. */
type Task = { number: number; note?: { tag: string; far: Far }; look?: true };

/** Runs in the page: asks what to do, does it, says what came of it. */
async function drive(noteIn: typeof note, lookIn: typeof look): Promise<void> {
  const ask = (path: string) => fetch(`./drive/${path}`, { cache: "no-store" });
  let done = 0;
  for (;;) {
    const task: Task | undefined = await ask("next").then((answer) => answer.json(), () => undefined);
    if (task && task.number > done) {
      done = task.number;
      const work = task.note ? noteIn(task.note.tag, task.note.far) : lookIn();
      const said = await work.then(
        (said) => `said=${encodeURIComponent(JSON.stringify(said ?? null))}`,
        (fault) => `fault=${encodeURIComponent(String(fault))}`,
      );
      await ask(`said?number=${done}&${said}`).catch(() => null);
    }
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

async function killAll(profile: string, browser: ChildProcess | null): Promise<void> {
  const group = browser?.pid;
  // The group first and at once; then what left it, such as helpers that report crashes, until nothing is left.
  if (group) send(-group);
  for (let left = processesOf(profile, group); left.length > 0; left = processesOf(profile, group)) {
    left.forEach(send);
    await sleep(10);
  }
}

function send(pid: number): void {
  try {
    process.kill(pid, "SIGKILL");
  } catch {
    // It is gone already.
  }
}

/**
 * Returns the living processes that carry the mark of this profile or are in the browser's group. Neither is enough:
 * Chromium's children write their command line over their variables, its crash reporter has a group of its own.
 */
function processesOf(profile: string, group: number | undefined): number[] {
  const belongs = (pid: string) => {
    try {
      const [state, , itsGroup] = readFileSync(`/proc/${pid}/stat`, "utf8").replace(/^.*\) /s, "").split(" ");
      if (state === "Z" || state === "X") return false;
      if (itsGroup === `${group}`) return true;
      return readFileSync(`/proc/${pid}/environ`, "utf8").split("\0").includes(`${MARK}=${profile}`);
    } catch {
      return false;
    }
  };
  return readdirSync("/proc").filter((name) => /^\d+$/.test(name)).filter(belongs).map(Number);
}
