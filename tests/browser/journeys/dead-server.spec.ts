// In the barn there is no signal: the server is gone for good, and the book is still all there.
import { test } from "@playwright/test";
import { Phone } from "../barn";
import { Site } from "../site";
import { expect, readyOffline } from "../watching";

test("with the server dead, a reload and a link into the app show the same thing", async ({ page }) => {
  const site = await Site.open();
  const phone = new Phone(page);
  await page.goto(site.address);
  await readyOffline(page);
  await site.close();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.tap("Nursed");
  await phone.saved();
  await phone.tap("More about this lamb");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("14b");
  const link = page.url();
  await phone.saved();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("14b");
  await page.goto("about:blank");
  await page.goto(link);
  await expect(page.locator(".noted-text", { hasText: "Nursed" })).toBeVisible();
  await phone.tab("Watch");
  await expect(phone.row("14a")).toContainText("3.9 kg");
});
