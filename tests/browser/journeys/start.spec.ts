// The first visit, and every visit after it with no network at all.
import { accessible, expect, fitsTheScreen, readyOffline, test } from "../watching";

test("the app starts, fits the screen and keeps the rules of accessibility", async ({ page }) => {
  await page.goto("./");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.locator("#splash")).toHaveCount(0);
  await fitsTheScreen(page);
  await accessible(page);
});

test("on a first visit far from a mast the page says what it is and that it comes, before the app is there", async ({ page }) => {
  // The app is as long on its way as it takes to look.
  let arrive = () => {};
  const looked = new Promise<void>((done) => (arrive = done));
  await page.route("**/*.wasm", async (route) => {
    await looked;
    await route.continue();
  });
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto("./", { waitUntil: "commit" });
  await expect(page.locator("#splash")).toContainText("Opening the book…");
  await expect(page.getByText("What you note stays on this phone.")).toBeInViewport({ ratio: 1 });
  await fitsTheScreen(page);
  await accessible(page);
  arrive();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.locator("#splash")).toHaveCount(0);
});

test("after one visit it opens with no network, at any address of its own", async ({ page, context }) => {
  await page.goto("./");
  await readyOffline(page);
  await context.setOffline(true);
  for (const address of ["./", "./#/flock", "./?from=home-screen"]) {
    await page.goto("about:blank");
    await page.goto(address);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  }
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
});

test("the letters are the app's own", async ({ page }) => {
  await page.goto("./");
  await page.evaluate(() => document.fonts.ready);
  const loaded = await page.evaluate(() => [...document.fonts].some((font) => font.status === "loaded"));
  expect(loaded, "a font of the app is loaded").toBe(true);
});
