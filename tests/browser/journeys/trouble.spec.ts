// The disk makes trouble: refused, held, wiped, taken away, spoiled. What was noted is there, or it is said that it is not.
import { type Page } from "@playwright/test";
import { Phone } from "../barn";
import { Profile } from "../profile";
import { Scribe } from "../scribe";
import { expect, test as watched } from "../watching";

const test = watched.extend<{ profile: Profile }>({
  profile: async ({ launchOptions, contextOptions, baseURL }, use) => {
    const phoneLike = { isMobile: true, hasTouch: true, viewport: { width: 390, height: 844 } };
    const profile = await Profile.make({ ...launchOptions, ...contextOptions, ...phoneLike, baseURL });
    await use(profile);
    await profile.forget();
  },
});

async function aLamb(phone: Phone, tag = "14"): Promise<void> {
  await phone.lambing(tag);
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("All lambs born");
}

/** Takes one of the two copies away, as clearing does. */
async function wipe(page: Page, baseURL: string | undefined, storageTypes: string): Promise<void> {
  const browser = await page.context().newCDPSession(page);
  await browser.send("Storage.clearDataForOrigin", { origin: new URL(baseURL ?? "").origin, storageTypes });
}

/** Opens another page of the origin that is not the app, to play a tab of another version. */
async function otherTab(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.route("**/favicon.ico", (route) => route.fulfill({ status: 204 }));
  await other.goto("./worker.js");
  return other;
}

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

/** Returns the entries of a kind that either copy holds. */
function held(page: Page, kind: string): Promise<{ local: number; base: number }> {
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
async function fillLocalStorage(page: Page): Promise<void> {
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

async function onlyInIndexedDb(phone: Phone, names: string[]): Promise<void> {
  await phone.page.evaluate(() => localStorage.clear());
  await phone.page.reload();
  await phone.tab("Watch");
  for (const name of names) await expect(phone.row(name)).toContainText("3.9 kg");
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
  for (const tab of ["Flock", "Figures", "Hand over", "More", "Watch"]) {
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
  await phone.tab("More");
  await phone.tap("Look round a made-up flock");
  const warning = phone.page.getByRole("alert").filter({ hasText: "lost when this page closes" });
  const download = phone.page.waitForEvent("download");
  await phone.tap("Save as a file", warning);
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const book = JSON.parse(Buffer.concat(chunks).toString());
  const tags = book.entries.flatMap(({ event }: { event: { "ewe-came"?: { tag: string } } }) => event["ewe-came"]?.tag ?? []);
  expect(tags).toEqual(["14"]);
});

test("with no book of one's own, the notice offers none of the made-up flock", async ({ profile }) => {
  await profile.forbidStorage();
  const { phone } = await profile.start();
  await phone.open();
  await phone.tap("Look round a made-up flock");
  const warning = phone.page.getByRole("alert").filter({ hasText: "lost when this page closes" });
  await expect(warning).toBeVisible();
  await expect(warning.getByRole("button")).toHaveCount(0);
});

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
    await phone.tab("Hand over");
    const download = page.waitForEvent("download");
    await phone.tap("Save the unread lines");
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
  await phone.tap("Add to my book");
  await phone.saved();
  expect(await phone.flock()).toEqual(before);
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
  await other.open("#/hand-over");
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
  await phone.tap("Add to my book");
  await phone.saved();
  await other.page.bringToFront();
  await expect(entries).toContainText("300 entries");
  const said = await other.page.evaluate(() => (globalThis as unknown as { said: string[] }).said);
  expect(said.length, said.join(" ")).toBeLessThan(12);
});

test("the browser is asked to keep the book for good once a lamb is in it, and its answer is shown", async ({ profile, baseURL }) => {
  const { phone, context } = await profile.start();
  const browser = await context.newCDPSession(phone.page);
  await context.addInitScript(() => {
    const { storage } = navigator;
    const persist = storage.persist.bind(storage);
    storage.persisted = async () => sessionStorage.getItem("answer") === "yes";
    storage.persist = async () => {
      sessionStorage.setItem("asked", `${Number(sessionStorage.getItem("asked")) + 1}`);
      const answer = await persist();
      sessionStorage.setItem("answer", answer ? "yes" : "no");
      return answer;
    };
  });
  const origin = new URL(baseURL ?? "").origin;
  await phone.open();
  const asked = () => phone.page.evaluate(() => Number(sessionStorage.getItem("asked")));
  await phone.lambing("13");
  await phone.saved();
  expect(await asked(), "for a ewe alone").toBe(0);
  await aLamb(phone, "14");
  await aLamb(phone, "15");
  await phone.saved();
  await expect.poll(asked, "once for the first lamb").toBe(1);
  const row = (name: string) => phone.row(name);
  await phone.tab("Hand over");
  await expect(row("For good")).toContainText("may clear it if the phone runs out of room");
  await expect(row("Room")).toContainText(/about [\d.]+ MB, with the app, of \d+ MB/);
  await expect(row("Copy elsewhere")).toContainText("not yet");
  // The browser itself agrees once it trusts the app; here it is told to.
  await browser.send("Browser.grantPermissions", { origin, permissions: ["durableStorage"] });
  await phone.tap("Keep it for good");
  await expect(row("For good")).toContainText("the browser will not clear it");
});

test("a book with new births that has not left the phone for three days says so until it is sent", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-03-01T08:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  const stays = page.getByText("has not left it for three days");
  const on = async (day: string) => {
    await page.clock.setSystemTime(new Date(day));
    await page.reload();
    await phone.tab("Watch");
  };
  await on("2026-03-04T07:00:00-05:00");
  await expect(stays).toHaveCount(0);
  await on("2026-03-04T09:00:00-05:00");
  await expect(stays).toContainText("One new lamb");
  await phone.tap("Send the book");
  await phone.handOver();
  // A file among the downloads of this phone is lost with it.
  await expect(stays).toContainText("One new lamb");
  await expect(page.getByText("still on this phone alone")).toBeVisible();
  await expect(phone.row("Copy elsewhere")).toContainText("not yet");
  await page.reload();
  await expect(stays).toContainText("One new lamb");
  await phone.tap("It is safe elsewhere");
  await expect(stays).toHaveCount(0);
  await expect(phone.row("Copy elsewhere")).not.toContainText("not yet");
  // What another phone noted came here in a file, and is there too.
  const other = new Scribe();
  other.note(new Date("2026-03-04T08:30:00-05:00"), { "lamb-born": { dam: null, sex: "ewe", alive: true } });
  await phone.openFile(other.file());
  await phone.tap("Add to my book");
  await on("2026-03-09T09:00:00-05:00");
  await expect(phone.page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(stays).toHaveCount(0);
});
