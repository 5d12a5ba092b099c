// Off the bottle: the Watch asks in time, every condition says how it stands, and a tap ends it.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";

/** An hour in milliseconds. */
const HOUR = 3_600_000;

/** Lets 35 days and an hour pass; a page's clock leaps no further than 24 days at once. */
async function thirtyFiveDays(page: Page): Promise<void> {
  await page.clock.fastForward(20 * 24 * HOUR);
  await page.clock.fastForward((15 * 24 + 1) * HOUR);
}

async function bottleLamb(phone: Phone, weight: string): Promise<void> {
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh(weight);
  await phone.page.clock.runFor(1_000);
  await phone.tap("All lambs born");
  await phone.look("12a");
  await phone.tap(/^Fed \d/);
  await phone.tab("Watch");
}

test("from the Watch's question to weaned, by the feed maker's rule", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-01T08:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await bottleLamb(phone, "4.0");
  await thirtyFiveDays(page);
  await expect(phone.row("12a")).toContainText("Ready to wean?");
  await phone.row("12a").getByRole("link", { name: "Check" }).tap();
  const weaning = page.locator(".section", { has: page.getByRole("heading", { name: "Weaning" }) });
  await expect(weaning).toContainText("Cannot be told yet, by the feed maker’s rule");
  await expect(weaning.locator(".check")).toContainText([
    "Yes: 35 days old",
    "Not known: weighs 10.0 kg",
    "Not known: eats 250 g of solids on 3 days running",
  ]);

  await phone.tap("Solids eaten");
  const solids = page.getByRole("dialog").getByLabel("Solid feed");
  for (const [typed, said] of [
    ["abc", "is not a number"],
    ["", "Nothing is typed yet"],
    ["-20", "solid feed"],
    ["5000", "too heavy for a day’s solid feed"],
  ] as const) {
    await solids.fill(typed);
    await phone.tap("Save", page.getByRole("dialog"));
    await expect(page.getByRole("dialog").getByRole("alert")).toContainText(said);
    await expect(solids).toHaveValue(typed);
  }
  for (const day of [1, 2, 3]) {
    if (day > 1) {
      await page.clock.fastForward(24 * HOUR);
      await phone.tap("Solids eaten");
    }
    await page.getByRole("dialog").getByLabel("Solid feed").fill("260");
    await phone.tap("Save", page.getByRole("dialog"));
    await expect(page.getByRole("dialog")).toHaveCount(0);
  }
  await expect(weaning.locator(".check").last()).toContainText("Yes:");
  await phone.tap("Weigh it");
  await page.getByRole("dialog").getByLabel("Weight", { exact: true }).fill("10.4");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(weaning).toContainText("It can be weaned, by the feed maker’s rule");
  await expect(page.locator(".chart").last().getByRole("img").first()).toHaveAttribute("aria-label", /10\.4 kg at 37 days/);
  await weaning.getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("Others say");
  await page.keyboard.press("Escape");
  await phone.tap("Weaned");
  await expect(page.locator(".noted-text", { hasText: "Weaned" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Weaning" })).toHaveCount(0);
  await phone.tab("Watch");
  await expect(phone.row("12a")).toHaveCount(0);
});

test("Figures tell weaning by any rule, what is unknown is not met, and wrong input stays", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/figures");
  await phone.tap("Weaning");
  await page.getByLabel("Age in days").fill("36");
  await page.getByLabel("Birth weight").fill("4");
  await page.getByLabel("Weight today").fill("10.5");
  await expect(page.getByText("Cannot be told yet, by the feed maker’s rule")).toBeVisible();
  await phone.tap("Yes");
  await expect(page.getByText("It can be weaned, by the feed maker’s rule")).toBeVisible();
  await page.getByLabel("Weight today").fill("8.5");
  await expect(page.getByText("Not yet, by the feed maker’s rule")).toBeVisible();
  await phone.tap(/^the four-week rule/);
  await expect(page.getByText("It can be weaned, by the four-week rule")).toBeVisible();
  await page.getByLabel("Weight today").fill("105");
  await expect(page.getByText("105 kg is too heavy for a lamb at weaning")).toBeVisible();
  await expect(page.getByLabel("Weight today")).toHaveValue("105");
});
