// A phone whose disk is looked into, and taken away, as no person can.
import type { Page } from "@playwright/test";
import { Phone } from "./barn";
import { Profile } from "./profile";
import { expect, test as watched } from "./watching";

/** A test that may have a phone whose storage lies in a folder of its own. */
export const test = watched.extend<{ profile: Profile }>({
  profile: async ({ launchOptions, contextOptions, baseURL }, use) => {
    const phoneLike = { isMobile: true, hasTouch: true, viewport: { width: 390, height: 844 } };
    const profile = await Profile.make({ ...launchOptions, ...contextOptions, ...phoneLike, baseURL });
    await use(profile);
    await profile.forget();
  },
});

/** Notes a lamb of 3.9 kg, the first of a ewe. */
export async function aLamb(phone: Phone, tag = "14"): Promise<void> {
  await phone.lambing(tag);
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("All lambs born");
}

/** Takes one of the two copies away, as clearing does. */
export async function wipe(page: Page, baseURL: string | undefined, storageTypes: string): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  await browser.send("Storage.clearDataForOrigin", { origin: new URL(baseURL ?? "").origin, storageTypes });
}

/** Returns the entries of a kind that either copy holds. */
export function held(page: Page, kind: string): Promise<{ local: number; base: number }> {
  return page.evaluate(async (kind) => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open("yeanling");
      open.onsuccess = () => resolve(open.result);
    });
    const all = database.transaction("entries").objectStore("entries").getAll();
    const lines = await new Promise<string[]>((resolve) => (all.onsuccess = () => resolve(all.result)));
    database.close();
    const keys = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    const of = (lines: (string | null)[]) => lines.filter((line) => line?.includes(kind)).length;
    return { local: of(keys.map((key) => localStorage.getItem(key))), base: of(lines) };
  }, kind);
}

/** Fills local storage to the last letter. */
export async function fillLocalStorage(page: Page): Promise<void> {
  await page.evaluate(() => {
    let piece = "x".repeat(1024 * 1024);
    for (let n = 0; piece.length > 0; n += 1) {
      try {
        localStorage.setItem(`filler/${n}`, piece);
      } catch {
        piece = piece.slice(Math.ceil(piece.length / 2));
        if (piece.length < 2) break;
      }
    }
  });
}

/** Empties local storage, and finds these lambs all the same. */
export async function onlyInIndexedDb(phone: Phone, names: string[]): Promise<void> {
  await phone.page.evaluate(() => localStorage.clear());
  await phone.page.reload();
  await phone.tab("Watch");
  for (const name of names) await expect(phone.row(name)).toContainText("3.9 kg");
}
