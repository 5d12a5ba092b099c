// Other tabs of the same phone: one that will not let go, one of another version, two that note at once.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { aLamb, onlyInIndexedDb, test } from "../disk";
import { Scribe } from "../scribe";
import { expect } from "../watching";

/** Opens another page of the origin that is not the app, to play a tab of another version. */
async function otherTab(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.route("**/favicon.ico", (route) => route.fulfill({ status: 204 }));
  await other.goto("./worker.js");
  return other;
}

test("a tab that holds on to the book: it is said, and all is saved once that tab closes", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.saved();
  await page.goto("about:blank");
  const other = await otherTab(page);
  await other.evaluate(
    () =>
      new Promise<void>((resolve) => {
        // As a tab of an old version: it holds the database while its version is to change, and does not give way.
        const open = indexedDB.open("yeanling");
        open.onsuccess = () => {
          (window as unknown as { held: IDBDatabase }).held = open.result;
          indexedDB.deleteDatabase("yeanling").onblocked = () => resolve();
        };
      }),
  );
  await page.bringToFront();
  await phone.open();
  await aLamb(phone);
  await expect(page.getByRole("alert").filter({ hasText: "close all other tabs" })).toBeVisible({ timeout: 12_000 });
  await expect(page.locator(".save-mark")).toHaveAttribute("data-state", "not-saved");
  await other.close();
  await phone.saved();
  await expect(page.getByText("close all other tabs")).toHaveCount(0);
  await onlyInIndexedDb(phone, ["14a"]);
});

test("a newer version in another tab need not wait for this one, and this one keeps on saving", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  const other = await otherTab(page);
  const opened = await other.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const open = indexedDB.open("yeanling", 7);
        open.onblocked = () => resolve("blocked");
        open.onsuccess = () => resolve(`version ${open.result.version}`);
      }),
  );
  expect(opened).toBe("version 7");
  await page.bringToFront();
  await aLamb(phone, "15");
  await phone.saved();
  // A roll-back: this version starts with the newer one's database.
  await page.reload();
  await phone.saved();
  await aLamb(phone, "16");
  await phone.saved();
  await onlyInIndexedDb(phone, ["14a", "15a", "16a"]);
});

test("two tabs noting at once: both hold all of it, and so does the disk", async ({ page, context }) => {
  const phones = [new Phone(page), new Phone(await context.newPage())];
  for (const phone of phones) await phone.open();
  // Only one of two tabs is painted, and a real tap waits for paint: here the buttons are pressed by their events.
  const press = (phone: Phone, name: string) =>
    phone.page.getByRole("button", { name, exact: true }).or(phone.page.getByRole("link", { name, exact: true })).first().dispatchEvent("click");
  const note = async (phone: Phone, tags: string[]) => {
    for (const tag of tags) {
      await phone.page.evaluate(() => (location.hash = "#/lambing"));
      await phone.page.getByLabel("Her tag").fill(tag);
      for (const name of [`Add ewe ${tag}`, "Ewe lamb", "3", "point", "9", "All lambs born"]) await press(phone, name);
    }
    await phone.saved();
  };
  await Promise.all([note(phones[0], ["11", "12", "13", "14"]), note(phones[1], ["21", "22", "23", "24"])]);
  const flocks: string[][] = [];
  for (const phone of phones) {
    await phone.page.bringToFront();
    flocks.push(await phone.flock());
  }
  expect(flocks[0]).toEqual(flocks[1]);
  await phones[0].page.bringToFront();
  await onlyInIndexedDb(phones[0], ["11a", "12a", "13a", "14a", "21a", "22a", "23a", "24a"]);
});

test("a book taken in by one tab comes to the other in a few pieces, not an entry at a time", async ({ page, context }) => {
  const phone = new Phone(page);
  await phone.open();
  const other = new Phone(await context.newPage());
  await other.open("#/share");
  await other.saved();
  const entries = other.row("This phone");
  await other.page.evaluate(() => {
    const said: string[] = [];
    Object.assign(globalThis, { said });
    new MutationObserver(() => {
      const now = document.body.innerText.match(/\d+ entr(y|ies),/)?.[0] ?? "";
      if (now !== said.at(-1)) said.push(now);
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
  const scribe = new Scribe();
  for (let n = 1; n <= 300; n += 1) scribe.note(new Date(2026, 0, 1, 0, n), { "ewe-came": { tag: `${n}` } });
  await page.bringToFront();
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.saved();
  await other.page.bringToFront();
  await expect(entries).toContainText("300 entries");
  const said = await other.page.evaluate(() => (globalThis as unknown as { said: string[] }).said);
  expect(said.length, said.join(" ")).toBeLessThan(12);
});
