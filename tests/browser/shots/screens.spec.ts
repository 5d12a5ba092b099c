// A picture of every screen, by day and by night: `cargo xtask shots` puts them into target/shots/.
import { join } from "node:path";
import { Phone } from "../barn";
import { expect, test } from "../watching";

const folder = process.env.YEANLING_SHOTS ?? join(import.meta.dirname, "../../../target/shots");

/** How to come before each screen, from the sample flock's Watch. */
const screens: Record<string, (phone: Phone) => Promise<void>> = {
  watch: async () => {},
  "lambing-who": async (phone) => phone.tap("Lambing", phone.page.locator(".thumb")),
  "lambing-next": async (phone) => phone.lambing("44"),
  lambing: async (phone) => {
    await phone.lambing("44");
    await phone.tap("Ewe lamb");
    await phone.tap("Next lamb");
    await phone.tap("Ram lamb");
    await phone.weigh("4.2");
    await phone.tap("Navel dipped");
    await phone.tap("No help");
  },
  lamb: async (phone) => phone.look("27a"),
  "lamb-bottle": async (phone) => phone.look("Bramble"),
  why: async (phone) => {
    await phone.look("12c");
    await phone.page.locator(".card").getByRole("button", { name: /^why\?/ }).tap();
  },
  change: async (phone) => {
    await phone.look("12c");
    await phone.tap(/^change: Fed/);
  },
  ewe: async (phone) => {
    await phone.tab("Flock");
    await phone.look("Ewe 12");
  },
  flock: async (phone) => phone.tab("Flock"),
  figures: async (phone) => {
    await phone.calculators();
    await phone.page.getByLabel("Weight", { exact: true }).fill("3.9");
  },
  "figures-window": async (phone) => {
    await phone.calculators();
    await phone.tap("Time left");
    await phone.page.getByRole("textbox").first().fill("1 h 20");
  },
  "figures-bottle": async (phone) => {
    await phone.calculators();
    await phone.tap("Bottle");
    await phone.page.getByRole("textbox").first().fill("10");
  },
  "figures-weaning": async (phone) => {
    await phone.calculators();
    await phone.tap("Weaning");
    await phone.page.getByLabel("Age in days").fill("36");
    await phone.page.getByLabel("Weight today").fill("9");
  },
  "figures-bag": async (phone) => {
    await phone.calculators();
    await phone.tap("Colostrum quality");
    await phone.page.getByRole("textbox", { name: "Brix" }).fill("24");
    await phone.page.getByLabel("Antibody in it").fill("50");
    await phone.page.getByLabel("This feed").fill("250");
  },
  "figures-weather": async (phone) => {
    await phone.calculators();
    await phone.tap("Chill");
    await phone.tap("outdoors");
    await phone.page.getByLabel("Air").fill("5");
    await phone.page.getByLabel("Wind").fill("5");
    await phone.page.getByLabel("Rain in the day").fill("10");
  },
  "bottle-round": async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/bottle-round"));
    await expect(phone.page.getByRole("heading", { level: 1 })).toHaveText("Bottle round");
  },
  "cold-lamb": async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/cold-lamb"));
    await phone.weigh("35.8");
  },
  "cold-lamb-steps": async (phone) => {
    await phone.look("27a");
    await phone.tap("Take its temperature");
    await phone.weigh("36.2");
    await phone.tap("Use this reading");
    await phone.tap("Yes, both");
  },
  "ten-points": async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/settings/care"));
    await phone.tap(/^ten points/);
    await phone.tab("Watch");
    await phone.look("27a");
    await phone.tap(/^Vigor/);
  },
  "lamb-held": async (phone) => {
    await phone.look("12c");
    await phone.tap(/Take its temperature|Cold lamb/);
    await phone.weigh("36.2");
    await phone.tap("Use this reading");
    await phone.tap("Yes, both");
    await phone.tap("Lamb record");
  },
  labor: async (phone) => {
    await phone.row("Ewe 14").locator("a.row-words").tap();
  },
  "labor-part": async (phone) => {
    await phone.row("Ewe 14").locator("a.row-words").tap();
    await phone.tap("What shows");
  },
  "labor-hand": async (phone) => {
    await phone.row("Ewe 14").locator("a.row-words").tap();
    await phone.tap("Check inside");
  },
  later: async (phone) => {
    await phone.look("27a");
    await phone.tap(/^Snooze/);
  },
  "watch-by-place": async (phone) => phone.tap("By place"),
  pens: async (phone) => phone.tap("Pens", phone.page.locator(".thumb")),
  "hand-over": async (phone) => phone.share(),
  season: async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/season"));
    await expect(phone.page.getByRole("heading", { level: 1 })).toHaveText("Season");
  },
  group: async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/season"));
    await phone.page.locator("a.row-words", { hasText: "ram in" }).first().tap();
  },
  stores: async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/supplies"));
    await expect(phone.page.getByRole("heading", { level: 1 })).toHaveText("Supplies");
  },
  race: async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/season"));
    await phone.page.locator("a.row-words", { hasText: "ram in" }).first().tap();
    await phone.tap("Score, scan or mark ewes");
  },
  year: async (phone) => {
    await phone.page.evaluate(() => (location.hash = "#/summary"));
    await expect(phone.page.getByRole("heading", { level: 1 })).toHaveText("Season summary");
  },
  farm: async (phone) => phone.tab("Farm"),
  night: async (phone) => phone.tap("Night clock"),
  help: async (phone) => {
    await phone.tab("Help");
  },
  practice: async (phone) => {
    await phone.tab("Farm");
    await phone.page.getByText("Farm settings", { exact: true }).first().tap();
  },
};

for (const [look, colorScheme] of [["day", "light"], ["night", "dark"]] as const) {
  test(`empty by ${look}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await new Phone(page).open();
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: join(folder, `empty-${look}.png`) });
  });
  for (const [name, go] of Object.entries(screens)) {
    test(`${name} by ${look}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
      const phone = new Phone(page);
      await phone.open();
      await phone.tap("Try a sample flock");
      await go(phone);
      await page.clock.fastForward("00:00:14");
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: join(folder, `${name}-${look}.png`) });
    });
  }
}
