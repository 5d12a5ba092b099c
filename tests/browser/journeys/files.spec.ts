// A file that is no whole book changes nothing, and the message says what is wrong and what to do.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Phone } from "../barn";
import { Scribe, seal } from "../scribe";
import { expect, test } from "../watching";

test("every bad file is refused in words, and the book stays as it was", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("All lambs born");
  const { text } = await phone.handOver();
  const book = JSON.parse(text);
  const before = await phone.flock();
  const other = (change: object) => JSON.stringify({ ...book, ...change });
  const files: [string, string | Buffer, RegExp][] = [
    ["empty", "", /The file is empty/],
    ["cut short", text.slice(0, text.length - 40), /cut short/],
    ["not JSON", "dear diary, it snowed", /no book/],
    ["JSON of another kind", "[1, 2, 3]", /does not say that it is a book/],
    ["another format", JSON.stringify({ format: "shopping-list", version: 1 }), /“shopping-list”/],
    ["a newer version", other({ version: 2 }), /version 2/],
    ["a wrong digest", other({ digest: `sha256-${"0".repeat(64)}` }), /damaged or was changed/],
    ["a wrong count", other({ count: 99 }), /says it has 99 entries/],
    ["an entry of another form", other({ entries: [{ id: 1 }], count: 1, digest: seal([{ id: 1 }]) }), /Entry 1/],
    ["no text", Buffer.from([0xff, 0xfe, 0x00, 0x80]), /no text/],
  ];
  for (const [what, file, said] of files) {
    await test.step(what, async () => {
      await phone.openFile(file, `${what}.json`);
      const alert = page.getByRole("alert").filter({ hasText: said });
      await expect(alert).toBeVisible();
      await expect(alert).toContainText("Nothing was changed");
      await expect(page.getByText("This file would add")).toHaveCount(0);
    });
  }
  await test.step("50 MB", async () => {
    const folder = await mkdtemp(join(tmpdir(), "yeanling-large-"));
    const large = join(folder, "book.json");
    await writeFile(large, Buffer.alloc(50_000_000, 0x20));
    await page.locator("#field-book-file").setInputFiles(large);
    await expect(page.getByRole("alert").filter({ hasText: "50.0 MB" })).toContainText("Nothing was changed");
    await rm(folder, { recursive: true });
  });
  expect(await phone.flock()).toEqual(before);
  await page.reload();
  expect(await phone.flock()).toEqual(before);
  // A good file still opens after all that.
  await phone.openFile(text);
  await expect(page.getByText("Everything in this file is in your book already.")).toBeVisible();
});

test("markup in a file is text everywhere", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("1");
  const { text } = await phone.handOver();
  const book = JSON.parse(text);
  const nasty = '<img src=x onerror="document.title=1">';
  const came = book.entries.find((entry: { event: object }) => "ewe-came" in entry.event);
  const entry = { ...came, id: "01900000-0000-7000-8000-000000000bad", event: { "ewe-came": { tag: nasty } } };
  const entries = [entry, ...book.entries];
  await phone.openFile(JSON.stringify({ ...book, entries, count: entries.length, digest: seal(entries) }));
  await phone.tap("Add to my book");
  await phone.tab("Flock");
  await expect(page.getByText(nasty)).toBeVisible();
  await expect(page).toHaveTitle("Yeanling");
});

test("a file from the future is told in the preview, and pins no clock once it was added", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-03-01T08:00:00-05:00") });
  const scribe = new Scribe();
  const dam = scribe.note(new Date("2026-02-25T08:00:00Z"), { "ewe-came": { tag: "77" } });
  scribe.note(new Date("2099-03-14T08:05:00Z"), { "lamb-born": { dam, sex: "ewe", alive: true } });
  const phone = new Phone(page);
  await phone.open();
  await phone.openFile(scribe.file());
  const warning = page.getByRole("alert").filter({ hasText: "2099" });
  await expect(warning).toContainText("One entry in it is dated ahead of this phone");
  await expect(page.getByRole("button", { name: "Add to my book" })).toHaveCount(0);
  await phone.tap("Cancel");
  expect((await phone.flock()).join()).not.toContain("77");
  await phone.openFile(scribe.file());
  await phone.tap("Add it all the same");
  await expect(page.getByText("Done. 2 entries added.")).toBeVisible();
  await expect(page.getByText("This phone’s clock is behind")).toHaveCount(0);
  await phone.lambing("14");
  await phone.tap("Ram lamb");
  await phone.saved();
  await expect(page.getByText("This phone’s clock is behind")).toHaveCount(0);
  const { text } = await phone.handOver();
  const own = JSON.parse(text).entries.filter((entry: { noted: string }) => entry.noted.startsWith("2026-03-01"));
  expect(own.length, "noted by this phone's own clock").toBe(2);
});
