// Hay for the winter, a ration against the table, water; and what the season asks for, on the Watch, until it is done.
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const DAY = 86_400_000;

test("hay by a breeder's own sum, refused where no ewe eats so much", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/feed");
  const main = page.locator("main");
  await expect(main).toContainText("Fill in every field");
  const pounds = async (label: string, value: string) => {
    const field = page.locator(".field", { has: page.getByLabel(label, { exact: true }) });
    await phone.tap("lb", field);
    await field.getByRole("textbox").fill(value);
  };
  await page.getByLabel("Ewes", { exact: true }).fill("10");
  await pounds("One ewe weighs", "125");
  await page.getByLabel("Days of feeding").fill("210");
  await pounds("One bale weighs", "40");
  // 10 × 125 lb × 210 days × 4 % = 10,500 lb: 263 bales of 40 lb. The farm counts in kilograms.
  await expect(main).toContainText("263 bales");
  await expect(main).toContainText("4763 kg in all");
  await page.getByLabel("Hay a day, of her weight").fill("20");
  await expect(main).toContainText("Feed for one ewe in a season: 2381 kg is out of range. Enter 0 kg to 1500 kg.");
  await page.getByLabel("Hay a day, of her weight").fill("four");
  await expect(main).toContainText("“four”");
  await page.getByLabel("Hay a day, of her weight").fill("4");
  await page.getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("263 bales of 40 lb");
  await page.keyboard.press("Escape");
  await phone.tap("Water");
  await page.getByLabel("Ewes", { exact: true }).fill("40");
  await expect(main).toContainText("120 L to 320 L of water a day");
  await page.getByLabel("Ewes", { exact: true }).fill("4000");
  await expect(main).toContainText("Ewes: 4000 is out of range. Enter 1 to 3000.");
  await fitsTheScreen(page);
});

test("a ration names what is shortest, and copper that poisons", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/feed");
  await phone.tap("Ration");
  const main = page.locator("main");
  await phone.tap("empty and dry");
  const fill = async (label: string, value: string) => page.getByLabel(label, { exact: true }).fill(value);
  // Straw alone: 1.4 kg of 90 % dry matter, 6.3 MJ, 4 % protein, 0.3 % calcium.
  await fill("Fed, as it is", "1.4");
  await fill("Dry matter", "90");
  await fill("Energy (ME) of the dry matter", "6.3");
  await fill("Crude protein", "4");
  await fill("Calcium", "0.3");
  await expect(main).toContainText("Shortest is protein");
  await expect(main).toContainText("Copper not known of every feed");
  await fill("Copper, if known", "12");
  await expect(main).toContainText("Copper 12 ppm: poison where molybdenum is low. Ask your vet.");
  await fill("Copper, if known", "300");
  await expect(main).toContainText("Copper 300 ppm is too much for sheep: over 15. Do not feed it; ask your vet.");
  await fill("Copper, if known", "6");
  await fill("Selenium, if known", "0.1");
  await expect(main).toContainText("Copper 6 ppm: under 10.");
  await phone.tap("Another feed");
  await expect(page.getByLabel("Crude protein", { exact: true }).first()).toHaveValue("4");
  await expect(main).toContainText("Fill in all but copper and selenium");
  await phone.tap("Take the last away");
  await expect(main).toContainText("Shortest is protein");
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
});

test("the Watch asks what the season wants this week, and who may lamb tonight by their chance", async ({ page }) => {
  const ramIn = new Date("2026-10-01T12:00:00Z");
  await page.clock.install({ time: new Date("2027-01-23T12:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const came = new Date("2026-09-01T12:00:00Z");
  const group = scribe.note(came, { "group-formed": { name: "Top field" } });
  for (const tag of ["1", "2", "3"]) {
    const ewe = scribe.note(came, { "ewe-came": { tag } });
    scribe.note(came, { "joined-group": { ewe, group } });
  }
  scribe.note(ramIn, { "ram-in": { group } });
  scribe.note(new Date(ramIn.getTime() + 35 * DAY), { "ram-out": { group } });
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.tab("Watch");
  const week = page.locator("section").filter({ has: page.getByRole("heading", { name: "This week" }) });
  await expect(week).toContainText("Booster");
  const fedSo = page.getByRole("button", { name: /^Fed so: Top field/ });
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  await page.getByRole("button", { name: /^Given: Top field/ }).scrollIntoViewIfNeeded();
  const before = await fedSo.boundingBox();
  await page.getByRole("button", { name: /^Given: Top field/ }).tap();
  // What was pressed is a tick in its place, and nothing moves, as long as it can be undone.
  const ticks = week.locator("[data-done=true]");
  await expect(ticks).toHaveText(["Given"]);
  await expect(page.getByRole("button", { name: /^Given: Top field/ })).toHaveCount(0);
  expect(await fedSo.boundingBox()).toEqual(before);
  await fedSo.tap();
  await expect(ticks).toHaveText(["Given", "Fed so"]);
  await page.clock.runFor("00:09");
  await expect(page.getByRole("heading", { name: "This week" })).toHaveCount(0);
  await phone.saved();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.getByRole("button", { name: /^Given: Top field/ })).toHaveCount(0);

  // In the middle of the first cycle's days each of them may lamb tonight; a tight udder puts her first.
  await page.clock.setSystemTime(new Date("2027-03-03T12:00:00Z"));
  await page.reload();
  await expect(page.getByText("May lamb tonight")).toBeVisible();
  const tonight = page.locator("section").filter({ has: page.getByRole("heading", { name: "May lamb tonight" }) });
  await expect(tonight.locator(".row")).toHaveCount(3);
  await expect(tonight.locator(".row").first()).toContainText("within 24 h");
  await phone.lambing("3");
  await phone.tap("Udder tight");
  await phone.tab("Watch");
  await expect(tonight.locator(".row").first()).toContainText("Ewe 3");
  await accessible(page);
});
