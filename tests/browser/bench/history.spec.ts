// How a farm's ten years stand on a phone that is four times slower: 4,449 lambs, with groups, marks, scans and scores.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";
import { history } from "./books";
import { fill, holdMemory, median, memory, percentile, print, SLOWER, slowDown, takePresses, watchPresses } from "./stopwatch";

const LAMBS = 4449;
const ROUNDS = 7;

/** Goes to another screen; returns the time to the frame in which its title stands. */
function to(page: Page, hash: string): Promise<number> {
  return page.evaluate(
    (hash) =>
      new Promise<number>((resolve) => {
        const title = () => document.querySelector("#title")?.textContent;
        const before = title();
        const at = performance.now();
        location.hash = hash;
        const frame = () =>
          requestAnimationFrame(() => {
            const drawn = title() !== before;
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => (drawn ? resolve(performance.now() - at) : frame());
            port2.postMessage(0);
          });
        frame();
      }),
    hash,
  );
}

test("ten years of 4,449 lambs", async ({ page }) => {
  test.setTimeout(240_000);
  await holdMemory(page);
  const phone = new Phone(page);
  await fill(phone, history(LAMBS));
  await page.goto("about:blank");
  await phone.open("");
  print("history_memory_mib", await memory(page), "MiB");
  await slowDown(page, SLOWER);
  const starts: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    await page.goto("about:blank");
    await phone.open("");
    const row = page.locator(".row button[data-size=action]").first();
    await row.waitFor();
    starts.push(await page.evaluate(() => performance.now()));
    await page.waitForTimeout(1500);
  }
  print(`history_start_ms_${SLOWER}x`, median(starts));

  await watchPresses(page, "click");
  const taps: number[] = [];
  for (let round = 0; round < ROUNDS * 2; round += 1) {
    await page.locator(".row button[data-size=action][data-means=saves]").first().tap();
    await page.waitForTimeout(450);
    await phone.saved();
    for (const { painted } of await takePresses(page)) taps.push(painted ?? Infinity);
  }
  print(`history_tap_p95_ms_${SLOWER}x`, percentile(taps, 95));

  for (const name of ["summary", "season", "keep", "weigh-lambs", "flock"]) {
    const times: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      await to(page, "#/farm");
      await page.waitForTimeout(300);
      times.push(await to(page, `#/${name}`));
      await page.waitForTimeout(300);
    }
    print(`history_${name.replace("-", "_")}_ms_${SLOWER}x`, median(times));
  }

  await phone.tab("Flock");
  const field = page.getByLabel("Find a tag or a name");
  await field.tap();
  await watchPresses(page, "keydown");
  const keys: number[] = [];
  for (let round = 0; round < 3; round += 1) {
    for (const key of ["1", "0", "1", "4", "Backspace", "Backspace", "Backspace", "Backspace"]) {
      await page.keyboard.press(key);
      await page.waitForTimeout(500);
      for (const { painted } of await takePresses(page)) keys.push(painted ?? Infinity);
    }
  }
  print(`history_search_p95_ms_${SLOWER}x`, percentile(keys, 95));
  expect(Math.max(...keys, ...taps)).toBeLessThan(Infinity);
});
