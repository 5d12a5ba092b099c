// To paper: a pen's card on one page, black on white, with boxes for what is still to do; and the year without its bars.
import { Phone } from "../barn";
import { expect, test } from "../watching";

/** How many pages a PDF has. */
const pages = (pdf: Buffer) => pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

test("a pen's card is one page with the dam, her lambs, their times and what is still to do", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T08:00:00Z") });
  await page.emulateMedia({ colorScheme: "dark" });
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await phone.tap("Pens", page.locator(".thumb"));
  await page.getByRole("link", { name: /Pen 2/ }).first().tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Pen 2");
  const card = page.locator(".on-paper");
  await expect(card).toBeHidden();
  // The button asks the browser to print; what it would print is looked at by its own means.
  await page.evaluate(() => (window.print = () => document.body.setAttribute("data-printed", "yes")));
  await phone.tap("Print its card");
  await expect(page.locator("body")).toHaveAttribute("data-printed", "yes");
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await expect(card).toBeVisible();
  await expect(card).toContainText("Ewe 12");
  await expect(card).toContainText(/12a, ewe lamb, born .*, 3\.6 kg/);
  await expect(card).toContainText("Still to do");
  for (const hidden of [".tab-bar", ".top-bar", ".buttons", ".timeline"]) {
    for (const one of await page.locator(hidden).all()) await expect(one).toBeHidden();
  }
  const ink = await card.locator("h3").first().evaluate((heading) => getComputedStyle(heading).color);
  expect(ink, "black ink, also by night").toBe("rgb(0, 0, 0)");
  const pdf = await page.pdf({ format: "A5" });
  expect(pages(pdf)).toBe(1);
  expect(pdf.length).toBeGreaterThan(5000);
  if (process.env.YEANLING_SHOTS) await page.screenshot({ path: `${process.env.YEANLING_SHOTS}/card.png` });
});

test("the year goes to paper with its figures and charts, without bars and buttons", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T08:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await page.evaluate(() => (location.hash = "#/summary"));
  await expect(page.getByRole("table", { name: "The flock" })).toBeVisible();
  await page.emulateMedia({ media: "print" });
  await expect(page.getByRole("table", { name: "The flock" })).toBeVisible();
  await expect(page.locator(".tab-bar")).toBeHidden();
  await expect(page.getByRole("button", { name: "Print the summary" })).toBeHidden();
  expect(pages(await page.pdf({ format: "A4" }))).toBeLessThanOrEqual(3);
});

test("24 ewes go to paper as a table under the farm and the day, on two pages at most", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T08:00:00Z") });
  await page.emulateMedia({ colorScheme: "dark" });
  const phone = new Phone(page);
  await phone.open();
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("101-124");
  await phone.tap(/^Add 24 ewes/);
  await page.evaluate(() => (location.hash = "#/import-export"));
  await page.evaluate(() => (window.print = () => document.body.setAttribute("data-printed", "yes")));
  await expect(page.locator(".paper-table")).toBeHidden();
  await phone.tap("Print the ewes");
  await expect(page.locator("body")).toHaveAttribute("data-printed", "yes");
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const table = page.getByRole("table", { name: /24 ewes · / });
  await expect(table).toBeVisible();
  await expect(table.getByRole("row")).toHaveCount(25);
  await expect(table.getByRole("row").nth(1)).toContainText("101");
  for (const hidden of [".tab-bar", ".top-bar", ".button", ".title"]) {
    for (const one of await page.locator(hidden).all()) await expect(one).toBeHidden();
  }
  expect(pages(await page.pdf({ format: "A4" }))).toBeLessThanOrEqual(2);
});
