// A file that is no whole book changes nothing, and the message says what is wrong and what to do.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("a bad file is refused in words, also a huge one, and the book stays as it was", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.weigh("3.9");
  await phone.tap("All lambs born");
  const { text } = await phone.handOver();
  const before = await phone.flock();
  const files: [string, string | Buffer, RegExp][] = [
    ["cut off", text.slice(0, text.length - 40), /cut off/],
    ["not text", Buffer.from([0xff, 0xfe, 0x00, 0x80]), /not a text file/],
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
