// How much of a busy hour is seen at a glance: fifteen animals with something due, on a phone of 390 by 844.
import { Phone } from "../barn";
import { busyHour, DUE } from "../busy";
import { expect, test } from "../watching";
import { fill, print } from "./stopwatch";

test.use({ viewport: { width: 390, height: 844 } });

test("a busy hour on the Watch", async ({ page }) => {
  const now = new Date("2026-03-02T06:41:00-05:00");
  await page.clock.install({ time: now });
  const phone = new Phone(page);
  await fill(phone, busyHour(now.getTime()));
  await phone.tab("Watch");
  await page.clock.runFor(2_000);
  const due = page.locator(".row:is([data-state=danger], [data-state=late], [data-state=now])[data-look]");
  await expect(due).toHaveCount(DUE);
  const seen = await due.evaluateAll((rows) => {
    const foot = Math.min(...[...document.querySelectorAll(".thumb, .tab-bar")].map((bar) => bar.getBoundingClientRect().top));
    const places = rows.map((row) => row.getBoundingClientRect());
    // The page as high as it would be if it ended with the last that is due, the buttons at its foot beneath it.
    const high = Math.max(...places.map(({ bottom }) => bottom)) + scrollY + (innerHeight - foot);
    return { screens: high / innerHeight, whole: places.filter(({ bottom }) => bottom <= foot).length };
  });
  // Of what is due so many stand on a screen, over all; and those whole on the first.
  print("watch_animals_per_screen", DUE / seen.screens, "animals");
  print("watch_animals_first_screen", seen.whole, "animals");
  print("watch_screens_15_due", seen.screens, "times");
});
