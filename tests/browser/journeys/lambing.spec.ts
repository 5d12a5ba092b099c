// The main job: lambs are born, every tap is saved, and the Watch keeps their clocks.
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

test("the first lamb of an empty book is on the Watch with its window, volumes and clock", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await expect(page.getByText("Nothing to watch yet")).toBeVisible();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.2");
  await expect(page.getByText("good for a single")).toBeVisible();
  await phone.tap("No help");
  await phone.tap("Navel dipped");
  await phone.saved();
  await phone.tap("All lambs born");
  const row = phone.row("14a");
  await expect(row).toContainText("4.2 kg");
  // AHDB: 50 ml/kg at once; Bond 2020: 100 ml/kg by 6 h; Mellor & Murray 1986: 180 by 18 h; AHDB: 200 in 24 h.
  await expect(row.locator(".fact").nth(0)).toContainText("210 ml");
  await expect(row.locator(".fact").nth(1)).toContainText("420");
  await expect(row.locator(".fact").nth(2)).toContainText("755");
  await expect(row.locator(".fact").nth(3)).toContainText("840");
  // The long time left is no headline.
  await expect(row.locator(".figure")).toHaveCount(0);
  await expect(row.getByRole("img", { name: /Colostrum: .* left of 24 hours/ })).toBeVisible();
  await expect(row.getByRole("button", { name: /^Score, / })).toBeVisible();
  await fitsTheScreen(page);
  // The farm's own scale, on a sheet over the Watch.
  await row.getByRole("button", { name: /^Score, / }).tap();
  await page.getByRole("dialog").getByRole("button", { name: /^1 · / }).tap();
  await expect(row.locator("[data-done=true]")).toHaveText(["Score"]);
});

test("three lambs that were found are recorded with their age in six taps", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill("31");
  await phone.tap("Add ewe 31");
  await phone.tab("Watch");
  phone.taps = 0;
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("31");
  await phone.tap("1–6 h");
  await phone.tap("Ewe lamb");
  await phone.tap("Ewe lamb");
  await phone.tap("Ram lamb");
  expect(phone.taps).toBe(6);
  await phone.tab("Watch");
  for (const lamb of ["31a", "31b", "31c"]) await expect(phone.row(lamb)).toHaveCount(1);
});

test("digits typed just before the page goes are kept", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("32");
  await phone.tap("Ewe lamb");
  await phone.saved();
  await phone.weigh("4.2");
  // No key has rested yet: the page is gone at once, as when a phone dies.
  await page.evaluate(() => location.reload());
  await phone.tab("Watch");
  await expect(phone.row("32a")).toContainText("4.2 kg");
});

test("twins are recorded with ten taps, and each tap is on the disk", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill("27");
  await phone.tap("Add ewe 27");
  await phone.tab("Watch");
  phone.taps = 0;
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("27");
  for (const [lamb, weight] of [["Ewe lamb", "3.9"], ["Ram lamb", "4.2"]] as const) {
    await phone.tap(lamb);
    await phone.weigh(weight);
    await phone.tap("No help");
    await phone.tap("Navel dipped");
    if (lamb === "Ewe lamb") await phone.tap("Next lamb");
  }
  await phone.tap("All lambs born");
  expect(phone.taps).toBeLessThanOrEqual(10);
  await phone.saved();
  await page.reload();
  await expect(phone.row("27a")).toContainText("3.9 kg");
  await expect(phone.row("27b")).toContainText("4.2 kg");
  await phone.look("27b");
  await expect(page.getByText("ram lamb · twin")).toBeVisible();
  for (const noted of ["Weighed 4.2 kg", "Navel dipped", "Birth: no help", "Ram lamb born"]) {
    await expect(page.locator(".noted-text", { hasText: noted }).first()).toBeVisible();
  }
});

test("a litter without a dam stays together and is given its dam later", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill("8");
  await phone.tap("Add ewe 8");
  await phone.tab("Watch");
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("Dam unknown");
  await phone.tap("Ram lamb");
  await phone.tap("Next lamb");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await expect(page.locator(".row-name", { hasText: /^Lamb of / })).toHaveCount(2);
  await expect(page.locator(".row-name").first()).toHaveText(/Lamb of \d\d:\d\d [ab]/);
  await page.locator("a.row-words").first().tap();
  phone.taps = 0;
  await phone.tap("Give its dam");
  await phone.tap("8", page.getByRole("dialog"));
  expect(phone.taps).toBe(2);
  await phone.tab("Watch");
  await expect(phone.row("8a")).toBeVisible();
  await expect(phone.row("8b")).toBeVisible();
});

test("the countdown passes one hour, two hours and six hours, and says so each time", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("31");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await phone.saved();
  const row = phone.row("31a");
  await page.clock.fastForward("00:31:00");
  await expect(row).toContainText("Not seen up");
  await expect(row).toContainText("late: navel");
  await expect(row).toContainText("3 more");
  await page.clock.fastForward("00:30:00");
  await expect(row).toContainText("Not seen to nurse");
  await expect(row).toContainText(/1.h( \d.min)? unfed/);
  await phone.look("31a");
  await expect(page.getByText("not seen to nurse: help it now")).toBeVisible();
  await phone.tab("Watch");
  await page.clock.fastForward("01:00:00");
  await expect(row).toHaveAttribute("data-state", "late");
  await page.clock.fastForward("04:00:00");
  await expect(row).toContainText("No colostrum: temperature first, or call your vet");
  await expect(row).toContainText(/6.h( \d.min)? unfed/);
  // So long unfed its temperature comes first; that it sucked after all is noted on its own page.
  await expect(row.getByRole("link", { name: "Temperature", exact: true })).toBeVisible();
  await phone.look("31a");
  await phone.tap("Already fed");
  await phone.tap(/^Nursed/, page.getByRole("dialog"));
  await phone.tap(/^Save/, page.getByRole("dialog"));
  await phone.saved();
  await page.clock.fastForward("18:00:00");
  await phone.open();
  await expect(phone.row("31a").locator(".figure")).toHaveCount(0);
});

test("the navel is asked for at birth and again six hours later", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T22:40:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("5");
  await phone.tap("Ram lamb");
  await phone.tap("Navel dipped");
  await phone.tap("Nursed");
  await phone.tap("All lambs born");
  await page.clock.fastForward("06:01:00");
  await expect(phone.row("5a")).toContainText("Dip the navel again");
  await phone.row("5a").getByRole("button", { name: "Dipped again, 5a" }).tap();
  await expect(phone.row("5a").locator("[data-done=true]")).toHaveText(["Dipped again"]);
});

test("a tap too many is taken back, and what was undone can be brought back", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("40");
  await phone.tap("Ewe lamb");
  await phone.tap("Nursed");
  await phone.tap("Undo");
  await expect(page.getByRole("button", { name: "Nursed", exact: true })).toHaveAttribute("aria-pressed", "false");
  await phone.tap("Up");
  await expect(page.getByRole("button", { name: "Up", exact: true })).toHaveAttribute("aria-pressed", "true");
  await phone.tap("More about this lamb");
  await phone.tap("undo: Up, standing");
  await expect(page.locator("s", { hasText: "Up, standing" })).toBeVisible();
  await phone.tap("restore: Up, standing");
  await expect(page.locator("s", { hasText: "Up, standing" })).toHaveCount(0);
  await expect(page.locator("s", { hasText: "Nursed" })).toBeVisible();
});

test("a ewe scanned with two is not done after one unless that is said", async ({ page }) => {
  const now = new Date("2026-02-20T03:00:00Z");
  await page.clock.install({ time: now });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const ewe = scribe.note(new Date(now.getTime() - 200 * 24 * 3_600_000), { "ewe-came": { tag: "9" } });
  scribe.note(new Date(now.getTime() - 70 * 24 * 3_600_000), { scanned: { ewe, lambs: 2, days: null } });
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.lambing("9");
  await expect(page.locator("main")).toContainText("scanned 2");
  await phone.tap("Ewe lamb");
  // The first lamb is named: what stands below is about it.
  await expect(page.getByRole("heading", { name: "9a", exact: true })).toBeVisible();
  const filled = page.locator('.thumb [data-weight="filled"]');
  await expect(filled).toHaveText("Next lamb");
  await phone.tap("All lambs born");
  const dialog = page.getByRole("dialog");
  await expect(dialog).toContainText("The scan saw 2, and 1 is noted.");
  await fitsTheScreen(page);
  await accessible(page);
  await phone.tap("No, one is still to come", dialog);
  await phone.tap("Ram lamb");
  await expect(filled).toHaveText("All lambs born");
  await phone.tap("Undo", page.locator(".undo-bar"));
  await phone.tap("All lambs born");
  await phone.tap("Yes, all are born", dialog);
  await expect(phone.row("9a")).toBeVisible();
});
