// Every screen keeps the rules of accessibility by day and by night, and fits a narrow phone.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { tour } from "../tour";
import { accessible, expect, fitsTheScreen as isNoWider, noWordIsBroken, test } from "../watching";

/** What is written fits the screen, in whole words. */
async function fitsTheScreen(page: Page): Promise<void> {
  await isNoWider(page);
  await noWordIsBroken(page);
}

for (const [look, colorScheme] of [["day", "light"], ["night", "dark"]] as const) {
  test(`every screen keeps the rules of accessibility by ${look}`, async ({ page }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    // So tall that no row lies behind the bars: what is scrolled under them is not what is looked at here.
    await page.setViewportSize({ width: 390, height: 7000 });
    const phone = new Phone(page);
    await phone.open();
    await phone.tap("Try a sample flock");
    await tour(page, async () => {
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      await page.setViewportSize({ width: 390, height: Math.max(height + 200, 7000) });
      await accessible(page);
      await fitsTheScreen(page);
    }, 1);
    await test.step("lamb, its reasons and its sheets", async () => {
      await phone.tab("Watch");
      await page.locator("a.row-words").first().tap();
      await accessible(page);
      for (const opens of [/^why/, "Vigor", /^(Other feed|Already fed)/, /^change/]) {
        await page.getByRole("button", { name: opens }).first().tap();
        await expect(page.getByRole("dialog")).toBeVisible();
        await accessible(page);
        await page.keyboard.press("Escape");
      }
    });
    await test.step("every figure", async () => {
      await phone.calculators();
      for (const which of ["Bottle", "Weaning", "Colostrum quality", "Chill"]) {
        await phone.tap(which);
        await accessible(page);
      }
    });
    await test.step("a bottle lamb with its charts", async () => {
      await phone.tab("Flock");
      await phone.look("Bramble");
      await accessible(page);
    });
    await test.step("cold lamb, from the reading to what to do", async () => {
      await page.evaluate(() => (location.hash = "#/cold-lamb"));
      await phone.weigh("36.0");
      await phone.tap("Use this reading");
      await accessible(page);
      await phone.tap("over 5 h old");
      await accessible(page);
      await phone.tap("Yes, both");
      await accessible(page);
      await phone.tap("Start over");
    });
    await test.step("ewe", async () => {
      await phone.tab("Flock");
      await phone.look("Ewe 5");
      await accessible(page);
      for (const opens of ["Medicine", "Sold or gone", "Crayon mark"]) {
        await phone.tap(opens);
        await expect(page.getByRole("dialog")).toBeVisible();
        await accessible(page);
        await page.keyboard.press("Escape");
      }
    });
    await test.step("lambing", async () => {
      await phone.lambing("44");
      await accessible(page);
      await phone.tap("Ewe lamb");
      await accessible(page);
    });
  });
}

test("no screen is wider than a phone of 320 pixels", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await tour(page, () => fitsTheScreen(page), 1);
  await phone.calculators();
  for (const which of ["Bottle", "Weaning", "Colostrum quality", "Chill"]) {
    await phone.tap(which);
    await fitsTheScreen(page);
  }
  await phone.tab("Flock");
  await phone.look("Bramble");
  await fitsTheScreen(page);
  await phone.tab("Watch");
  await page.locator("a.row-words").first().tap();
  await fitsTheScreen(page);
  await phone.lambing("44");
  await phone.tap("Ewe lamb");
  await fitsTheScreen(page);
});
