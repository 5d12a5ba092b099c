// From nothing to a flock, and back to nothing.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("eighteen ewes from nothing take two taps and a few keys", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("1-18");
  await phone.tap("Add 18 ewes: 1 to 18");
  expect(phone.taps).toBe(2);
  await expect(phone.tile("Ewe 18")).toBeVisible();
  await phone.saved();
  await page.reload();
  await expect(phone.tile("Ewe 1")).toBeVisible();
});

test("the first run asks four things on one screen, and the vet's number is a link that dials", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.tap("Set up your farm");
  await phone.tap("Hair sheep");
  await page.getByLabel("Vet’s phone number").fill("+1 555 010 0199");
  await page.getByLabel("How many").fill("4");
  await phone.tap("Done: add ewes");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Flock");
  await phone.open("#/help/vet");
  await expect(page.getByRole("link", { name: "Call vet" })).toHaveAttribute("href", "tel:+15550100199");
  await phone.open("#/pens");
  await expect(page.locator(".row")).toHaveCount(4);
});

test("an erased book is gone from both copies and from other tabs", async ({ page, context }) => {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill("7");
  await phone.tap("Add ewe 7");
  await phone.saved();
  const other = new Phone(await context.newPage());
  await other.open("#/flock");
  await expect(other.tile("Ewe 7")).toBeVisible();
  await phone.tab("Farm");
  await phone.row("Erase this book").locator("a.row-words").tap();
  await phone.tap("Erase");
  await phone.tap("Erase everything");
  for (const each of [phone, other]) {
    await expect(each.page.getByRole("link", { name: "Set up your farm" })).toBeVisible();
    await each.tab("Flock");
    await expect(each.tile("Ewe 7")).toHaveCount(0);
  }
  const left = await page.evaluate(async () => {
    const open = indexedDB.open("yeanling");
    const entries = await new Promise<number>((done) => {
      open.onsuccess = () => {
        const count = open.result.transaction("entries").objectStore("entries").count();
        count.onsuccess = () => {
          open.result.close();
          done(count.result);
        };
      };
    });
    return { entries, names: Object.keys(localStorage).filter((name) => name.startsWith("yeanling/entry/")) };
  });
  expect(left).toEqual({ entries: 0, names: [] });
});
