// What was typed is kept: on the keys when the phone dies, in a field when the phone goes back.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("a weight typed on the keys is there after the phone dies, and can be corrected on the keys", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("3");
  await phone.tap("Ram lamb");
  await phone.weigh("40");
  await expect(page.getByRole("alert").filter({ hasText: "40 kg" })).toBeVisible();
  await page.getByRole("button", { name: "delete last digit" }).tap();
  await phone.weigh(".5");
  await expect(page.locator(".undo-bar")).toContainText("Weighed 4.5 kg");
  await phone.saved();
  await page.reload();
  await phone.tap("3a");
  await expect(page.locator(".readout")).toContainText("4.5");
  await page.getByRole("button", { name: "delete last digit" }).tap();
  await phone.weigh("7");
  await phone.tap("All lambs born");
  await expect(phone.row("3a")).toContainText("4.7 kg");
  await phone.look("3a");
  await expect(page.locator(".noted-text", { hasText: "Weighed" })).toHaveCount(1);
});

test("what stands in a field of Farm settings is kept when the phone goes back", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.tab("Farm");
  await page.getByRole("link", { name: /^Farm settings/ }).tap();
  await page.getByRole("link", { name: /^Care and culling/ }).tap();
  await page.getByLabel("Lambs lost").fill("3");
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Farm settings");
  await phone.saved();
  await page.goForward();
  await expect(page.getByLabel("Lambs lost")).toHaveValue("3");
  await page.getByLabel("Lambs lost").fill("x");
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Farm settings");
  await page.goForward();
  await expect(page.getByLabel("Lambs lost")).toHaveValue("3");
});
