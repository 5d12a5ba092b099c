// Counts the taps that the commonest jobs cost, from the Watch on; digits on the keys are not counted.
import { type Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";

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
