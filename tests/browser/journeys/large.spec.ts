// Who needs larger type, wider spacing, stronger contrast or less motion gets it on every screen, and loses nothing.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { tour } from "../tour";
import { contrasting, expect, nothingIsCut, test } from "../watching";

/** Opens the sample flock, with a reader's own style over the page's. */
async function openWith(page: Page, style = ""): Promise<Phone> {
  await page.emulateMedia({ reducedMotion: "reduce" });
  // Just before midnight, when most times to come are longest: they say which day.
  await page.clock.install({ time: new Date("2026-02-24T23:55:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await page.evaluate((style) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(style);
    document.adoptedStyleSheets = [sheet];
  }, style);
  return phone;
}

/** Opens one sheet of reasons, one with a field, and one with choices, and looks at each. */
async function sheets(phone: Phone, look: () => Promise<void>): Promise<void> {
  const { page } = phone;
  await phone.tab("Flock");
  await phone.look("Bramble");
  for (const opens of [/^why/, "Other feed", /^change/]) {
    await page.getByRole("button", { name: opens }).first().tap();
    await expect(page.getByRole("dialog")).toBeVisible();
    await look();
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);
  }
}

// Success criteria 1.4.4 and 1.4.12 of the WCAG 2.2.
for (const [what, style] of Object.entries({
  "type of twice the size": ":root { font-size: 200% !important }",
  "wide spacing":
    "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }" +
    "p { margin-block-end: 2em !important }",
})) {
  test(`with ${what} nothing is cut off on any screen`, async ({ page }) => {
    test.setTimeout(120_000);
    const phone = await openWith(page, style);
    const seen = await tour(page, () => nothingIsCut(page));
    expect(seen.length, "screens seen").toBeGreaterThan(25);
    await sheets(phone, () => nothingIsCut(page));
    await page.setViewportSize({ width: 320, height: 640 });
    await tour(page, () => nothingIsCut(page), 1);
  });
}

for (const [what, media] of Object.entries({
  "more contrast by day": { contrast: "more", colorScheme: "light" },
  "more contrast by night": { contrast: "more", colorScheme: "dark" },
  "the phone's own few colors, light": { forcedColors: "active", colorScheme: "light" },
  "the phone's own few colors, dark": { forcedColors: "active", colorScheme: "dark" },
} as const)) {
  test(`with ${what} every screen can be read`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width: 390, height: 7000 });
    const phone = await openWith(page);
    await page.emulateMedia({ reducedMotion: "reduce", ...media });
    const inks = await page.evaluate(() => {
      const style = getComputedStyle(document.documentElement);
      return ["--ink", "--ink-soft"].map((ink) => style.getPropertyValue(ink));
    });
    expect(inks[1], "no ink is soft").toBe(inks[0]);
    await tour(page, () => contrasting(page), 1);
    await sheets(phone, () => contrasting(page));
  });
}

test("who asks for less motion sees none", async ({ page }) => {
  test.setTimeout(120_000);
  await page.addInitScript(() => {
    const moved: string[] = [];
    Object.assign(window, { moved });
    const note = () => {
      for (const animation of document.getAnimations()) {
        const effect = animation.effect as KeyframeEffect;
        const frames = effect.getKeyframes().flatMap((frame) => Object.keys(frame));
        const changed = frames.filter((name) => !["offset", "computedOffset", "easing", "composite"].includes(name));
        // Keys that do not take a tap for a moment do not move.
        if (changed.some((name) => name !== "pointerEvents")) moved.push(`${effect.target?.className}: ${changed}`);
      }
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
  });
  const phone = await openWith(page);
  await sheets(phone, async () => {});
  await phone.lambing("44");
  await phone.tap("Ewe lamb");
  await phone.weigh("4");
  await phone.tap("Undo");
  await tour(page, async () => {}, 1);
  expect(await page.evaluate(() => (window as unknown as { moved: string[] }).moved)).toEqual([]);
});
