// Two phones note different things, exchange files both ways, and show the same flock.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Phone, anotherPhone } from "../barn";
import { Scribe } from "../scribe";
import { expect, test } from "../watching";

test("two phones come together by files, both ways, and agree", async ({ page, browser, contextOptions, baseURL }) => {
  const first = new Phone(page);
  const { phone: second, context } = await anotherPhone(browser, { ...contextOptions, baseURL, isMobile: true, hasTouch: true });
  await first.open();
  await first.lambing("14");
  await first.tap("Ewe lamb");
  await first.weigh("3.9");
  await first.tap("All lambs born");
  const toSecond = await first.handOver();
  expect(toSecond.name).toMatch(/^yeanling-\d{4}-\d{2}-\d{2}.*\.json\.txt$/);

  await second.open();
  await second.lambing("31");
  await second.tap("Ram lamb");
  await second.weigh("5.0");
  await second.tap("All lambs born");
  await second.openFile(toSecond.text);
  await expect(second.page.getByText("This file would add")).toBeVisible();
  await expect(second.page.getByText(/1 ewe\b/).first()).toBeVisible();
  await expect(second.page.getByText(/1 lamb\b/).first()).toBeVisible();
  await second.tap("Add");
  await expect(second.page.getByText(/Done\. \d+ entries added\./)).toBeVisible();
  await second.tab("Watch");
  await second.row("14a").getByRole("button", { name: "Dipped, 14a" }).tap();
  const toFirst = await second.handOver();

  await first.openFile(toFirst.text);
  await first.tap("Add");
  await expect(first.page.getByText(/Done\. \d+ entries added\./)).toBeVisible();
  expect(await first.flock()).toEqual(await second.flock());
  await first.look("14a");
  await expect(page.locator(".noted-text", { hasText: "Navel dipped" })).toBeVisible();

  // The same file again adds nothing.
  await first.openFile(toFirst.text);
  await expect(page.getByText("Everything in this file is in your book already.")).toBeVisible();
  await first.saved();
  await page.reload();
  expect(await first.flock()).toEqual(await second.flock());
  await context.close();
});

test("a ewe added on both phones is one ewe once someone says so", async ({ page, browser, contextOptions, baseURL }) => {
  const first = new Phone(page);
  const { phone: second, context } = await anotherPhone(browser, { ...contextOptions, baseURL, isMobile: true, hasTouch: true });
  for (const [phone, lamb] of [[first, "Ewe lamb"], [second, "Ram lamb"]] as const) {
    await phone.open();
    await phone.lambing("23");
    await phone.tap(lamb);
    await phone.tap("All lambs born");
  }
  const file = await second.handOver();
  await first.openFile(file.text);
  await first.tap("Add");
  await expect(page.getByText("Are they the same ewe?")).toBeVisible();
  await first.tap("Same ewe");
  const flock = await first.flock();
  expect(flock.filter((row) => row.startsWith("Ewe 23"))).toHaveLength(1);
  expect(flock.join("\n")).toContain("23a");
  expect(flock.join("\n")).toContain("23b");
  await context.close();
});

test("an entry of a newer version is kept whole and handed on", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("7");
  const { text } = await phone.handOver();
  const book = JSON.parse(text);
  const strange = {
    id: "01900000-0000-7000-8000-00000000beef",
    device: book.device,
    noted: book.made,
    at: book.made,
    event: { "sheared-by-moonlight": { ewe: "someone", kg: 1.5, more: [1, 2.0e1, null] } },
  };
  const entries = [...book.entries, strange].sort((a, b) => (a.id < b.id ? -1 : 1));
  const digest = await page.evaluate(async (entries) => {
    const bytes = new TextEncoder().encode(entries);
    const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    return `sha256-${[...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
  }, JSON.stringify(entries));
  await phone.openFile(JSON.stringify({ ...book, count: entries.length, digest, entries }));
  await phone.tap("Add");
  await phone.saved();
  await page.reload();
  await expect(page.getByText(/written by a newer version/).first()).toBeVisible();
  const again = await phone.handOver();
  expect(again.text).toContain(JSON.stringify(strange.event));
});

test("a book too large for one file goes as several, a season or more in each, and comes together whole", async ({ page, browser, contextOptions, baseURL }) => {
  test.setTimeout(120_000);
  const scribe = new Scribe();
  // Of a later version, each as large as many thousand entries.
  for (const year of [2024, 2025, 2026]) scribe.note(new Date(Date.UTC(year, 1, 25)), { shorn: { text: "x".repeat(11_000_000) } });
  const folder = await mkdtemp(join(tmpdir(), "yeanling-large-"));
  const open = async (phone: Phone, text: string) => {
    const large = join(folder, "book.json.txt");
    await writeFile(large, text);
    await phone.share();
    await phone.page.locator("#field-book-file").setInputFiles(large);
    await expect(phone.page.getByRole("button", { name: "Add", exact: true })).toBeVisible({ timeout: 30_000 });
    await phone.tap("Add");
  };
  const first = new Phone(page);
  await first.open();
  await open(first, scribe.file());
  await expect(page.getByText("Done. 3 entries added.")).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText("it goes as 2 files")).toBeVisible({ timeout: 30_000 });
  const files: { name: string; text: string }[] = [];
  for (const number of [1, 2]) {
    await expect(page.getByText("but only on this phone")).toHaveCount(0);
    const download = page.waitForEvent("download");
    await first.tap(`Save file ${number} of 2`);
    const file = await download;
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    files.push({ name: file.suggestedFilename(), text: Buffer.concat(chunks).toString("utf8") });
  }
  await expect(page.getByText("but only on this phone").first()).toBeVisible();
  expect(files[0].name).toMatch(/-1-of-2-2024-2025\.json\.txt$/);
  expect(files[1].name).toMatch(/-2-of-2-2026\.json\.txt$/);
  const { phone: second, context } = await anotherPhone(browser, { ...contextOptions, baseURL, isMobile: true, hasTouch: true });
  await second.open();
  for (const { text } of files) {
    expect(Buffer.byteLength(text)).toBeLessThan(30_000_000);
    await open(second, text);
    await expect(second.page.getByText(/^Done\. \d entr(y|ies) added\.$/)).toBeVisible({ timeout: 30_000 });
  }
  await expect(second.row("This phone")).toContainText("3 entries");
  await rm(folder, { recursive: true });
  await context.close();
});
