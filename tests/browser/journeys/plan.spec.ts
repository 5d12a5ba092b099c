// A season is planned back from its last day in an empty book, and its plan is taken: by finger, on a phone.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("a plan back from all born before 20 April, from an empty book to the group that it is for", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-09-01T12:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  await page.evaluate(() => (location.hash = "#/plan"));
  await page.getByLabel("Ewes to put to the ram").fill("14");
  await page.getByLabel("Bonding pens there are").fill("2");
  await page.getByRole("button", { name: "All born before" }).first().tap();
  await page.getByLabel("All born before").and(page.locator("input")).fill("2027-04-20");
  const comes = page.locator("section").filter({ has: page.getByRole("heading", { name: "What it comes to" }) });
  await expect(comes).toContainText("Plan A: ram in");
  await expect(comes).toContainText("Pens needed");
  await expect(page.getByRole("button", { name: "Take plan A" })).toBeVisible();
  await phone.tap("Take plan A");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Lambing Mar 2027");
  await expect(page.locator("main")).toContainText("no ram yet, planned for");
  await phone.saved();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Lambing Mar 2027");
});
