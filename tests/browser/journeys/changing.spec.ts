// Every past entry can be changed in time and in content; what cannot have been is refused with the reason.
import { Phone } from "../barn";
import { expect, test } from "../watching";

async function aLamb(phone: Phone): Promise<void> {
  await phone.page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  await phone.open();
  await phone.lambing("22");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await phone.page.clock.fastForward("00:20:00");
  await phone.tap("Sucked");
  await phone.tap("More about this lamb");
}

test("a birth in the future and a suck before birth are refused, and nothing is lost", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  const when = page.getByLabel("When");
  const said = page.getByRole("dialog").getByRole("alert");
  await phone.tap("change: Ewe lamb born");
  await when.fill("2026-02-26T03:12");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(said).toContainText("has not come yet");
  await expect(when).toHaveValue("2026-02-26T03:12");
  await when.fill("2026-02-25T03:33");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(said).toContainText("not born at 03:33");
  await when.fill("2026-02-25T02:50");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.getByRole("dialog")).toHaveCount(0);
  await expect(page.locator(".title")).toContainText("born 02:50");

  await phone.tap("change: Sucked");
  await when.fill("2026-02-25T02:30");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(said).toContainText("before its birth at 02:50");
  await when.fill("2026-02-25T03:00");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.locator(".noted", { hasText: "Sucked" })).toContainText("03:00");
});

test("what was noted can be changed: weight, sex, a remark, a tag", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  await phone.tap("change: Weighed 4.0 kg");
  await page.getByRole("dialog").getByLabel("Weight", { exact: true }).fill("4.4");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.locator(".title")).toContainText("4.4 kg");
  await phone.tap("change: Ewe lamb born");
  await phone.tap("Ram lamb", page.getByRole("dialog"));
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.locator(".title")).toContainText("ram lamb");
  await phone.tap("Remark");
  await page.getByLabel("Remark").fill("White ear <b>left</b>");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.locator(".noted-text", { hasText: "White ear <b>left</b>" })).toBeVisible();
  await phone.tap("Tag");
  await page.getByLabel("Tag or mark").fill("Clover");
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Clover");
  await phone.saved();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Clover");
  await expect(page.locator(".noted", { hasText: "Ram lamb born" })).toContainText("changed");
});

test("vigor and belly are noted with their scale, and a death ends the clocks", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  await phone.tap("Vigor");
  await phone.tap(/^2 · on its chest/);
  await expect(page.locator(".noted-text", { hasText: "Vigor 2 of 4, 1 is best" })).toBeVisible();
  await phone.tap("Belly");
  await phone.tap("Hollow");
  await expect(page.locator(".noted-text", { hasText: "Belly hollow" })).toBeVisible();
  await phone.tap("Died");
  await phone.tap("not known");
  await expect(page.getByText("This lamb is dead")).toBeVisible();
  await phone.tab("Watch");
  await expect(phone.row("22a")).toHaveCount(0);
});

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
  await phone.tap("Up, 9a");
  await expect(bar).toContainText("9a: Up");
  const [undo, thumb] = [await bar.boundingBox(), await page.locator(".thumb").boundingBox()];
  expect((undo?.x ?? 0) + (undo?.width ?? 0)).toBeLessThanOrEqual(thumb?.x ?? 0);
});

test("what stands in a field of Practice is kept when the phone goes back", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.tab("More");
  await page.getByRole("link", { name: /^Practice/ }).tap();
  await page.getByLabel("Lambs lost").fill("3");
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("More");
  await phone.saved();
  await page.goForward();
  await expect(page.getByLabel("Lambs lost")).toHaveValue("3");
  await page.getByLabel("Lambs lost").fill("x");
  await page.goBack();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("More");
  await page.goForward();
  await expect(page.getByLabel("Lambs lost")).toHaveValue("3");
});
