// A picture of every screen, by day and by night: `cargo xtask shots` puts them into target/shots/.
import { join } from "node:path";
import { expect, test } from "../watching";

const folder = process.env.YEANLING_SHOTS ?? join(import.meta.dirname, "../../../target/shots");
const screens: Record<string, string> = {
  watch: "./",
};

for (const [look, colorScheme] of [["day", "light"], ["night", "dark"]] as const) {
  for (const [name, address] of Object.entries(screens)) {
    test(`${name} by ${look}`, async ({ page }) => {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await page.goto(address);
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path: join(folder, `${name}-${look}.png`) });
    });
  }
}
