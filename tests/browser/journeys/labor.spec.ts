// A night with the ewes: signs, waters, a hard birth, the afterbirth, the bonding pen, and out again.
import type { Page } from "@playwright/test";
import { anotherPhone, Phone } from "../barn";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const NIGHT = new Date("2026-02-25T01:00:00-05:00");

async function passes(page: Page, minutes: number): Promise<void> {
  await page.clock.fastForward(minutes * 60_000);
}

/** Opens the labor of a ewe, who is added if she is not in the book. */
async function atWork(phone: Phone, tag: string): Promise<void> {
  await phone.lambing(tag);
}

test("one whole night: restless, waters, a clean hand, help, twins, the afterbirth, the pen and out", async ({ page }) => {
  test.setTimeout(120_000);
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await atWork(phone, "14");
  await phone.tap("Restless");
  await expect(page.getByRole("button", { name: "Restless 01:00" })).toHaveAttribute("aria-pressed", "true");
  await phone.tab("Watch");
  const ewe = phone.row("Ewe 14");
  await expect(ewe).toHaveAttribute("data-state", "coming");
  // Common practice: a restless ewe is looked at hourly.
  await passes(page, 59);
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await passes(page, 1);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await phone.tap("All well, Ewe 14", ewe);
  await expect(ewe).toHaveAttribute("data-state", "coming");

  // Waters at 02:10: a clean hand at 02:40, step in at 03:10.
  await passes(page, 10);
  await ewe.locator("a.row-words").tap();
  await phone.tap("Water bag");
  await phone.tab("Watch");
  await passes(page, 29);
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await passes(page, 1);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await expect(ewe).toContainText("check inside");
  await passes(page, 29);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await passes(page, 1);
  await expect(ewe).toHaveAttribute("data-state", "late");
  await expect(ewe).toContainText("Assist, or call your vet");
  await fitsTheScreen(page);

  // One leg is back: put right within ten minutes, or the vet.
  await phone.tap("Open lambing", ewe);
  await phone.tap("Check inside");
  await page.getByRole("dialog").getByRole("button", { name: /^One leg back/ }).tap();
  await expect(page.getByText("bring the leg forward")).toBeVisible();
  await phone.tap("Helping");
  await phone.tab("Watch");
  await passes(page, 10);
  await expect(ewe).toContainText("put right, or call your vet");
  // What was late stays late; what was found makes it no milder.
  await expect(ewe).toHaveAttribute("data-state", "late");

  // Born at 03:20; the second at 03:40.
  await ewe.locator("a.row-words").tap();
  await phone.tap("Ewe lamb");
  await phone.tap("Hard pull");
  await phone.tap("Nursed");
  await phone.tab("Watch");
  // With the first suck both teats are drawn.
  await expect(ewe).toHaveAttribute("data-state", "now");
  await expect(ewe).toContainText("both teats");
  await phone.tap("Both run, Ewe 14", ewe);
  await passes(page, 20);
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await expect(ewe).toContainText("Another lamb?");
  await ewe.locator("a.row-words").tap();
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.tap("Nursed");
  await phone.tap("All lambs born");
  await expect(phone.row("Ewe 14")).toHaveCount(0);

  // The pen: set up, put in; why not yet.
  await phone.tap("Pens", page.locator(".thumb"));
  await phone.tap("Set up a pen");
  await phone.tap("Save", page.getByRole("dialog"));
  await phone.tap("Put in Pen 1");
  await phone.tap("14", page.getByRole("dialog"));
  const pen = phone.row("Pen 1");
  await expect(pen).toContainText("Ewe 14 and 2 lambs");
  await expect(pen).toContainText("Not yet: stay ends");
  await fitsTheScreen(page);
  await accessible(page);

  // Two hours after the last lamb: is she up, does she eat and drink?
  await phone.tab("Watch");
  await passes(page, 121);
  await phone.tap("Up, eating, Ewe 14", ewe);

  // MSD Vet Manual: the afterbirth is asked for 6 h after the last lamb, 09:40.
  await passes(page, 238);
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await passes(page, 1);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await expect(ewe).toContainText("Never pull it");
  await phone.tap("By place");
  await expect(page.getByRole("heading", { name: "Pen 1", exact: true })).toBeVisible();
  await phone.tap("Passed, Ewe 14", ewe);
  // Her row stays in its place, ticked, as long as that can be undone.
  await expect(ewe.locator("[data-done=true]")).toHaveText(["Passed"]);
  await expect(ewe).toContainText("Nothing due");

  // Twins stay two days.
  await passes(page, 48 * 60 - 361);
  await expect(ewe).toContainText("Ready to turn out");
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await passes(page, 2);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await phone.tap("Out, Ewe 14", ewe);
  await phone.tap("Pens", page.locator(".thumb"));
  await expect(phone.row("Pen 1")).toContainText("not cleaned since");
  await phone.tap("Cleaned and bedded Pen 1");
  await expect(phone.row("Pen 1")).toContainText("Empty, clean");
  await phone.saved();
  await page.reload();
  await expect(phone.row("Pen 1")).toContainText("Empty, clean");
});

test("a sign taken back, and a labor that came to nothing, leave no clock", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await atWork(phone, "14");
  await phone.tap("Straining");
  await page.getByRole("button", { name: /^Straining \d/ }).tap();
  await expect(page.getByRole("button", { name: "Straining", exact: true })).toHaveAttribute("aria-pressed", "false");
  await phone.tap("Udder tight");
  await phone.tab("Watch");
  await expect(page.getByRole("heading", { name: "May lamb tonight" })).toBeVisible();
  await expect(phone.row("Ewe 14")).toContainText("udder tight");
  await phone.row("Ewe 14").locator("a.row-words").tap();
  await phone.tap("Not lambing");
  await phone.tab("Watch");
  await expect(phone.row("Ewe 14")).toHaveCount(0);
});

test("a duty waits to its red limit and no further, and stays on the Watch", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await atWork(phone, "14");
  await phone.tap("Restless");
  await phone.tab("Watch");
  await passes(page, 61);
  const ewe = phone.row("Ewe 14");
  await ewe.locator("a.row-words").tap();
  await phone.tap("Snooze, Ewe 14");
  const sheet = page.getByRole("dialog");
  await expect(sheet).toContainText("Snooze to 02:30");
  await expect(sheet.getByRole("button", { name: /^02:31/ })).toHaveCount(0);
  await sheet.getByRole("button", { name: /^02:16/ }).tap();
  await phone.tab("Watch");
  await expect(ewe).toHaveAttribute("data-state", "coming");
  await passes(page, 15);
  await expect(ewe).toHaveAttribute("data-state", "now");
  await passes(page, 14);
  await expect(ewe).toHaveAttribute("data-state", "late");
});

test("what another phone answers is cleared here once the books have met", async ({ page, browser, contextOptions }) => {
  const phone = new Phone(page);
  await phone.open();
  await atWork(phone, "14");
  await phone.tap("What shows");
  await phone.tap("Two feet, soles down", page.getByRole("dialog"));
  const first = await phone.handOver();
  const { phone: other, context } = await anotherPhone(browser, contextOptions);
  await other.open();
  await other.openFile(first.text);
  await other.tap("Add");
  await other.tab("Watch");
  await expect(other.row("Ewe 14")).toContainText("No progress");
  await other.row("Ewe 14").locator("a.row-words").tap();
  await other.tap("Vet called");
  const back = await other.handOver();
  await context.close();
  await phone.openFile(back.text);
  await phone.tap("Add");
  await phone.tab("Watch");
  // The call brings a look, and ends no clock.
  await expect(phone.row("Ewe 14")).toContainText("Look again");
});

test("a pen keeps its name, its size and who moved where, and bad input is told", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/pens");
  await expect(page.getByText("No pens yet")).toBeVisible();
  const sheet = page.getByRole("dialog");
  await phone.tap("Set up a pen");
  await page.getByLabel("Wide, if you like").fill("5 ft");
  await phone.tap("Save", sheet);
  await expect(sheet).toContainText("Give both sides, or neither");
  await page.getByLabel("Deep, if you like").fill("90 m");
  await phone.tap("Save", sheet);
  await expect(sheet).toContainText("Enter 0.5 m to 20 m");
  await page.getByLabel("Deep, if you like").fill("1,8");
  await phone.tap("Save", sheet);
  await expect(phone.row("Pen 1")).toContainText("1.52 × 1.8 m");
  await phone.tap("Set up a pen");
  await page.getByLabel("Name").fill("1");
  await phone.tap("Save", sheet);
  await expect(sheet).toContainText("There is a pen with that name");
  await page.getByLabel("Name").fill("By the door");
  await phone.tap("Save", sheet);
  await phone.tap("Put in Pen 1");
  await sheet.getByLabel("Her tag").fill("8");
  await phone.tap("Add ewe 8", sheet);
  await phone.row("Pen 1").locator("a.row-words").tap();
  await phone.tap("Remove pen");
  await expect(page.getByText("Someone is in this pen")).toBeVisible();
  await phone.tap("Move");
  await sheet.getByRole("button", { name: /^Pen By the door/ }).tap();
  await phone.tap("Remove pen");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Pens");
  await expect(phone.row("Pen 1")).toHaveCount(0);
  await expect(phone.row("Pen By the door")).toContainText("Ewe 8");
});

test("who is lambing is asked with those at work first, and what was seen of them", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Straining");
  await phone.lambing("15");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await phone.tab("Watch");
  await phone.tap("Lambing", page.locator(".thumb"));
  const section = (name: string) => page.getByRole("region", { name });
  await expect(section("Lambing or close").getByRole("link")).toHaveText([/^Ewe 14 · .* 01:00$/]);
  await expect(section("Ewes").getByRole("button")).toHaveText(["14", "15"]);
  // Who lambed keeps her place among them, and says so.
  await expect(section("Ewes").locator(".tile").filter({ hasText: "15" })).toContainText("lambed");
  await section("Lambing or close").getByRole("link").tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Ewe 14 lambing");
});
