// What is typed for a weight: the field says what is allowed, keeps what was typed, and asks when pounds are likely.
import { Phone } from "../barn";
import { expect, fitsTheScreen, test } from "../watching";

const wrong = [
  ["0", /0 kg/],
  ["-3", /3/],
  ["40", /40 kg/],
  ["4..2", "more than one point"],
  ["abc", "is not a number"],
  ["", "Nothing is typed yet"],
] as const;

test("a wrong weight is refused with what is allowed, and stays in the field", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("3");
  await phone.tap("Ram lamb");
  await phone.tap("More about this lamb");
  await phone.tap("Weigh");
  const field = page.getByRole("dialog").getByLabel("Weight", { exact: true });
  for (const [typed, said] of wrong) {
    await field.fill(typed);
    await phone.tap("Save", page.getByRole("dialog"));
    await expect(page.getByRole("dialog").getByRole("alert")).toContainText(said);
    await expect(field).toHaveValue(typed);
  }
  await field.fill("4,2");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.locator(".noted-text", { hasText: "Weighed 4.2 kg" })).toBeVisible();
});

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

test("digits that come to no weight take back what was noted of the first, and what stood before comes back", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("40");
  await phone.tap("Ewe lamb");
  const noted = page.locator(".undo-bar");
  await phone.weigh("4");
  await expect(noted).toContainText("Weighed 4.0 kg");
  await phone.weigh("2");
  await expect(page.locator(".field-error")).toContainText("Between 0.5 and 12 kg is allowed");
  // Nothing stands noted now, though the digits do.
  await expect(noted).not.toContainText("Weighed");
  const less = page.getByRole("button", { name: "delete last digit" });
  await less.tap();
  await less.tap();
  await phone.weigh("3.9");
  await expect(noted).toContainText("Weighed 3.9 kg");
  await phone.saved();

  await page.reload();
  await phone.tap(/^\d+a$/);
  await expect(page.locator(".readout")).toContainText("3.9");
  await less.tap();
  await less.tap();
  await page.waitForTimeout(1000);
  await phone.weigh("5");
  await expect(page.locator(".field-error")).toContainText("Between 0.5 and 12 kg is allowed");
  await phone.tab("Watch");
  await expect(phone.row("40a")).toContainText("3.9 kg");
});

test("a point that was left out is offered, and one tap puts it in", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("41");
  await phone.tap("Ewe lamb");
  await phone.weigh("42");
  await phone.tap("Next lamb");
  // Neither is lost: the weight is still asked for, and the buttons stand under what is said.
  await expect(page.locator(".thumb")).toContainText("The weight is not noted yet");
  await fitsTheScreen(page);
  await phone.tap("4.2 kg?");
  await expect(page.locator(".undo-bar")).toContainText("41a: Weighed 4.2 kg");
  await expect(page.locator(".field-error")).toHaveCount(0);
  await phone.tap("Next lamb");
  await expect(page.getByText("When the next one is born, tap what it is.")).toBeVisible();
  // Sixteen may be pounds, or miss its point: neither is taken for granted.
  await phone.tap("Ram lamb");
  await phone.weigh("16");
  await expect(page.getByRole("button", { name: "1.6 kg?" })).toBeVisible();
  await phone.tap("16 lb?");
  await expect(page.locator(".undo-bar")).toContainText("41b: Weighed 7.26 kg");
  await phone.tap("Next lamb");
  // There was no other: all are born, without another lamb.
  await phone.tap("All lambs born");
  await expect(phone.row("41a")).toContainText("4.2 kg");
});
