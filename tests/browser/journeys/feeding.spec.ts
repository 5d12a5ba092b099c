// A lamb that needs the bottle: volumes by weight, one tap, and no way to give too much unasked.
import { Phone } from "../barn";
import { expect, test } from "../watching";

async function aLamb(phone: Phone, weight = "4.0"): Promise<void> {
  await phone.open();
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh(weight);
  await phone.tap("All lambs born");
  await expect(phone.row("12a")).toContainText("kg");
  await phone.look("12a");
}

test("a bottle feed is one tap with the volume filled in, counts at once, and is undone by one", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  await expect(page.locator(".card .figure")).toContainText("200 ml");
  await phone.tap("Fed 200");
  // Mellor & Murray 1986: 4.0 kg wants 720 ml in 18 h, housed; AHDB: 800 in 24 h.
  await expect(page.getByText("200 of 400 ml")).toBeVisible();
  await expect(page.getByText("200 of 720 ml")).toBeVisible();
  await expect(page.getByText("200 of 800 ml", { exact: true })).toBeVisible();
  await phone.saved();
  await page.reload();
  await expect(page.getByText("200 of 720 ml")).toBeVisible();
  await phone.tap(/^undo: Fed/);
  await expect(page.getByText("0 of 720 ml").first()).toBeVisible();
});

test("a tube feed stands under its safety list", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  await page.getByText("By tube").tap();
  await expect(page.getByText("holds its head up")).toBeVisible();
  await expect(page.getByText("37 °C")).toBeVisible();
  await phone.tap("All true: tubed 200 ml");
  await expect(page.locator(".noted-text", { hasText: "by tube" })).toBeVisible();
});

test("900 ml to a lamb of 4 kg is refused with the reason, and what was typed stays", async ({ page }) => {
  const phone = new Phone(page);
  await aLamb(phone);
  await phone.tap("Other feed…");
  const volume = page.getByLabel("Volume");
  for (const [typed, said] of [
    ["900", "900 ml is too much at once for 4.0 kg. Give 200 ml (50 ml/kg)."],
    ["1,000", "“1,000” can be read as 1 or as 1000. Type 1 or 1000."],
    ["4..2", "more than one point"],
    ["abc", "is not a number"],
    ["", "Nothing is typed yet"],
    ["0", /0 ml/],
    ["-20", /20/],
  ] as const) {
    await volume.fill(typed);
    await phone.tap("Save");
    await expect(page.getByRole("dialog").getByRole("alert")).toContainText(said);
    await expect(volume).toHaveValue(typed);
  }
  await volume.fill("190,5");
  await phone.tap("Save");
  await expect(page.getByRole("dialog")).toHaveCount(0);
  await expect(page.locator(".noted-text", { hasText: /Fed 19[01](\.5)?\sml/ })).toBeVisible();
});

test("after a feed the next one is due on the Watch, and one tap there notes it", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T01:00:00-05:00") });
  const phone = new Phone(page);
  await aLamb(phone);
  await phone.tap("Fed 200");
  await phone.tab("Watch");
  await page.clock.fastForward("06:05:00");
  await expect(phone.row("12a")).toContainText("Feed 200 ml");
  await phone.row("12a").getByRole("button", { name: "Fed 200 ml, 12a" }).tap();
  await phone.look("12a");
  await expect(page.getByText("400 of 800 ml", { exact: true })).toBeVisible();
});
