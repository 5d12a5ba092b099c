// How long the app takes to start, against a page of the same framework that only says hello. Both come from their
// worker, with the server stopped.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Site } from "../site";
import { expect, readyOffline, test } from "../watching";
import { lived } from "./books";
import { fill, median, print, SLOWER, slowDown } from "./stopwatch";

/** How often either is started. */
const STARTS = 9;

/** Makes the page keep the time from its navigation to the first frame that shows something for `usable`. */
async function watchStart(page: Page, usable: string): Promise<void> {
  await page.addInitScript((usable) => {
    const frame = () =>
      requestAnimationFrame(() => {
        const there = document.querySelector(usable) !== null;
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => (there ? Object.assign(globalThis, { started: performance.now() }) : frame());
        port2.postMessage(0);
      });
    frame();
  }, usable);
}

/** Starts the page so often and returns how long each start took. */
async function start(page: Page, address: string): Promise<number[]> {
  const times: number[] = [];
  for (let round = 0; round < STARTS; round += 1) {
    await page.goto("about:blank");
    await page.goto(address);
    const handle = await page.waitForFunction(() => (globalThis as { started?: number }).started, null, { timeout: 30_000 });
    times.push((await handle.jsonValue()) ?? Infinity);
    // What the app still does after its first frame belongs to no other start.
    await page.waitForTimeout(1000);
  }
  return times;
}

test("the start with a book of five thousand entries over that of an empty page", async ({ browser }) => {
  test.setTimeout(240_000);
  const app = await Site.open();
  const hello = await Site.open("/hello/", "../../target/hello");
  const context = await browser.newContext({ baseURL: app.address });
  const page = await context.newPage();
  await fill(new Phone(page), lived(5_000));
  await readyOffline(page);
  const other = await (await browser.newContext()).newPage();
  await other.goto(hello.address);
  await readyOffline(other);
  await Promise.all([app.close(), hello.close()]);
  // A row with its button is what a hand is there for.
  await watchStart(page, ".row button[data-size=action]");
  await watchStart(other, "h1");
  for (const [rate, end] of [[1, ""], [SLOWER, `_${SLOWER}x`]] as const) {
    await slowDown(page, rate);
    await slowDown(other, rate);
    const [ours, empty] = [median(await start(page, app.address)), median(await start(other, hello.address))];
    print(`start_ms_5k${end}`, ours);
    print(`start_hello_ms${end}`, empty);
    print(`start_over_hello${end}`, ours / empty, "times");
    expect(empty).toBeGreaterThan(0);
  }
  await Promise.all([context.close(), other.context().close()]);
});
