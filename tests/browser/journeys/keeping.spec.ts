// The book survives: a reload, a dead server, a full or wiped copy, a second tab, a broken line.
import { Phone } from "../barn";
import { fillLocalStorage } from "../disk";
import { Scribe } from "../scribe";
import { expect, readyOffline, test } from "../watching";

async function aTwin(phone: Phone, tag = "14"): Promise<void> {
  await phone.lambing(tag);
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("Navel dipped");
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.tap("Nursed");
  await phone.saved();
}

test("a second tab follows without a reload, in both directions", async ({ page, context }) => {
  const phone = new Phone(page);
  await phone.open();
  const other = new Phone(await context.newPage());
  await other.open();
  // Of two tabs only the one in front is painted, and a tap waits for paint.
  await page.bringToFront();
  await aTwin(phone);
  await expect(other.row("14a")).toContainText("3.9 kg");
  await other.page.bringToFront();
  await other.row("14b").getByRole("button", { name: "Dipped, 14b" }).tap();
  await other.saved();
  await page.bringToFront();
  await phone.tab("Watch");
  await phone.look("14b");
  await expect(page.locator(".noted-text", { hasText: "Navel dipped" })).toBeVisible();
});

test("local storage full: everything is still noted, saved and there after a reload", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("1");
  await phone.saved();
  await fillLocalStorage(page);
  await aTwin(phone);
  const kept = await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/")).length);
  expect(kept, "entries that found room in local storage").toBeLessThan(8);
  await expect(page.getByText("NOT SAVED")).toHaveCount(0);
  await page.reload();
  await phone.tab("Watch");
  await expect(phone.row("14a")).toContainText("3.9 kg");
  await expect(phone.row("14b")).toBeVisible();
});

test("either copy wiped is healed by the other", async ({ page, baseURL }) => {
  const phone = new Phone(page);
  await phone.open();
  await aTwin(phone);
  const keys = () =>
    page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/")).length);
  const before = await keys();
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await phone.tab("Watch");
  await expect(phone.row("14a")).toContainText("3.9 kg");
  await expect.poll(keys).toBe(before);

  await page.goto("about:blank");
  await phone.open();
  await phone.saved();
  await page.goto("about:blank");
  const browser = await page.context().newCDPSession(page);
  const origin = new URL(baseURL ?? "").origin;
  await browser.send("Storage.clearDataForOrigin", { origin, storageTypes: "indexeddb" });
  await phone.open();
  await phone.saved();
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await expect(phone.row("14a")).toContainText("3.9 kg");
});

test("a broken line is kept, reported, and the rest works", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aTwin(phone);
  await page.evaluate(() => localStorage.setItem("yeanling/entry/broken", '{"half":'));
  await page.reload();
  await phone.tab("Watch");
  await expect(page.getByText("One line of the book could not be read")).toBeVisible();
  await expect(phone.row("14a")).toContainText("3.9 kg");
  expect(await page.evaluate(() => localStorage.getItem("yeanling/entry/broken"))).toBe('{"half":');
});

test("when neither copy can be used, the page says so and still notes", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, "indexedDB", { get: () => null });
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("refused", "SecurityError");
      },
    });
  });
  const phone = new Phone(page);
  await phone.open();
  await expect(page.getByText("lost when this page closes")).toBeVisible();
  await phone.lambing("2");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await expect(phone.row("2a")).toBeVisible();
});

test("the sample flock never touches the real book", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await expect(page.getByText("Sample flock.")).toBeVisible();
  await expect(page.locator(".row").first()).toBeVisible();
  await page.locator(".row-action button").first().tap();
  await phone.tap("Back to my flock");
  await expect(page.getByText("Nothing to watch yet")).toBeVisible();
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/")))).toEqual([]);
  await page.reload();
  await expect(page.getByText("Nothing to watch yet")).toBeVisible();
});

test("a file opened while one looks round a sample flock goes into the real book", async ({ page }) => {
  const scribe = new Scribe();
  const dam = scribe.note(new Date("2026-02-25T08:00:00Z"), { "ewe-came": { tag: "77" } });
  scribe.note(new Date("2026-02-25T08:05:00Z"), { "lamb-born": { dam, sex: "ewe", alive: true } });
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Try a sample flock");
  await phone.openFile(scribe.file());
  await expect(page.getByText("This goes into your own book")).toBeVisible();
  await expect(page.getByText("1 ewe, 1 lamb, 2 entries")).toBeVisible();
  await phone.tap("Add");
  await expect(page.getByText("Done. 2 entries added.")).toBeVisible();
  await expect(page.getByText("Sample flock.")).toHaveCount(0);
  await phone.saved();
  await page.reload();
  expect((await phone.flock()).join()).toContain("Ewe 77");
});

test("the app says that it is ready to work offline once it is", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await readyOffline(page);
  await phone.share();
  await expect(page.getByText("ready to work offline", { exact: false }).first()).toBeVisible();
});
