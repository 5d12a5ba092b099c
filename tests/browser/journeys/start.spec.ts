// The first visit, and every visit after it with no network at all.
import { test as complaining, type Page } from "@playwright/test";
import { accessible, expect, fitsTheScreen, readyOffline, test } from "../watching";

test("the app starts, fits the screen and keeps the rules of accessibility", async ({ page }) => {
  await page.goto("./");
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.locator("#splash")).toHaveCount(0);
  await fitsTheScreen(page);
  await accessible(page);
});

/** Keeps the app on its way until the outcome is called. */
async function far(page: Page): Promise<() => void> {
  let arrive = () => {};
  const looked = new Promise<void>((done) => (arrive = done));
  await page.route("**/*.wasm", async (route) => {
    await looked;
    await route.continue();
  });
  return arrive;
}

test("on a first visit far from a mast the first screen is read before the app is there, and stays as it is", async ({ page }) => {
  const arrive = await far(page);
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto("./", { waitUntil: "commit" });
  const words = page.locator(".empty > p");
  await expect(words).toContainText("What you note stays on this phone.");
  await expect(words).toBeInViewport({ ratio: 1 });
  await fitsTheScreen(page);
  await accessible(page);
  const lambing = page.getByRole("link", { name: "Lambing" });
  await words.evaluate((element) => Object.assign(element, { early: true }));
  await lambing.focus();
  const place = await words.boundingBox();
  arrive();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(/^\d\d:\d\d$/);
  await expect(page.locator("#splash")).toHaveCount(0);
  expect(await words.evaluate((element) => "early" in element), "the words are the same element").toBe(true);
  await expect(lambing).toBeFocused();
  expect(await words.boundingBox(), "nothing has moved").toEqual(place);
  await accessible(page);
});

const leads = [["Set up your farm", "Set up your farm"], ["Flock", "Flock"], ["Try a sample flock", /^\d\d:\d\d$/]] as const;
for (const [name, heading] of leads) {
  test(`${name}, pressed before the app is there, is said, and counts once it is`, async ({ page }) => {
    const arrive = await far(page);
    await page.goto("./", { waitUntil: "commit" });
    await page.getByRole("link", { name: "Help", exact: true }).tap();
    const pressed = page.getByRole("link", { name, exact: true }).or(page.getByRole("button", { name, exact: true }));
    await pressed.tap();
    await expect(page.getByRole("status").filter({ hasText: `Then: ${name}` })).toBeVisible();
    await accessible(page);
    arrive();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText(heading);
    if (name === "Try a sample flock") await expect(page.locator(".row").first()).toBeVisible();
  });
}

test("whoever has a book, or comes to another screen, waits for it and sees no other", async ({ page }) => {
  const arrive = await far(page);
  const waits = async () => {
    await expect(page.locator("#splash")).toContainText("Opening the book…");
    await expect(page.getByText("A lambing book that watches the clock")).toBeVisible();
    await expect(page.locator(".first")).toBeHidden();
    await accessible(page);
  };
  await page.goto("./#/flock", { waitUntil: "commit" });
  await waits();
  await page.evaluate(() => localStorage.setItem("yeanling/look", '"night"'));
  await page.goto("about:blank");
  await page.goto("./", { waitUntil: "commit" });
  await waits();
  // Who chose night is not dazzled.
  await expect(page.locator("html")).toHaveAttribute("data-look", "night");
  arrive();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.locator(".frame")).toHaveCount(1);
});

// What cannot be loaded complains, as it should.
complaining("an app that cannot be loaded says so, and is tried again", async ({ page }) => {
  await page.route("**/*.wasm", (route) => route.abort());
  await page.goto("./");
  const said = page.getByText("The app could not be loaded. Check your signal.");
  await expect(said).toBeVisible();
  await accessible(page);
  await page.unroute("**/*.wasm");
  await page.getByRole("link", { name: "Try again" }).tap();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(said).toHaveCount(0);
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
