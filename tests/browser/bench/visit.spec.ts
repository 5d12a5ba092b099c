// How long a first visit takes on a slow phone far from a mast: from its navigation to the first screen.
import type { Page } from "@playwright/test";
import { Site } from "../site";
import { expect, test } from "../watching";
import { median, print, SLOWER, slowDown } from "./stopwatch";

/** How often it is visited, each time by a browser that knows nothing. */
const VISITS = 5;

/** Slow 4G as it is usually taken: bits a second, and milliseconds there and back. */
const SLOW_4G = { bits: 1_600_000, away: 150 };

/** Makes the page keep when its first words and when its first screen stood, each after its navigation. */
async function watchFirst(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen: { words?: number; screen?: number; longest?: number } = {};
    Object.assign(globalThis, { seen });
    // From the first words on a hand can press, and waits as long as the longest task that goes on.
    new PerformanceObserver((tasks) => {
      for (const { startTime, duration } of tasks.getEntries()) {
        if (startTime + duration > (seen.words ?? Infinity)) seen.longest = Math.max(seen.longest ?? 0, duration);
      }
    }).observe({ type: "longtask", buffered: true });
    const frame = () =>
      requestAnimationFrame(() => {
        const words = (document.body?.innerText ?? "").trim() !== "";
        const screen = document.querySelector("main h1#title") !== null;
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          if (words) seen.words ??= performance.now();
          if (screen) seen.screen ??= performance.now();
          if (!screen) frame();
        };
        port2.postMessage(0);
      });
    frame();
  });
}

test("a first visit over slow 4G on a slow phone", async ({ browser }) => {
  test.setTimeout(240_000);
  const site = await Site.open();
  site.packs = true;
  const screens: number[] = [];
  const words: number[] = [];
  const longest: number[] = [];
  for (let visit = 0; visit < VISITS + 1; visit += 1) {
    const context = await browser.newContext();
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send("Network.enable");
    const throughput = SLOW_4G.bits / 8;
    await session.send("Network.emulateNetworkConditions", {
      offline: false,
      latency: SLOW_4G.away,
      downloadThroughput: throughput,
      uploadThroughput: throughput,
    });
    await slowDown(page, SLOWER);
    await watchFirst(page);
    await page.goto(site.address, { waitUntil: "commit" });
    const seen = await page.waitForFunction(
      () => {
        type Seen = { words?: number; screen?: number; longest?: number };
        const { seen } = globalThis as unknown as { seen?: Seen };
        return seen?.screen !== undefined && performance.now() > seen.screen + 1000 ? seen : null;
      },
      null,
      { timeout: 60_000 },
    );
    const times = await seen.jsonValue();
    // On the first visit of all the host still packs its files.
    if (visit > 0) {
      screens.push(times?.screen ?? Infinity);
      words.push(times?.words ?? Infinity);
      longest.push(times?.longest ?? 0);
    }
    await context.close();
  }
  print("first_visit_slow4g_ms", median(screens));
  print("first_words_slow4g_ms", median(words));
  print("first_visit_longest_task_ms_4x", median(longest));
  expect(median(screens)).toBeGreaterThan(0);
  await site.close();
});
