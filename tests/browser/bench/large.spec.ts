// How long a large flock is searched and a large season is forecast on a phone that is four times slower.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";
import { flock, mated } from "./books";
import { bare, fill, median, percentile, print, SLOWER, slowDown, takePresses, watchPresses } from "./stopwatch";

test("a search among two thousand animals", async ({ page }) => {
  test.setTimeout(120_000);
  const phone = new Phone(page);
  await fill(phone, flock(700, 1300));
  await phone.tab("Flock");
  const field = page.getByLabel("Find a tag or a name");
  await field.tap();
  await slowDown(page, SLOWER);
  await watchPresses(page, "keydown");
  const times: number[] = [];
  for (let round = 0; round < 5; round += 1) {
    for (const key of ["1", "0", "3", "4", "Backspace", "Backspace", "Backspace", "Backspace"]) {
      await page.keyboard.press(key);
      await page.waitForTimeout(400);
      for (const { painted } of await takePresses(page)) times.push(painted ?? Infinity);
    }
  }
  await page.keyboard.type("10344");
  await expect(page.locator(".row").first()).toContainText("10344");
  print(`search_ms_2000_${SLOWER}x`, percentile(times, 95));
  print(`search_median_ms_2000_${SLOWER}x`, median(times));
  const bareTimes = await bare(page, "keydown", SLOWER);
  print(`search_bare_p95_ms_${SLOWER}x`, percentile(bareTimes, 95));
  print(`search_bare_median_ms_${SLOWER}x`, median(bareTimes));
});

for (const [kind, marked] of [["", false], ["_marked", true]] as const) {
  test(`a season of a thousand ewes in twenty groups, ${marked ? "a third of them marked" : "none marked"}`, async ({ page }) => {
    test.setTimeout(120_000);
    const phone = new Phone(page);
    await fill(phone, mated(1000, 20, marked));
    for (const [rate, end] of [[1, ""], [SLOWER, `_${SLOWER}x`]] as const) {
      await slowDown(page, rate);
      const times: number[] = [];
      for (let round = 0; round < 7; round += 1) {
        await phone.tab("Farm");
        await expect(page.getByRole("heading", { level: 1 })).toHaveText("Farm");
        // What the Farm tab still draws belongs to no season: a hand is not there so soon either.
        await page.waitForTimeout(400);
        times.push(await toSeason(page));
      }
      print(`forecast${kind}_ms_1000${end}`, median(times));
    }
  });
}

/** Goes to the season; returns the time to the frame that holds the chart of births and that of pens. */
function toSeason(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const at = performance.now();
        location.hash = "#/season";
        const frame = () =>
          requestAnimationFrame(() => {
            const drawn = document.querySelectorAll("main .chart").length >= 2;
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => (drawn ? resolve(performance.now() - at) : frame());
            port2.postMessage(0);
          });
        frame();
      }),
  );
}
