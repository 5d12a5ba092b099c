// With the phone on its side all that is under the thumb can still be reached.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("with the phone on its side what was noted stands beside the buttons, not under them", async ({ page }) => {
  await page.setViewportSize({ width: 844, height: 390 });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("9");
  await phone.tap("Ewe lamb");
  await phone.tap("Up");
  const bar = page.locator(".undo-bar");
  await expect(bar).toContainText("9a: Up");
  await phone.tap("Undo", bar);
  await expect(page.getByRole("button", { name: "Up", exact: true })).toHaveAttribute("aria-pressed", "false");
  await phone.tap("All lambs born");
  await phone.tap("Dipped, 9a");
  await expect(bar).toContainText("9a: Navel dipped");
  const [undo, thumb] = [await bar.boundingBox(), await page.locator(".thumb").boundingBox()];
  expect((undo?.x ?? 0) + (undo?.width ?? 0)).toBeLessThanOrEqual(thumb?.x ?? 0);
});
