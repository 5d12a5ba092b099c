// The disk makes trouble: refused, held, wiped, taken away, spoiled. What was noted is there, or it is said that it is not.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { aLamb, fillLocalStorage, held, onlyInIndexedDb, test, wipe } from "../disk";
import { expect } from "../watching";

/** A page that breaks on purpose complains in its console; what else it must do is watched for as ever. */
const breaking = test.extend<{ watched: void }>({ watched: [async ({}, use) => use(), { auto: true }] });

/** Lets the next thing that the page draws fail, as a fault in a view does; only that one, so that the page can say so. */
async function breakTheNextDrawing(page: Page): Promise<void> {
  await page.evaluate(() => {
    const { cloneNode } = Node.prototype;
    const { createElement, createElementNS } = Document.prototype;
    const { put } = IDBObjectStore.prototype;
    const atTheBreak = { local: 0, put: 0 };
    Object.assign(globalThis, { atTheBreak });
    let puts = 0;
    IDBObjectStore.prototype.put = function (...given) {
      puts += 1;
      return put.apply(this, given);
    };
    const keys = () => Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/")).length;
    const before = (() => {
      try {
        return keys();
      } catch {
        return NaN;
      }
    })();
    const breaks = (): never => {
      Object.assign(Node.prototype, { cloneNode });
      Object.assign(Document.prototype, { createElement, createElementNS });
      if (!Number.isNaN(before)) Object.assign(atTheBreak, { local: keys() - before, put: puts });
      throw new DOMException("nothing is drawn today");
    };
    // Elements are made new, or like one that was made before.
    Object.assign(Node.prototype, { cloneNode: breaks });
    Object.assign(Document.prototype, { createElement: breaks, createElementNS: breaks });
  });
}

test("IndexedDB refused: it is said, the book lives on in local storage, and is healed once the disk is", async ({ profile }) => {
  await profile.spoilIndexedDb();
  let { phone } = await profile.start();
  await phone.open();
  const warning = (phone: Phone) => phone.page.getByRole("alert").filter({ hasText: "less safely" });
  await expect(warning(phone)).toBeVisible();
  await aLamb(phone);
  await expect(phone.page.locator(".save-mark")).toHaveAttribute("data-state", "not-saved");
  await phone.page.reload();
  await phone.tab("Watch");
  await expect(phone.row("14a")).toContainText("3.9 kg");
  await expect(warning(phone)).toBeVisible();
  await profile.stop();

  await profile.mendIndexedDb();
  ({ phone } = await profile.start());
  await phone.open();
  await phone.saved();
  await expect(warning(phone)).toHaveCount(0);
  await onlyInIndexedDb(phone, ["14a"]);
});

test("both refused: a standing warning on every screen, and one tap saves the whole book as a file", async ({ profile }) => {
  await profile.forbidStorage();
  const { phone } = await profile.start();
  await phone.open();
  const warning = phone.page.getByRole("alert").filter({ hasText: "lost when this page closes" });
  await expect(warning).toBeVisible();
  await aLamb(phone);
  await expect(phone.row("14a")).toContainText("3.9 kg");
  for (const tab of ["Flock", "Season", "Help", "Farm", "Watch"]) {
    await phone.tab(tab);
    await expect(warning).toBeVisible();
  }
  await expect(phone.page.locator(".save-mark")).toHaveAttribute("data-state", "not-saved");
  const download = phone.page.waitForEvent("download");
  await phone.tap("Save as a file", warning);
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const book = JSON.parse(Buffer.concat(chunks).toString());
  expect(book.entries.length).toBe(book.count);
  expect(JSON.stringify(book.entries)).toContain('"tag":"14"');
  expect(JSON.stringify(book.entries)).toContain("3.9");
});

breaking("a drawing that breaks: what was tapped is in both copies, and the banner says only what is true", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  await phone.lambing("15");
  await phone.saved();
  const before = await held(page, '"ram"');
  expect(before).toEqual({ local: 0, base: 0 });
  await breakTheNextDrawing(page);
  await phone.tap("Ram lamb");
  const banner = page.locator(".broke").last();
  await expect(banner).toBeVisible();
  // The app may never come to anything else: both copies have what was tapped when the drawing breaks.
  const atTheBreak = await page.evaluate(() => (globalThis as unknown as { atTheBreak: object }).atTheBreak);
  expect(atTheBreak).toEqual({ local: 1, put: 1 });
  await expect(banner).toContainText("ook for your last tap");
  expect(await held(page, '"ram"')).toEqual({ local: 1, base: 1 });
  await page.evaluate(() => localStorage.clear());
  await phone.tap("Open it again");
  await expect(banner).toHaveCount(0);
  await phone.tab("Watch");
  await expect(phone.row("15a")).toBeVisible();
});

breaking("a drawing that breaks where nothing is kept: the banner says that it is lost, not that it is safe", async ({ profile }) => {
  await profile.forbidStorage();
  const { phone } = await profile.start();
  await phone.open();
  await phone.lambing("15");
  await breakTheNextDrawing(phone.page);
  await phone.tap("Ram lamb");
  const banner = phone.page.locator(".broke");
  await expect(banner).toContainText("This phone does not keep the book");
  await expect(banner).not.toContainText("saved");
});

test("the notice of a book that is not kept saves the real book, also while one looks round", async ({ profile }) => {
  await profile.forbidStorage();
  const { phone } = await profile.start();
  await phone.open();
  await aLamb(phone);
  await phone.tab("Farm");
  await phone.tap("Try a sample flock");
  const warning = phone.page.getByRole("alert").filter({ hasText: "lost when this page closes" });
  const download = phone.page.waitForEvent("download");
  await phone.tap("Save as a file", warning);
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const book = JSON.parse(Buffer.concat(chunks).toString());
  const tags = book.entries.flatMap(({ event }: { event: { "ewe-came"?: { tag: string } } }) => event["ewe-came"]?.tag ?? []);
  expect(tags).toEqual(["14"]);
});

test("with no book of one's own, the notice offers none of the sample flock", async ({ profile }) => {
  await profile.forbidStorage();
  const { phone } = await profile.start();
  await phone.open();
  await phone.tap("Try a sample flock");
  const warning = phone.page.getByRole("alert").filter({ hasText: "lost when this page closes" });
  await expect(warning).toBeVisible();
  await expect(warning.getByRole("button")).toHaveCount(0);
});

test("IndexedDB wiped while the app is open: the next entry puts the whole book back", async ({ page, baseURL }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  await wipe(page, baseURL, "indexeddb");
  await aLamb(phone, "15");
  await phone.saved();
  await onlyInIndexedDb(phone, ["14a", "15a"]);
});

test("lines broken in both copies are kept, reported and saved as a file; one whole in the other copy is healed", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await aLamb(phone, "15");
  await phone.saved();
  await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open("yeanling");
      open.onsuccess = () => resolve(open.result);
    });
    const keys = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    const born = keys.filter((key) => localStorage.getItem(key)?.includes("lamb-born")).sort();
    const id = (key: string) => key.slice("yeanling/entry/".length);
    const store = database.transaction("entries", "readwrite").objectStore("entries");
    // Whole in one copy, in either; torn in both; and what is not even a text.
    localStorage.setItem(born[0], '{"torn":"here');
    store.put('{"torn":"there', id(born[1]));
    localStorage.setItem("yeanling/entry/stray", '{"torn":"stray');
    store.put({ torn: "no text" }, "other");
    await new Promise((resolve) => (store.transaction.oncomplete = resolve));
    database.close();
  });
  await page.reload();
  await phone.tab("Watch");
  await expect(page.getByText("2 lines of the book could not be read")).toBeVisible();
  for (const name of ["14a", "15a"]) await expect(phone.row(name)).toContainText("3.9 kg");
  await phone.saved();
  for (const _ of ["now", "in every later visit"]) {
    await phone.share();
    const download = page.waitForEvent("download");
    await phone.tap("Save the unreadable entries");
    const chunks: Buffer[] = [];
    for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
    const lines = Buffer.concat(chunks).toString().split("\n").sort();
    expect(lines).toEqual(['{"torn":"here', '{"torn":"no text"}', '{"torn":"stray', '{"torn":"there']);
    await page.reload();
    await phone.saved();
  }
  // The lines in the place of which the other copy had whole ones gave way to these: either copy alone is enough.
  await page.evaluate(() => {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    for (const key of keys) if (key !== "yeanling/entry/stray") localStorage.removeItem(key);
  });
  await page.reload();
  await phone.tab("Watch");
  for (const name of ["14a", "15a"]) await expect(phone.row(name)).toContainText("3.9 kg");
});

test("a full local storage lets whole entries go, never a broken line", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  await page.evaluate(() => {
    localStorage.setItem("yeanling/entry/00000000-stray", '{"torn":');
    let piece = "x".repeat(1024 * 1024);
    for (let n = 0; piece.length > 1; n += 1) {
      try {
        localStorage.setItem(`filler/${n}`, piece);
      } catch {
        piece = piece.slice(piece.length / 2);
      }
    }
  });
  await aLamb(phone, "15");
  await phone.saved();
  expect(await page.evaluate(() => localStorage.getItem("yeanling/entry/00000000-stray"))).toBe('{"torn":');
  await page.reload();
  await phone.tab("Watch");
  for (const name of ["14a", "15a"]) await expect(phone.row(name)).toContainText("3.9 kg");
});

test("the only whole copy of an entry stays in local storage, however full that is", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  await fillLocalStorage(page);
  // The other copy of the birth is torn, and there is no room to put that line aside.
  await page.evaluate(async () => {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    const born = keys.find((key) => localStorage.getItem(key)?.includes("lamb-born")) ?? "";
    const database = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open("yeanling");
      open.onsuccess = () => resolve(open.result);
    });
    const store = database.transaction("entries", "readwrite").objectStore("entries");
    store.put('{"torn":"there', born.slice("yeanling/entry/".length));
    await new Promise((resolve) => (store.transaction.oncomplete = resolve));
    database.close();
  });
  await page.reload();
  await phone.tab("Watch");
  await aLamb(phone, "15");
  await aLamb(phone, "16");
  await phone.saved();
  await page.waitForTimeout(500);
  await page.reload();
  await phone.tab("Watch");
  for (const name of ["14a", "15a", "16a"]) await expect(phone.row(name)).toContainText("3.9 kg");
});

test("an entry under another's name is no entry: it is kept aside, and takes the place of none", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  const line = await page.evaluate(async () => {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    const line = localStorage.getItem(keys.find((key) => localStorage.getItem(key)?.includes("ewe-came")) ?? "") ?? "";
    const database = await new Promise<IDBDatabase>((resolve) => {
      const open = indexedDB.open("yeanling");
      open.onsuccess = () => resolve(open.result);
    });
    const store = database.transaction("entries", "readwrite").objectStore("entries");
    store.put(line.replace("14", "99").replace(/"id":"[^"]*"/, '"id":"019c0000-0000-7000-8000-0000000000ff"'), "another");
    await new Promise((resolve) => (store.transaction.oncomplete = resolve));
    database.close();
    return line;
  });
  expect(line).toContain('"14"');
  await page.reload();
  expect((await phone.flock()).join()).not.toContain("99");
  await expect(page.getByText("One line of the book could not be read")).toBeVisible();
});

test("everything taken away: the empty app offers to open the last saved file, and the flock is back", async ({ page, baseURL }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await phone.saved();
  const before = await phone.flock();
  const { text } = await phone.handOver();
  await page.goto("about:blank");
  await wipe(page, baseURL, "all");
  await phone.open();
  await expect(page.getByText("Nothing to watch yet")).toBeVisible();
  await phone.tap("Open a saved book");
  await phone.openFile(text);
  await phone.tap("Add");
  await phone.saved();
  expect(await phone.flock()).toEqual(before);
});
