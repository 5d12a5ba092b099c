// Three engines on a profile of their own on the disk, started, used and killed as a whole.
import { spawn, type ChildProcess } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import puppeteer, { type Browser, type Page } from "puppeteer-core";
import { miniBrowser, noGraphics } from "../screen";
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
  const env = { ...process.env, [MARK]: profile, HOME: profile };
  const browser: Browser =
    engine === "chromium"
      ? await puppeteer.launch({
          executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
          args: ["--no-sandbox", "--no-first-run", "--disable-background-networking", "--disable-component-update"],
          userDataDir: profile,
          env,
        })
      : await puppeteer.launch({
          browser: "firefox",
          executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
          userDataDir: profile,
          env,
        });
  const page: Page = (await browser.pages())[0] ?? (await browser.newPage());
  await page.goto(site.address, { waitUntil: "load" });
  return {
    note: (tag, far) => page.evaluate(note, tag, far),
    look: () => page.evaluate(look),
    kill: () => killAll(profile, browser.process()),
  };
}

/** WebKit keeps its storage only without automation, so the page asks the site what to do and tells it what it saw. */
async function startWebKit(profile: string, site: Site): Promise<Running> {
  const page = await site.file("index.html");
  site.instead.set("index.html", { kind: "text/html", body: page.replace("</body>", '<script src="./drive.js"></script></body>') });
  site.instead.set("drive.js", { kind: "text/javascript", body: `(${drive})(${note}, ${look});` });
  let next: Record<string, unknown> = {};
  let number = Date.now();
  let heard: (said: string, fault: string | null) => void = () => {};
  const json = (what: unknown): Answer => ({ kind: "application/json", body: JSON.stringify(what) });
  site.asked.set("drive/next", () => json(next));
  site.asked.set("drive/said", (address) => {
    if (address.searchParams.get("number") === `${number}`) heard(address.searchParams.get("said") ?? "null", address.searchParams.get("fault"));
    return json(null);
  });
  const tell = (what: Record<string, unknown>): Promise<unknown> =>
    new Promise((resolve, reject) => {
      heard = (said, fault) => (fault ? reject(new Error(fault)) : resolve(JSON.parse(said)));
      number += 1;
      next = { ...what, number };
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
    note: async (tag, far) => void (await tell({ note: tag, far })),
    look: async () => (await tell({ look: true })) as Shown,
    kill: () => killAll(profile, browser),
  };
}

/** Runs in the page: asks what to do, does it, says what came of it. */
async function drive(noteIn: typeof note, lookIn: typeof look): Promise<void> {
  let done = 0;
  for (;;) {
    try {
      const task = await (await fetch("./drive/next", { cache: "no-store" })).json();
      if (task.number > done) {
        done = task.number;
        const said = task.look ? await lookIn() : await noteIn(task.note, task.far);
        await fetch(`./drive/said?number=${done}&said=${encodeURIComponent(JSON.stringify(said ?? null))}`, { cache: "no-store" });
      }
    } catch (error) {
      // The site may be gone; what the page waited for in vain is said there.
      if (done) await fetch(`./drive/said?number=${done}&fault=${encodeURIComponent(String(error))}`).catch(() => null);
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
