// A walk through every screen of the book that is open, also those of its animals, pens and groups.
import { test, type Page } from "@playwright/test";
import alone from "./screens.json" with { type: "json" };
import { expect } from "./watching";

/** The screens that are about no one animal, as the app lists them, and one address that names none. */
export const screens: readonly string[] = [...alone, "#/nowhere"];

/** Goes to a screen and waits until it stands. */
export async function go(page: Page, hash: string): Promise<void> {
  await page.evaluate(
    (hash) =>
      new Promise<void>((done) => {
        if (location.hash === hash) return done();
        addEventListener("hashchange", () => setTimeout(done, 20), { once: true });
        location.hash = hash;
      }),
    hash,
  );
  // On paper a table may stand for its page, with a head of its own.
  await expect(page.getByRole("heading", { level: 1 }).or(page.locator(".paper-table caption")).filter({ visible: true }).first()).toBeVisible();
}

/** Looks at every screen, and at no more than `most` of a kind that links lead to, such as lambs. */
export async function tour(page: Page, look: (hash: string) => Promise<void>, most = 2): Promise<string[]> {
  const waiting = [...screens];
  const kinds = new Map<string, number>();
  for (const hash of waiting) {
    await test.step(hash, async () => {
      await go(page, hash);
      await look(hash);
    });
    const links = page.locator('a[href^="#/"]');
    for (const link of await links.evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""))) {
      const kind = link.replace(/[0-9a-f-]{36}$/, "");
      const found = kinds.get(kind) ?? 0;
      if (kind === link || waiting.includes(link) || found >= most) continue;
      kinds.set(kind, found + 1);
      waiting.push(link);
    }
  }
  return waiting;
}
