// Tables come in and go out as files: ewes from any spreadsheet's letters, the animals to one.
import { Phone } from "../barn";
import { accessible, expect, test } from "../watching";

test("ewes come from a spreadsheet's file, seen before they are added", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/import-export");
  // Semicolons and the old Windows letters: é is the byte 0xe9 there.
  const rows = Array.from({ length: 20 }, (_, at) => `${at + 1};${2019 + (at % 5)};Ch\u00e9viot;`).join("\r\n");
  const buffer = Buffer.from(`Ear tag;Year;Breed;Notes\r\n${rows}\r\n3;2020;;\r\n`, "latin1");
  const field = page.locator("#field-table-file");
  await field.setInputFiles({ name: "ewes.csv", mimeType: "text/csv", buffer });
  const main = page.locator("main");
  await expect(main).toContainText("Line 22, 3: 3 is in an earlier row too.");
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await phone.tap("Add 20 ewes, without 1 row");
  await expect(main).toContainText("20 ewes added.");
  // A large file is told from a table while someone waits.
  const large = Buffer.from(`tag\n${"7\n".repeat(100_000)}`);
  await field.setInputFiles({ name: "ewes.csv", mimeType: "text/csv", buffer: large });
  await expect(main).toContainText("100000 rows are too many. At most 20000 at once");
  await phone.tab("Flock");
  await phone.look("Ewe 4");
  await expect(main).toContainText("Chéviot · born 2022");

  await page.evaluate(() => (location.hash = "#/import-export"));
  const download = page.waitForEvent("download");
  await phone.tap("Animals");
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^yeanling-animals-.*\.csv$/);
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const text = Buffer.concat(chunks).toString("utf8");
  expect(text.split("\r\n"), "heads, twenty ewes, and the empty end of the last line").toHaveLength(22);
  expect(text).toContain("Chéviot");
});
