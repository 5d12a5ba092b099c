// Counts the taps that the commonest jobs cost, from the Watch on; digits on the keys are not counted.
import { type Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { expect, test } from "../watching";
import { fill } from "./stopwatch";

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

/** A night with a ewe near her day, two bottle lambs that are due, an unfed lamb, and one that no ewe rears. */
async function aNight(phone: Phone): Promise<void> {
  const now = Date.now();
  const scribe = new Scribe();
  const note = (ago: number, event: unknown) => scribe.note(new Date(now - ago), event);
  const [near, dam, other] = ["27", "31", "33"].map((tag) => note(200 * DAY, { "ewe-came": { tag } }));
  const group = note(149 * DAY, { "group-formed": { name: "Field" } });
  note(149 * DAY, { "joined-group": { ewe: near, group } });
  note(148 * DAY, { "ram-in": { group, ram: "Flint", age: "mature" } });
  note(146 * DAY, { "crayon-mark": { ewe: near, color: "blue" } });
  note(145 * DAY, { "ram-out": { group } });
  for (const days of [5, 4]) {
    const lamb = note(days * DAY, { "lamb-born": { dam: other, sex: "ewe", alive: true } });
    note(days * DAY - MINUTE, { weighed: { lamb, kg: 4 } });
    note(DAY, { weighed: { lamb, kg: 5 } });
    note(400 * MINUTE, { fed: { lamb, ml: 200, milk: "replacer", way: "bottle" } });
  }
  const unfed = note(150 * MINUTE, { "lamb-born": { dam, sex: "ram", alive: true } });
  for (const fact of ["all-born", "stood", "navel-dipped"]) note(140 * MINUTE, { [fact]: { lamb: unfed } });
  const alone = note(80 * MINUTE, { "lamb-born": { dam: null, sex: "ewe", alive: true } });
  note(70 * MINUTE, { "navel-dipped": { lamb: alone } });
  note(70 * MINUTE, { stood: { lamb: alone } });
  await fill(phone, scribe.file());
  await phone.tab("Watch");
  phone.taps = 0;
}

/** Counts from the Watch of that night what `go` taps, and prints it. */
function counts(name: string, most: number, go: (phone: Phone) => Promise<void>): void {
  test(`taps for ${name.replaceAll("_", " ")}`, async ({ page }) => {
    const phone = new Phone(page);
    await aNight(phone);
    await go(phone);
    await phone.saved();
    await expect(page.locator(".noted-now")).not.toBeEmpty();
    expect(phone.taps).toBeLessThanOrEqual(most);
    console.log(`taps_${name} ${phone.taps} taps`);
  });
}

counts("first_sign", 2, async (phone) => {
  await phone.tap("Restless, Ewe 27");
});
counts("odd_feed", 2, async (phone) => {
  await phone.tap(/^other amount, /);
  await phone.weigh("140");
  await phone.tap("Save", phone.page.getByRole("dialog"));
});
counts("temperature", 1, async (phone) => {
  await phone.tap("Temperature", phone.row("31a"));
  await phone.weigh("38.9");
});
counts("bottle_round", 2, async (phone) => {
  await phone.row("Bottle round").locator("a.row-words").tap();
  phone.taps += 1;
  await phone.tap("All 2 fed");
});
counts("foster", 2, async (phone) => {
  await phone.tap(/^Foster, /);
  await phone.tap("31", phone.page.getByRole("dialog"));
});

/** A book with one ewe of this tag, on the Watch, and no tap counted yet. */
async function withEwe(page: Page, tag: string): Promise<Phone> {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill(tag);
  await phone.tap(`Add ewe ${tag}`);
  await phone.tab("Watch");
  phone.taps = 0;
  return phone;
}

test("taps for twins with sex, help, navel and weight", async ({ page }) => {
  const phone = await withEwe(page, "27");
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
  const { taps } = phone;
  await expect(phone.row("27a")).toContainText("3.9 kg");
  await expect(phone.row("27b")).toContainText("4.2 kg");
  console.log(`taps_twins ${taps} taps`);
});

test("taps for three lambs found, with their age", async ({ page }) => {
  const phone = await withEwe(page, "31");
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("31");
  await phone.tap("1–6 h");
  for (const lamb of ["Ewe lamb", "Ewe lamb", "Ram lamb"]) await phone.tap(lamb);
  const { taps } = phone;
  await phone.tab("Watch");
  await expect(phone.row("31c")).toHaveCount(1);
  console.log(`taps_found_three ${taps} taps`);
});

test("taps for a dam given later", async ({ page }) => {
  const phone = await withEwe(page, "8");
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("Dam unknown");
  await phone.tap("Ram lamb");
  await phone.tap("All lambs born");
  await page.locator("a.row-words").first().tap();
  phone.taps = 0;
  await phone.tap("Give its dam");
  await phone.tap("8", page.getByRole("dialog"));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("8a");
  console.log(`taps_dam_later ${phone.taps} taps`);
});
