// How long a press takes to be seen and to be safe in a book of twenty thousand entries, and what that book weighs.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";
import { lived } from "./books";
import { bare, fill, holdMemory, memory, percentile, print, type Press, SLOWER, slowDown, takePresses, watchPresses } from "./stopwatch";

/** How many presses are timed on each screen. */
const PRESSES = 20;
/** A press so soon after another in one place is the same one. */
const REST = 450;

/** Presses so often what `find` finds, each time waiting for "saved", and returns the times. */
async function press(phone: Phone, find: (at: number) => ReturnType<Page["locator"]>): Promise<Press[]> {
  await watchPresses(phone.page, "click");
  const all: Press[] = [];
  for (let at = 0; at < PRESSES; at += 1) {
    await find(at).tap();
    await phone.page.waitForTimeout(REST);
    await phone.saved();
    all.push(...(await takePresses(phone.page)));
  }
  expect(all).toHaveLength(PRESSES);
  expect(all.every(({ painted, saved }) => painted && saved), JSON.stringify(all)).toBe(true);
  return all;
}

/** Opens the book as a new day finds it: read from the disk. */
async function open(phone: Phone, hash: string): Promise<void> {
  await phone.page.goto("about:blank");
  await phone.open(hash);
  await expect(phone.page.locator(".save-mark")).toHaveAttribute("data-state", "saved", { timeout: 30_000 });
}

test("a press in a book of twenty thousand entries", async ({ page }) => {
  test.setTimeout(240_000);
  await holdMemory(page);
  const phone = new Phone(page);
  await fill(phone, lived(20_000));
  await open(phone, "");
  print("memory_mib_20k", await memory(page), "MiB");
  for (const [rate, end] of [[1, ""], [SLOWER, `_${SLOWER}x`]] as const) {
    await open(phone, "");
    await slowDown(page, rate);
    // What was done stays as a tick, which is no button: the next row's is the first now.
    const duty = page.locator(".row button[data-size=action][data-means=saves]").first();
    const watch = await press(phone, () => duty);
    await page.locator(".row a.row-words[href*='lamb/']").first().tap();
    const looks = page.locator(".section", { has: page.getByRole("button", { name: /^Navel/ }) });
    // The first lamb may be one that must not have milk now: then "Nursed" takes no press.
    const lookButton = (name: RegExp) => looks.getByRole("button", { name, disabled: false }).first();
    const all = [/^Nursed/, /^Up/, /^Navel/].map(lookButton);
    const buttons = [];
    for (const button of all) if (await button.isVisible()) buttons.push(button);
    const lamb = await press(phone, (at) => buttons[at % buttons.length]);
    const both = [...watch, ...lamb];
    const times = (presses: Press[], of: keyof Press) => presses.map((press) => press[of] ?? Infinity);
    print(`tap_to_saved_p95_ms${end}`, percentile(times(both, "saved"), 95));
    print(`tap_to_paint_p95_ms${end}`, percentile(times(both, "painted"), 95));
    // Of that, what is not the wait for the next frame and its drawing; and the halves of it.
    print(`tap_work_p95_ms${end}`, percentile(times(both, "worked"), 95));
    print(`tap_work_watch_median_ms${end}`, percentile(times(watch, "worked"), 50));
    print(`tap_work_lamb_median_ms${end}`, percentile(times(lamb, "worked"), 50));
    print(`tap_to_saved_median_ms${end}`, percentile(times(both, "saved"), 50));
    print(`tap_to_paint_median_ms${end}`, percentile(times(both, "painted"), 50));
    const bareTimes = await bare(page, "click", rate);
    print(`tap_to_paint_bare_p95_ms${end}`, percentile(bareTimes, 95));
    print(`tap_to_paint_bare_median_ms${end}`, percentile(bareTimes, 50));
    await slowDown(page, 1);
  }
});
