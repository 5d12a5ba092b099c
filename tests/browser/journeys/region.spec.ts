// A phone writes times, dates and units as its region does, until the farm chooses.
import { Phone } from "../barn";
import { expect, test } from "../watching";

const at = new Date("2026-02-25T15:12:00-05:00");

test.describe("on a phone set to the United States", () => {
  test.use({ locale: "en-US" });

  test("the book begins in pounds, with twelve hours and the month first; the farm chooses otherwise", async ({ page }) => {
    await page.clock.setFixedTime(at);
    const phone = new Phone(page);
    await phone.open();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(/^3:12\sPM$/i);
    await phone.lambing("14");
    await phone.tap("Ewe lamb");
    await phone.weigh("8.6");
    await expect(page.locator(".undo-bar")).toContainText(/Weighed 8.*lb/);
    await phone.saved();
    await expect(page.locator(".save-mark")).toHaveText(/saved 3:12\spm/);
    await phone.open("#/settings/farm");
    await expect(page.getByRole("button", { name: "lb, fl oz, °F" })).toHaveAttribute("aria-pressed", "true");
    await expect(page.getByRole("button", { name: "as the phone", exact: true })).toHaveAttribute("aria-pressed", "true");
    await phone.tap("06:41");
    await phone.tap("kg, ml, °C");
    await phone.saved();
    await expect(page.locator(".save-mark")).toHaveText("saved 15:12");
    await phone.tab("Watch");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("15:12");
    await expect(phone.row("14a")).toContainText("3.9 kg");
    // What was chosen is in the book: it holds after a reload, whatever the region.
    await page.reload();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("15:12");
  });

  test("the ewe was added with the month first", async ({ page }) => {
    await page.clock.setFixedTime(at);
    const phone = new Phone(page);
    await phone.open();
    await phone.lambing("14");
    await phone.tab("Flock");
    await phone.look("Ewe 14");
    await expect(page.locator(".title-sub")).toContainText("Feb 25, 2026");
  });
});

test.describe("on a phone set to Germany", () => {
  test.use({ locale: "de-DE" });

  test("the book begins in kilograms, with twenty-four hours; twelve are one tap away", async ({ page }) => {
    await page.clock.setFixedTime(at);
    const phone = new Phone(page);
    await phone.open("#/settings/farm");
    await expect(page.getByRole("button", { name: "kg, ml, °C" })).toHaveAttribute("aria-pressed", "true");
    await phone.tap("6:41 am");
    await phone.tab("Watch");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(/^3:12\spm$/);
  });
});
