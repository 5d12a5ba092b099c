// The main job without a finger: Tab, Enter, Space and the digits of a keyboard.
import { Phone } from "../barn";
import { Keys } from "../keys";
import { expect, test } from "../watching";

test("from an empty book to a fed lamb by keyboard alone", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" });
  const phone = new Phone(page);
  const keys = new Keys(page);
  await phone.open();
  await test.step("the ewe", async () => {
    await keys.press("Lambing");
    await keys.beganAt("Who is lambing?");
    await keys.to("Her tag");
    await page.keyboard.type("14");
    await keys.press("Add ewe 14");
    await keys.beganAt("Ewe 14 lambing");
  });
  await test.step("the lamb", async () => {
    await keys.press("Ewe lamb");
    await expect(page.getByRole("group", { name: "number pad" })).toBeVisible();
    await keys.beganAt("Ewe 14 lambing");
    await keys.to("1");
    await page.keyboard.type("3,8");
    await page.keyboard.press("Backspace");
    await page.keyboard.type("9");
    await expect(page.locator(".readout-number")).toHaveText("3.9");
    await keys.press("Nursed", "Space");
    await expect(page.getByRole("button", { name: "Nursed", exact: true })).toHaveAttribute("aria-pressed", "true");
    expect((await keys.focus()).name, "what was pressed keeps the focus").toBe("Nursed");
    await phone.saved();
    await keys.press("All lambs born");
    await keys.beganAt(/./);
  });
  await test.step("a duty done on the Watch", async () => {
    await expect(phone.row("14a")).toContainText("Dip the navel");
    await keys.press("Dipped, 14a");
    await expect(phone.row("14a").locator("[data-done=true]")).toHaveText(["Dipped"]);
    await keys.isSomewhere();
  });
  await test.step("a feed, noted on a sheet", async () => {
    await keys.press(/^14a [A-Z]/);
    await keys.beganAt("14a");
    await keys.press("Other feed");
    await expect(page.getByRole("dialog")).toBeVisible();
    // Digits go to the keys, wherever the focus is.
    await page.keyboard.type("150");
    await keys.press("Save");
    await expect(page.getByRole("dialog")).toHaveCount(0);
    await expect.poll(async () => (await keys.focus()).name, "back where the sheet was opened").toBe("Other feed");
    await expect(page.locator(".noted-text", { hasText: "150 ml" })).toBeVisible();
  });
  await test.step("undo", async () => {
    await keys.press("Undo");
    await expect(page.locator(".noted-text > s", { hasText: "150 ml" })).toBeVisible();
    await keys.isSomewhere();
  });
  await test.step("a sheet left with Escape", async () => {
    await keys.press("Other feed", "Space");
    await expect(page.getByRole("dialog")).toBeVisible();
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);
    expect((await keys.focus()).name, "back where the sheet was opened").toBe("Other feed");
  });
});
