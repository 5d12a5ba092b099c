// Times as a hand and an eye have them: from what the browser says was the press to the frame that shows its outcome.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect } from "../watching";

/** How much slower than this machine a cheap phone is taken to be. */
export const SLOWER = 4;

/** Returns the value that so many of a hundred do not pass. */
export function percentile(times: number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  const at = Math.ceil((share / 100) * sorted.length) - 1;
  return sorted[Math.max(at, 0)];
}

export const median = (times: number[]) => percentile(times, 50);

/** Prints a figure. */
export function print(name: string, value: number, unit = "ms"): void {
  console.log(`${name} ${value.toFixed(unit === "times" ? 2 : 1)} ${unit}`);
}

/** Lets the page's processor be so many times slower than this machine's. */
export async function slowDown(page: Page, rate: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate });
}

/** One press: milliseconds from it to the end of the app's own work, to the frame that shows it, and to "saved". */
export type Press = { worked?: number; painted?: number; saved?: number };

/** Makes the page time every press of a kind that changes the screen, until the page is loaded anew. */
export async function watchPresses(page: Page, kind: "click" | "keydown"): Promise<void> {
  await page.evaluate((kind) => {
    const presses: { at: number; press: Press; shown: boolean }[] = [];
    Object.assign(globalThis, { presses });
    const since = (at: number) => performance.now() - at;
    // A message is taken once what runs now is through: sent before a frame, it comes after that frame is painted.
    const afterwards = (then: () => void) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = then;
      port2.postMessage(0);
    };
    const onMain = (node: Node) => document.querySelector("main")?.contains(node) ?? false;
    const isSaved = (node: Node) => node instanceof Element && node.matches(".save-mark[data-state=saved]");
    addEventListener(
      kind,
      ({ timeStamp: at }) => {
        const one: (typeof presses)[number] = { at, press: {}, shown: false };
        presses.push(one);
        const frame = () =>
          requestAnimationFrame(() => {
            const { shown } = one;
            afterwards(() => (shown ? (one.press.painted = since(at)) : frame()));
          });
        afterwards(() => (one.press.worked = since(at)));
        frame();
      },
      true,
    );
    new MutationObserver((changes) => {
      const last = presses.at(-1);
      if (!last) return;
      last.shown ||= changes.some(({ target }) => onMain(target) && !target.parentElement?.closest(".save-mark"));
      const saved = changes.some(({ type, target }) => type === "attributes" && isSaved(target));
      if (saved) last.press.saved ??= since(last.at);
    }).observe(document, { subtree: true, childList: true, characterData: true, attributeFilter: ["data-state"] });
  }, kind);
}

/** Returns the presses so far and begins anew. */
export function takePresses(page: Page): Promise<Press[]> {
  return page.evaluate(() => {
    const { presses } = globalThis as unknown as { presses: { press: Press }[] };
    return presses.splice(0).map(({ press }) => press);
  });
}

/**
 * Returns how long a page takes that does nothing but change one word: what the browser, its frames and its input ask for
 * themselves at this rate, below which no app can be.
 */
export async function bare(page: Page, kind: "click" | "keydown", rate: number, presses = 20): Promise<number[]> {
  const other = await page.context().newPage();
  await other.setContent("<main><p>0</p><button>One more</button><input></main>");
  await other.evaluate((kind) => {
    let count = 0;
    const word = document.querySelector("p");
    addEventListener(kind, () => {
      count += 1;
      if (word) word.textContent = String(count);
    });
  }, kind);
  await slowDown(other, rate);
  await watchPresses(other, kind);
  await other.locator("input").focus();
  const times: number[] = [];
  for (let press = 0; press < presses; press += 1) {
    await (kind === "click" ? other.locator("button").tap() : other.keyboard.press("1"));
    await other.waitForTimeout(200);
    for (const { painted } of await takePresses(other)) times.push(painted ?? Infinity);
  }
  await other.close();
  return times;
}

/** Takes a book file in, as a hand does, and waits until it is on the disk. */
export async function fill(phone: Phone, book: string): Promise<void> {
  await phone.open("#/share");
  await phone.openFile(book);
  await phone.tap("Add");
  await expect(phone.page.getByText(/^Done\. .* added\.$/)).toBeVisible({ timeout: 30_000 });
  await expect(phone.page.locator(".save-mark")).toHaveAttribute("data-state", "saved", { timeout: 30_000 });
}

/** Lets the page keep hold of the app's wasm memory, which no one outside it sees; before the page is opened. */
export async function holdMemory(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { instantiate, instantiateStreaming } = WebAssembly;
    const hold = <T>(made: T): T => {
      const { exports } = (made as WebAssembly.WebAssemblyInstantiatedSource).instance ?? made;
      Object.assign(globalThis, { wasm: exports.memory });
      return made;
    };
    Object.assign(WebAssembly, {
      instantiate: async (...given: Parameters<typeof instantiate>) => hold(await instantiate(...given)),
      instantiateStreaming: async (...given: Parameters<typeof instantiateStreaming>) =>
        hold(await instantiateStreaming(...given)),
    });
  });
}

/**
 * Returns the MiB that the page holds after a collection of garbage: the heap of JavaScript, which counts the nodes'
 * wrappers but not the nodes, and the whole memory of the wasm, used or not: it never shrinks.
 */
export async function memory(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send("HeapProfiler.collectGarbage");
  await session.send("Performance.enable");
  const { metrics } = await session.send("Performance.getMetrics");
  const heap = metrics.find(({ name }) => name === "JSHeapUsedSize")?.value ?? NaN;
  const wasm = await page.evaluate(() => (globalThis as unknown as { wasm: WebAssembly.Memory }).wasm.buffer.byteLength);
  return (heap + wasm) / 1024 / 1024;
}
