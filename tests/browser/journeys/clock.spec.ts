// The phone's clock is not trusted blindly: daylight saving, a phone asleep in a pocket, a clock set back.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { expect, test } from "../watching";

async function aLambAt(page: Page, time: string): Promise<Phone> {
  await page.clock.install({ time: new Date(time) });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await phone.tap("All lambs born");
  await phone.saved();
  await phone.tab("Watch");
  return phone;
}

test("when clocks go forward inside the first day, ages stay right and hours ahead are the new clock's", async ({ page }) => {
  // In New York 02:00 EST is 03:00 EDT on 8 March 2026: the lamb of 01:30 is two hours old at 04:30.
  const phone = await aLambAt(page, "2026-03-08T01:30:10-05:00");
  await expect(phone.row("14a")).toContainText("Dip the navel");
  await phone.open("#/night");
  await page.reload();
  // Not seen to nurse is due an hour after birth (the farm's limit): 02:30 EST, which the wall calls 03:30.
  await expect(page.locator(".night")).toContainText("03:30");
  await expect(page.locator(".night")).not.toContainText("02:30");
  await page.clock.setSystemTime(new Date("2026-03-08T04:30:20-04:00"));
  await page.clock.runFor(2000);
  await expect(page.locator(".night-top")).toContainText("04:30");
  await expect(page.locator(".night-due").first()).toContainText("was due 03:30");
  await phone.open("#/");
  await expect(phone.row("14a")).toContainText("2 h unfed");
});

test("when clocks go back inside the first day, an hour that comes twice is two hours", async ({ page }) => {
  // 02:00 EDT is 01:00 EST on 1 November 2026: from 00:30 EDT to 02:30 EST are three hours.
  const phone = await aLambAt(page, "2026-11-01T00:30:10-04:00");
  await page.clock.setSystemTime(new Date("2026-11-01T02:30:20-05:00"));
  await page.clock.runFor(2000);
  await expect(phone.row("14a")).toContainText("3 h unfed");
});

test("a phone that slept in a pocket shows what is true, and shouts what was missed", async ({ page }) => {
  const phone = await aLambAt(page, "2026-02-25T01:00:00-05:00");
  await phone.tab("Flock");
  const looks = (state: "hidden" | "visible") =>
    page.evaluate((state) => {
      Object.defineProperty(document, "visibilityState", { value: state, configurable: true });
      Object.defineProperty(document, "hidden", { value: state === "hidden", configurable: true });
      document.dispatchEvent(new Event("visibilitychange"));
    }, state);
  await looks("hidden");
  // The page is frozen meanwhile: its timers do not run, only the clock does.
  await page.clock.setSystemTime(new Date("2026-02-25T05:00:40-05:00"));
  await looks("visible");
  const shout = page.getByRole("alert").filter({ hasText: /late/i });
  await expect(shout.first()).toContainText(/\d+ late\. First 14a/);
  await shout.getByRole("link").first().tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("14a");
  await expect(page.getByRole("img", { name: /Colostrum: 4 h old/ })).toBeVisible();
  await phone.tap("OK");
  await expect(page.getByText(/\d+ late\. First/)).toHaveCount(0);
  await expect(page).toHaveTitle(/^\(\d+\) Yeanling$/);
});

test("a clock that is set back is told until it is right again", async ({ page }) => {
  const phone = await aLambAt(page, "2026-02-25T03:40:00-05:00");
  const doubt = page.getByText("This phone’s clock is behind");
  await expect(doubt).toHaveCount(0);
  await page.clock.setSystemTime(new Date("2026-02-25T02:10:00-05:00"));
  await page.clock.runFor(2000);
  await expect(doubt.locator("..")).toContainText("what was noted at 03:40: it says 02:10, 1 h 30 min less");
  await phone.open("#/night");
  await expect(doubt).toBeVisible();
  // A minute's difference between two phones is no fault.
  await page.clock.setSystemTime(new Date("2026-02-25T03:39:00-05:00"));
  await page.clock.runFor(2000);
  await expect(doubt).toHaveCount(0);
});

test("what was noted in another time zone keeps its hour when it is changed", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T08:00:00-05:00") });
  // At 09:10 by the wall of a barn in Berlin, which is 03:10 in New York.
  const scribe = new Scribe("+01:00");
  const dam = scribe.note(new Date("2026-02-25T08:00:00Z"), { "ewe-came": { tag: "77" } });
  scribe.note(new Date("2026-02-25T08:10:00Z"), { "lamb-born": { dam, sex: "ewe", alive: true } });
  const phone = new Phone(page);
  await phone.open();
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.tab("Watch");
  await phone.look("77a");
  await phone.tap("change: Ewe lamb born");
  const when = page.getByRole("dialog").locator("input[type=datetime-local]");
  await expect(when).toHaveValue("2026-02-25T09:10");
  await when.fill("2026-02-25T09:20");
  await phone.tap("Save", page.getByRole("dialog"));
  await phone.saved();
  const { text } = await phone.handOver();
  const amended = JSON.parse(text).entries.flatMap((entry: { event: { amended?: { at: string } } }) => entry.event.amended?.at ?? []);
  expect(amended).toEqual(["2026-02-25T09:20:00.000+01:00"]);
});

test("until when a duty waits is told by this phone's clock, wherever it was put off", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:30:00-05:00") });
  const scribe = new Scribe();
  const dam = scribe.note(new Date("2026-02-25T08:00:00Z"), { "ewe-came": { tag: "77" } });
  const lamb = scribe.note(new Date("2026-02-25T08:10:00Z"), { "lamb-born": { dam, sex: "ewe", alive: true } });
  const done = new Date("2026-02-25T08:15:00Z");
  for (const fact of ["stood", "sucked", "navel-dipped", "all-born"]) scribe.note(done, { [fact]: { lamb } });
  scribe.note(done, { weighed: { lamb, kg: 4.2 } });
  scribe.note(done, { "vigor-scored": { lamb, scale: "four-grade", score: 1 } });
  const until = "2026-02-25T16:50:00.000+01:00";
  scribe.note(new Date("2026-02-25T08:20:00Z"), { "put-off": { animal: { lamb }, duty: "dip-navel-again", until } });
  const phone = new Phone(page);
  await phone.open();
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.tab("Watch");
  const watch = page.locator("main");
  await expect(watch).toContainText("at 10:50");
  await expect(watch).not.toContainText("16:50");
});
