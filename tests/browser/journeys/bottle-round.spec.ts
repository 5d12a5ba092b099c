// The morning's round with the bottle: three lambs, one mix, a tick each, and every tick can be taken back.
import { Phone } from "../barn";
import { expect, test } from "../watching";

/** An hour in milliseconds. */
const HOUR = 3_600_000;

/** Three lambs of one ewe, each weighed and fed by bottle once, three days ago. */
async function threeLambs(phone: Phone, weight: string): Promise<void> {
  await phone.lambing("12");
  for (const [place, sex] of ["Ewe lamb", "Ram lamb", "Ewe lamb"].entries()) {
    if (place > 0) await phone.tap("Next lamb");
    await phone.tap(sex);
    await phone.weigh(weight);
    await phone.page.clock.runFor(1_000);
  }
  await phone.tap("All lambs born");
  for (const name of ["12a", "12b", "12c"]) {
    await phone.look(name);
    await phone.tap(/^Fed \d/);
    await phone.tab("Watch");
  }
  await phone.page.clock.fastForward(71 * HOUR);
}

test("three lambs: one mix for all, a tick each, another amount, and undo", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-21T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await threeLambs(phone, "4.0");
  await phone.look("12a");
  await expect(page.locator(".card")).toContainText("late");
  await phone.tap("All bottle lambs");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Bottle round");
  // The vet supplier's days 2 to 7: 100 to 150 ml, five times. 200 g/L made up to 375 ml: 75 g and 300 ml.
  await expect(phone.row("12a")).toContainText("125 ml of milk replacer");
  const mix = page.locator(".section", { hasText: "One mix for all still to feed" });
  await expect(mix).toContainText("375 ml for 3 lambs");
  await expect(mix.locator(".figure-number").first()).toHaveText("75 g");
  await expect(mix.locator(".figure-number").last()).toHaveText("300 ml");
  await expect(mix).toContainText("200 g added to 1 L of water is only 167 g/L");
  const day = page.locator(".section", { hasText: "In 24 hours" });
  await expect(day).toContainText("1875 ml");
  await expect(day).toContainText("5 feeds:");

  await phone.tap("Fed 125 ml, 12a");
  await expect(mix).toContainText("250 ml for 2 lambs");
  await expect(mix.locator(".figure-number").first()).toHaveText("50 g");
  // A press in the same place within 0.4 s is the second half of a double tap; no hand is that quick on purpose.
  await page.waitForTimeout(500);
  await phone.tap("Undo, 12a");
  await expect(mix).toContainText("375 ml for 3 lambs");
  await page.waitForTimeout(500);
  await phone.tap("Fed 125 ml, 12a");

  await phone.tap("other amount, 12b");
  const volume = page.getByRole("dialog").locator(".readout-number");
  await expect(volume).toHaveText("125");
  // The first key begins another amount.
  await phone.weigh("2500");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.getByRole("dialog").getByRole("alert")).toContainText("2500 ml");
  await expect(volume).toHaveText("2500");
  for (const key of ["Backspace", "Backspace", "Backspace", "Backspace", "1", "3", "0"]) await page.keyboard.press(key);
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(phone.row("12b")).toContainText("Fed 130 ml");
  await phone.tap("Fed 125 ml, 12c");
  await expect(page.getByText("All of this round are fed.")).toBeVisible();
  await phone.saved();
  await page.reload();
  await expect(page.getByText("All of this round are fed.")).toBeVisible();
  await expect(phone.row("12c")).toContainText("next at 04:48");
});

test("the mix answers why, and the powder until weaning stands against what is in store", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-21T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await threeLambs(phone, "4.0");
  await page.evaluate(() => (location.hash = "#/bottle-round"));
  const mix = page.locator(".section", { hasText: "One mix for all still to feed" });
  await mix.getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("Made up with 300 ml of water");
  await expect(page.getByRole("dialog")).toContainText("Feed maker");
  await page.keyboard.press("Escape");
  const powder = page.locator(".section", { hasText: "Powder until weaning" });
  // NDSU, 6.8 to 9.1 kg a lamb.
  await expect(powder).toContainText("20.4 kg to 27.3 kg");
  const store = powder.getByLabel("Powder in store");
  await store.fill("10");
  await expect(powder).toContainText("Short of 10.4 kg to 17.3 kg");
  await store.fill("ten");
  await expect(powder.getByRole("alert").last()).toContainText("“ten” is not a number");
  await expect(store).toHaveValue("ten");
  const lambs = powder.getByLabel("Lambs");
  await expect(lambs).toHaveValue("3");
  await lambs.fill("0");
  await expect(powder.getByRole("alert").first()).toContainText("0 lambs is out of range");
  await expect(lambs).toHaveValue("0");
});

test("the label's own rate is set in Farm settings, refused when it is on no label, and used in the mix", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-21T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/settings/feeding");
  const rate = page.getByLabel("Grams in a liter of mix");
  await rate.fill("0");
  await phone.tap("Save strength");
  await expect(page.getByText("0 g/L is out of range. Enter 100 to 300 g/L.")).toBeVisible();
  await expect(rate).toHaveValue("0");
  await rate.fill("160");
  await phone.tap("Save strength");
  await threeLambs(phone, "4.0");
  await page.evaluate(() => (location.hash = "#/bottle-round"));
  const mix = page.locator(".section", { hasText: "One mix for all still to feed" });
  await expect(mix).toContainText("at 160 g/L");
  await expect(mix.locator(".figure-number").first()).toHaveText("60 g");
  await expect(mix).toContainText("160 g added to 1 L of water is only 138 g/L");
});

test("a farm in pounds and fluid ounces goes the same round", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-21T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/settings/farm");
  await phone.tap("lb, fl oz, °F");
  await threeLambs(phone, "8.8");
  await page.evaluate(() => (location.hash = "#/bottle-round"));
  await expect(phone.row("12a")).toContainText("4.2 fl oz of milk replacer");
  const mix = page.locator(".section", { hasText: "One mix for all still to feed" });
  await expect(mix).toContainText("12.6 fl oz for 3 lambs");
  await expect(mix.locator(".figure-number").first()).toHaveText("2.6 oz");
  await expect(mix).toContainText("75 g");
  await phone.tap("Fed 4.2 fl oz, 12b");
  await expect(phone.row("12b")).toContainText(/Fed 4\.2.fl.oz/);
});

test("after three days unweighed a lamb is weighed before it is fed by an old weight", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-21T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await threeLambs(phone, "2.0");
  await page.clock.fastForward(3 * HOUR);
  await page.evaluate(() => (location.hash = "#/bottle-round"));
  // The last weight guards its stomach: 2 kg, 200 ml/kg in five feeds.
  await expect(phone.row("12a")).toContainText("Weigh it first, then 80 ml");
  await expect(page.getByRole("button", { name: /^Fed 80 ml, 12a/ })).toHaveCount(0);
  await phone.tab("Watch");
  await phone.tap("Weigh, 12a", phone.row("12a"));
  await phone.weigh("2.6");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(phone.row("12a").locator("[data-done=true]")).toHaveText(["Weigh"]);
  await page.clock.fastForward("00:00:09");
  await expect(phone.row("12a")).toContainText("Feed 105 ml");
});

test("a round without bottle lambs says what to do", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/bottle-round");
  await expect(page.getByText("No lamb is on the bottle.")).toBeVisible();
});
