// The register: a lamb moved to a foster dam, tags and marks over time, a medicine that blocks a sale, who left.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const HOUR = 3_600_000;
const NOW = new Date("2026-03-01T09:00:00Z");

/** Two ewes: one with triplets of this morning, one with a single. */
async function twoEwes(page: Page): Promise<Phone> {
  await page.clock.install({ time: NOW });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const ago = (hours: number) => new Date(NOW.getTime() - hours * HOUR);
  const many = scribe.note(ago(60), { "ewe-came": { tag: "40" } });
  const few = scribe.note(ago(60), { "ewe-came": { tag: "41" } });
  for (const [dam, hours] of [[many, 30], [many, 29.8], [many, 29.6], [few, 28]] as const) {
    const lamb = scribe.note(ago(hours), { "lamb-born": { dam, sex: "ram", alive: true } });
    scribe.note(ago(hours - 0.5), { weighed: { lamb, kg: 4 } });
    scribe.note(ago(hours - 1), { sucked: { lamb } });
  }
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  return phone;
}

async function register(page: Page): Promise<void> {
  await page.getByText("Register", { exact: true }).tap();
}

test("a lamb goes to a foster dam: its birth stays, who rears it changes", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  await phone.look("40c");
  await register(page);
  await phone.tap("Foster…");
  const dialog = page.getByRole("dialog");
  // Who rears it already is not offered.
  await expect(dialog.getByRole("heading", { name: "Lambed already" })).toBeVisible();
  await expect(dialog.getByRole("button", { name: "40", exact: true })).toHaveCount(0);
  await dialog.getByLabel("Her tag").fill("40");
  await expect(dialog).toContainText("It is her already.");
  await expect(dialog.getByRole("button", { name: /^Add ewe/ })).toHaveCount(0);
  await dialog.getByLabel("Her tag").fill("41");
  await phone.tap("41", dialog);
  await expect(dialog).toBeHidden();
  await expect(page.getByRole("banner").or(page.locator("main"))).toContainText("triplet");
  await expect(page.locator("main")).toContainText("fostered to Ewe 41");
  // Found by its birth and by a mark painted on it.
  await phone.tap("Paint mark…");
  await dialog.getByLabel("Mark", { exact: true }).fill("41 blue");
  await phone.tap("Save", dialog);
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("41 bl");
  await expect(phone.row("40c")).toBeVisible();
  await page.reload();
  await page.getByLabel("Find a tag or a name").fill("40c");
  await phone.look("40c");
  await expect(page.locator("main")).toContainText("fostered to Ewe 41");
});

test("a tag is worn by one living animal; a lamb is found by the old tag and the new", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  await phone.look("41a");
  const dialog = page.getByRole("dialog");
  const give = async (tag: string) => {
    await phone.tap("Tag");
    await dialog.getByRole("textbox").fill(tag);
    await phone.tap("Save", dialog);
  };
  await give("41");
  await expect(dialog).toContainText("Another living animal wears 41 already");
  await page.keyboard.press("Escape");
  await give("7001");
  await give("7002");
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("7001");
  await expect(phone.row("7002")).toBeVisible();
});

test("a medicine withholds her, a sale is refused until then, and the record goes to a spreadsheet", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  await phone.look("Ewe 41");
  await phone.tap("Medicine…");
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Name of the medicine").fill("White drench");
  await dialog.getByLabel("Meat withheld").fill("366");
  await phone.tap("Save", dialog);
  await expect(dialog).toContainText("366 days are more than any label has. At most 365.");
  await dialog.getByLabel("Meat withheld").fill("8");
  await dialog.getByText("The rest of the record").tap();
  await dialog.getByLabel("Against what").fill("worms");
  // So tall that nothing lies behind the foot of the sheet.
  await page.setViewportSize({ width: 390, height: 2400 });
  await accessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await phone.tap("Save", dialog);
  await expect(dialog).toBeHidden();
  const held = page.locator(".notice").filter({ hasText: "Meat withheld" });
  // Nine in the morning by UTC is four by this phone's clock; eight times 24 hours on, the clocks went forward.
  await expect(held).toContainText("Meat withheld until 9 Mar 05:00 (White drench)");
  await expect(held).toContainText("Milk withheld until someone knows for how long");

  await phone.tap("Sold or gone…");
  await phone.tap("Save", dialog);
  await expect(dialog).toContainText("Choose how it left.");
  await phone.tap("Sold", dialog);
  await phone.tap("Save", dialog);
  await expect(dialog).toContainText("Not for sale or slaughter until then");
  await page.keyboard.press("Escape");

  // Three taps the next time: medicine, the one given before, save.
  await phone.tab("Flock");
  await phone.look("Ewe 40");
  const before = phone.taps;
  await phone.tap("Medicine…");
  await phone.tap("White drench", dialog);
  await phone.tap("Save", dialog);
  expect(phone.taps - before).toBe(3);
  await expect(dialog).toBeHidden();
  await phone.open("#/medicines");
  await expect(page.getByText("Withheld now")).toBeVisible();
  await expect(phone.row("Ewe 41")).toHaveCount(2);
  await fitsTheScreen(page);
  await phone.tab("Hand over");
  const download = page.waitForEvent("download");
  await phone.tap("Medicines");
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const rows = Buffer.concat(chunks).toString("utf8").split("\r\n").map((row) => row.split(","));
  expect(rows).toHaveLength(4);
  expect(rows[1].slice(3)).toEqual([
    "White drench", "", "", "worms", "", "", "8", "2026-03-09 05:00", "", "not known",
  ]);

  // Once it ends she may go, and lives here no more.
  await page.clock.setSystemTime(new Date(NOW.getTime() + 9 * 24 * HOUR));
  await phone.open();
  await phone.tab("Flock");
  await phone.look("Ewe 41");
  await phone.tap("Sold or gone…");
  await phone.tap("Sold", dialog);
  await dialog.getByLabel("To whom or where, if you like").fill("the mart");
  await phone.tap("Save", dialog);
  await expect(page.locator("main")).toContainText("Sold on 10 Mar 2026: the mart. The record stays.");
  await phone.tab("Flock");
  await expect(phone.row("Ewe 41")).toHaveCount(0);
  await page.getByText("Shown: here").tap();
  await phone.tap("Dead or gone");
  await expect(phone.row("Ewe 41")).toContainText("sold");
});

test("one medicine for all ewes is noted for all or for none", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.open("#/medicines");
  await phone.tap("Medicine for many…");
  const dialog = page.getByRole("dialog");
  await phone.tap("All ewes · 2", dialog);
  await phone.tap("Save", dialog);
  await expect(dialog).toContainText("Nothing is written yet");
  await dialog.getByLabel("Name of the medicine").fill("Fluke drench");
  await dialog.getByLabel("Meat withheld").fill("56");
  await phone.tap("Save", dialog);
  await expect(dialog).toBeHidden();
  await expect(phone.row("Ewe 40")).toHaveCount(2);
  await page.reload();
  await expect(phone.row("Ewe 41")).toHaveCount(2);
});

test("a ewe takes on a lamb of another: who is on the bottle or one of three stands first", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  await phone.look("Ewe 41");
  await phone.tap("Foster a lamb on…");
  const dialog = page.getByRole("dialog");
  await expect(dialog.getByRole("button", { name: /triplet$/ })).toHaveCount(3);
  await expect(dialog.getByRole("button", { name: /^41/ })).toHaveCount(0);
  await dialog.getByRole("button", { name: /^40c/ }).tap();
  await expect(dialog).toBeHidden();
  const fostered = page.getByRole("region", { name: "Fostered to her" });
  await expect(fostered.getByRole("link", { name: /^40c/ })).toBeVisible();
  await phone.tap("Undo", page.locator(".undo-bar"));
  await expect(fostered).toHaveCount(0);
  await phone.tap("Foster a lamb on…");
  await dialog.getByRole("button", { name: /^40c/ }).tap();
  await fostered.getByRole("link", { name: /^40c/ }).tap();
  await expect(page.locator("main")).toContainText("fostered to Ewe 41");
});

test("what was found in a dead lamb stands with its death, can be changed, and is not asked of the living", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  await phone.look("40c");
  await expect(page.getByRole("button", { name: "What was found in it…" })).toHaveCount(0);
  await phone.tap("Died");
  const dialog = page.getByRole("dialog");
  await phone.tap(/^infection$/i, dialog);
  await phone.tap("What was found in it…");
  await expect(dialog).toContainText("40c");
  await phone.tap("Save", dialog);
  await expect(dialog.getByRole("alert")).toBeVisible();
  await dialog.getByRole("textbox").fill("milk in the lungs");
  await fitsTheScreen(page);
  await accessible(page);
  await phone.tap("Save", dialog);
  await expect(dialog).toBeHidden();
  const noted = page.locator(".noted-text");
  await expect(noted.first()).toHaveText("Found in it: milk in the lungs");
  await phone.saved();
  await page.reload();
  await page.getByRole("button", { name: /^change: Found in it/ }).tap();
  await dialog.getByRole("textbox").last().fill("joint ill");
  await phone.tap("Save", dialog);
  await expect(noted.first()).toContainText("Found in it: joint ill");
  const download = page.waitForEvent("download");
  await phone.tab("Hand over");
  await phone.tap("Animals");
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  expect(Buffer.concat(chunks).toString("utf8")).toContain("joint ill");
});

test("who comes back from an animal finds the search as it was; who comes from elsewhere begins anew", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  const field = page.getByLabel("Find a tag or a name");
  await field.fill("40");
  await phone.look("40b");
  await page.locator(".top-bar-back").tap();
  await expect(field).toHaveValue("40");
  await expect(phone.row("40b")).toBeVisible();
  await expect(phone.row("41a")).toHaveCount(0);
  await phone.look("40b");
  await page.goBack();
  await expect(field).toHaveValue("40");
  await phone.tab("Watch");
  await phone.tab("Flock");
  await expect(field).toHaveValue("");
  await expect(phone.row("Ewe 41")).toBeVisible();
});

test("who comes back from an animal far down finds the list where it was, the focus on her; the Watch begins at its top", async ({
  page,
}) => {
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  for (let tag = 101; tag <= 136; tag += 1) scribe.note(NOW, { "ewe-came": { tag: String(tag) } });
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.tab("Flock");
  const far = phone.row("Ewe 130").getByRole("link");
  await far.scrollIntoViewIfNeeded();
  await far.tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Ewe 130");
  await page.locator(".top-bar-back").tap();
  await expect(far).toBeInViewport();
  await expect(far).toBeFocused();
  await far.tap();
  await page.goBack();
  await expect(far).toBeFocused();
  await phone.tab("Watch");
  await expect(page.locator("#title")).toBeFocused();
  await phone.tab("Flock");
  await expect(page.locator("#title")).toBeFocused();
  await expect(far).not.toBeInViewport();
});

test("a ewe is found by her tag with the word before it, and none of that name is offered to be added", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  const field = page.getByLabel("Find a tag or a name");
  await field.fill("ewe 40");
  await expect(phone.row("Ewe 40")).toBeVisible();
  await expect(page.getByRole("button", { name: /^Add ewe/ })).toHaveCount(0);
  await field.fill("Ewe 77");
  await phone.tap("Add ewe 77");
  await expect(phone.row("Ewe 77")).toBeVisible();
});
