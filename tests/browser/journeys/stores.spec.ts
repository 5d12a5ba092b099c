// The stores: counted, used up, refused where there is not as much; colostrum frozen and thawed by the bag.
import { Phone } from "../barn";
import { accessible, expect, fitsTheScreen, test } from "../watching";

test("what is short is told, what cannot be used is refused, and the freezer is counted by the bag", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-01-10T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.tab("Flock");
  for (const tag of ["1", "2", "3"]) {
    await page.getByRole("searchbox").fill(tag);
    await phone.tap(`Add ewe ${tag}`);
  }
  await phone.tab("More");
  await page.getByText("Stores", { exact: true }).tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Stores");
  // 3 ewes: one case of help, four pairs of gloves and a spare pair.
  await expect(phone.row("Gloves")).toContainText("not counted, 10 wanted");
  await phone.tap("Count… gloves");
  const sheet = page.getByRole("dialog");
  await sheet.getByLabel("How much").fill("two");
  await phone.tap("Save", sheet);
  await expect(sheet.getByRole("alert").first()).toContainText("“two”");
  await sheet.getByLabel("How much").fill("2");
  await phone.tap("Save", sheet);
  await expect(phone.row("Gloves")).toContainText("2 of 10");
  await expect(phone.row("Gloves")).toContainText("short of 8");
  await phone.tap("Count… gloves");
  await phone.tap("used", sheet);
  await sheet.getByLabel("How much").fill("7");
  await phone.tap("Save", sheet);
  await expect(sheet.getByRole("alert").first()).toContainText("2");
  await expect(sheet.getByLabel("How much")).toHaveValue("7");
  await page.keyboard.press("Escape");

  // What the shelf counts in another unit says for how many uses; what is enough says so.
  await expect(phone.row("Iodine")).toContainText(/for \d+ dips of a navel/);
  await phone.tap("Count… teats");
  await sheet.getByLabel("How much").fill("50");
  await phone.tap("Save", sheet);
  await expect(phone.row("Teats")).toContainText("enough");
  await expect(page.locator("main")).toContainText(/To have frozen: .* the first day of \d+ lamb/);

  await phone.tap("Freeze colostrum");
  await sheet.getByLabel("Bags").fill("3");
  await sheet.getByLabel("In each").fill("9000");
  await phone.tap("Save", sheet);
  await expect(sheet.locator(".field").filter({ hasText: "In each" }).getByRole("alert")).toContainText("A bag does not hold");
  await sheet.getByLabel("Bags").fill("3");
  await sheet.getByLabel("In each").fill("150");
  await sheet.getByLabel(/^Brix/).fill("24,5");
  await phone.tap("Save", sheet);
  await expect(phone.row("a ewe")).toContainText("3 bags of 150 ml, Brix 24.5");
  await expect(phone.row("a ewe")).toContainText("use this first");
  await phone.tap("Thawed one, a ewe");
  await expect(phone.row("a ewe")).toContainText("2 bags of 150 ml");
  await fitsTheScreen(page);
  // So tall that nothing lies behind the bars.
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
  await phone.saved();
  await page.reload();
  await expect(phone.row("a ewe")).toContainText("2 bags of 150 ml");
  await expect(phone.row("Gloves")).toContainText("2 of 10");
});
