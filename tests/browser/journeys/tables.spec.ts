// From a spreadsheet of ewes to the year: weighed lamb after lamb, who lags, each ewe's record, the farm's own marks.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const BORN = new Date("2026-03-01T09:00:00Z");

async function openTable(page: Page, content: string | Buffer): Promise<void> {
  await page.locator("#field-ewes-file").setInputFiles({
    name: "ewes.csv",
    mimeType: "text/csv",
    buffer: typeof content === "string" ? Buffer.from(content) : content,
  });
}

test("ewes come from a spreadsheet: seen first, all or nothing, whatever wrote the file", async ({ page }) => {
  await page.clock.install({ time: BORN });
  const phone = new Phone(page);
  await phone.open("#/hand-over");
  // Semicolons and the old Windows letters: é is the byte 0xe9 there.
  const rows = Array.from({ length: 20 }, (_, at) => `${at + 1};${2019 + (at % 5)};Ch\u00e9viot;`).join("\r\n");
  const windows = Buffer.from(`Ear tag;Year;Breed;Notes\r\n${rows}\r\n3;2020;;\r\n;2020;;\r\n'=1+1;;;"lame; left\r\nfore"\r\n`, "latin1");
  await openTable(page, windows);
  const main = page.locator("main");
  await expect(main).toContainText("21 ewes: 1, 2, 3, 4, 5 and 16 more");
  await expect(main).toContainText("Line 22: 3 stands in an earlier row.");
  await expect(main).toContainText("Line 23: no tag.");
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await phone.tap("Add 21 ewes");
  await expect(main).toContainText("21 ewes added.");
  await phone.tab("Flock");
  await expect(main).toContainText("21 ewes");
  await phone.look("Ewe 4");
  await expect(main).toContainText("Chéviot · born 2022");
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("=1");
  await phone.look("Ewe =1+1");
  await expect(main).toContainText("lame; left");

  // Which way round dates are is asked, never guessed.
  await phone.tab("Hand over");
  await openTable(page, "tag,born\n70,12/03/2021\n71,14/3/2022\n72,2022\n");
  await expect(main).toContainText("Line 2, ewe 70: “12/03/2021” can be read with the day or the month first.");
  await expect(page.getByRole("button", { name: "Add 2 ewes" })).toBeVisible();
  await phone.tap(/^The month 12\/03\/2021 is 3 Dec 2021/);
  await expect(main).not.toContainText("Line 2");
  await phone.tap(/^The day 12\/03\/2021 is 12 Mar 2021/);
  await phone.tap("Add 3 ewes");
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("70");
  await phone.look("Ewe 70");
  await expect(main).toContainText("born 12 Mar 2021");

  // What is wrong is said, and nothing is half added.
  await phone.tab("Hand over");
  await openTable(page, "weight,color\n61,white\n");
  await expect(main).toContainText("Say which column holds the tags.");
  await phone.tap("color", page.getByRole("group", { name: "Tag" }));
  await expect(page.getByRole("button", { name: "Add 1 ewe" })).toBeVisible();
  await phone.tap("Leave it");
  await openTable(page, "tag,born\n90,2020\n91,1850\n");
  await phone.tap("Add 2 ewes");
  await expect(main).toContainText("Nothing was added. 91: 1850 cannot be. From 1996 to 2026");
  await phone.tap("Leave it");
  await openTable(page, `tag\n${"7\n".repeat(100_000)}`);
  await expect(main).toContainText("100000 rows are too many. At most 5000 at once");
  await openTable(page, Buffer.from([0x50, 0x4b, 3, 4, 0, 0, 0]));
  await expect(main).toContainText("This is no CSV file.");
  await phone.tab("Flock");
  await page.getByLabel("Find a tag or a name").fill("90");
  await expect(main).toContainText("Nothing is called that.");
});

/** Ten ewes, each with twins of one day; the second of the first ewe's died, one was pulled hard. */
function tenEwes(): Scribe {
  const scribe = new Scribe();
  for (let ewe = 1; ewe <= 10; ewe += 1) {
    const born = new Date(BORN.getTime() + ewe * 60_000);
    const dam = scribe.note(new Date(BORN.getTime() - DAY), { "ewe-came": { tag: `${ewe}` } });
    scribe.note(new Date(BORN.getTime() - DAY), { life: { described: { ewe: dam, born: { year: 2020 + (ewe % 5) } } } });
    const lambs = [0, 1, 2].map((order) =>
      scribe.note(new Date(born.getTime() + order * 1000), { "lamb-born": { dam, sex: "ewe", alive: true } }),
    );
    for (const lamb of lambs) {
      scribe.note(new Date(born.getTime() + HOUR), { weighed: { lamb, kg: 4 } });
      scribe.note(new Date(born.getTime() + HOUR), { sucked: { lamb } });
    }
    if (ewe === 1) {
      scribe.note(new Date(born.getTime() + 3000), { "birth-ease": { lamb: lambs[0], ease: "hard-by-hand" } });
      scribe.note(new Date(born.getTime() + 2 * DAY), { died: { animal: { lamb: lambs[1] }, cause: "cold" } });
    }
  }
  return scribe;
}

test("thirty lambs over the scales: next, next, next; then gains, who lags, and the ewes to look at again", async ({ page }) => {
  test.setTimeout(90_000);
  await page.clock.install({ time: new Date(BORN.getTime() + 58 * DAY) });
  const phone = new Phone(page);
  await phone.open();
  await phone.openFile(tenEwes().file());
  await phone.tap("Add to my book");
  await phone.tab("More");
  await page.getByText("Lamb after lamb", { exact: true }).tap();
  const main = page.locator("main");
  await expect(main).toContainText("1 of 29 · weighed today 0");
  // A slip of the keys is said and stays.
  await phone.weigh("620");
  await phone.tap("Save, next");
  await expect(page.locator(".card .notice")).toContainText("Between 0.5 and 70 kg is allowed");
  await expect(page.getByRole("heading", { level: 2 }).first()).toHaveText("1a");
  for (let digit = 0; digit < 3; digit += 1) await page.getByRole("button", { name: "delete last digit" }).tap();
  for (let lamb = 0; lamb < 29; lamb += 1) {
    await phone.weigh(lamb === 12 ? "14.5" : "20.5");
    await phone.tap("Save, next");
    await expect(main).toContainText(lamb === 28 ? "All lambs were gone through." : `${lamb + 2} of 29 · weighed today ${lamb + 1}`);
  }
  // 16.5 kg in 58 days are 284 g a day; the light one gained 181 and lags.
  await expect(phone.row("1a")).toContainText("20.5 kg at 57 days, 284 g a day since birth");
  await expect(phone.row("1a")).toContainText("adjusted to 60 days");
  await expect(main.locator(".row").filter({ hasText: "lags behind" })).toHaveCount(1);
  await page.getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("sheep industry handbook");
  await page.keyboard.press("Escape");
  await fitsTheScreen(page);

  await phone.open("#/practice");
  await page.getByLabel("Lambs lost").fill("1");
  await page.getByLabel("Hard births").fill("31");
  await page.getByLabel("Hard births").blur();
  await expect(main).toContainText("From 1 to 30, or empty.");
  await page.getByLabel("Hard births").fill("1");
  await page.getByLabel("Hard births").blur();
  await phone.saved();
  await phone.open("#/year");
  await expect(page.getByRole("table", { name: "Gain by litter" })).toContainText("born triplet or more, reared triplet or more");
  await expect(page.getByRole("table", { name: "Gain by age of the dam" })).toContainText("three to six years");
  await expect(phone.row("Ewe 1")).toContainText("1 hard birth, 1 lamb lost");
  await expect(phone.row("Ewe 2")).toHaveCount(0);
  await phone.look("Ewe 1");
  await expect(main).toContainText("1 lambing, 3 lambs: 1 lost, 2 reared");
  await expect(main).toContainText("Reared 41.0 kg in all, 41.0 kg a lambing");
  await expect(main).toContainText("Meets your mark: 1 lamb lost");
});

test("a season of twenty ewes: from their table over the ram and every birth to the year", async ({ page }) => {
  test.setTimeout(180_000);
  await page.clock.install({ time: new Date("2026-10-01T09:00:00Z") });
  const phone = new Phone(page);
  await phone.open("#/hand-over");
  const rows = Array.from({ length: 20 }, (_, at) => `${at + 1},${2020 + (at % 4)}`).join("\n");
  await openTable(page, `tag,born\n${rows}\n`);
  await phone.tap("Add 20 ewes");
  await phone.open("#/season");
  await phone.tap("Form a group");
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("What it is called").fill("All");
  await phone.tap("Save", dialog);
  await phone.tap("Put ewes in…");
  await dialog.getByLabel("Tags, a list or ranges").fill("1-20");
  await phone.tap("Put 20 ewes in", dialog);
  await phone.tap("Ram in…");
  await phone.tap("Save", dialog);
  // A browser's timers reach no further than 24 days at once.
  const pass = async (days: number) => {
    for (let left = days; left > 0; left -= 20) await page.clock.fastForward(Math.min(left, 20) * DAY);
  };
  await pass(50);
  await phone.tap("Ram out…");
  await phone.tap("Save", dialog);
  await pass(96);

  // Eighteen lamb from day 146 on, three a night: every other with twins, and one lamb is born dead.
  for (let ewe = 1; ewe <= 18; ewe += 1) {
    await phone.lambing(`${ewe}`);
    await phone.tap("Ewe lamb");
    await phone.weigh("4");
    if (ewe % 2 === 0) {
      await phone.tap("Next lamb");
      await phone.tap(ewe === 10 ? "Born dead" : "Ram lamb");
    }
    await phone.tap("All lambs born");
    await page.clock.fastForward(8 * HOUR);
  }
  await phone.saved();
  await pass(10);
  await phone.open("#/year");
  const figure = (name: string) =>
    page.getByRole("table", { name: "The flock" }).getByRole("row", { name: new RegExp(`^${name}`) });
  // 18 of 20 is 90 %, 9 singles and 9 twins are 27 lambs, 27 of 20 are 135 %, 26 of 27 born alive.
  await expect(figure("Ewes that lambed")).toContainText("18");
  await expect(figure("Lambed")).toContainText("90 %");
  await expect(figure("Lambs born")).toContainText("27");
  await expect(figure("Lambing rate")).toContainText("135 %");
  await expect(figure("Litters")).toContainText("9 · 9 · 0");
  await expect(figure("Dead at birth")).toContainText("1 of 27 born");
  await expect(figure("Alive at a week")).toContainText("26 of 26");
  await fitsTheScreen(page);

  // At eight weeks a weight unlike the last is asked about, and all are weaned together, with one undo.
  await pass(50);
  await phone.open("#/weighing");
  await phone.weigh("3.2");
  await phone.tap("Save, next");
  await expect(page.locator(".card .notice")).toContainText("If 3.2 kg is right, press once more.");
  for (let digit = 0; digit < 3; digit += 1) await page.getByRole("button", { name: "delete last digit" }).tap();
  await phone.weigh("21");
  await phone.tap("Save, next");
  await expect(page.getByRole("heading", { level: 2 }).first()).toHaveText("2a");
  await phone.tap("Wean all 26…");
  await phone.tap("Yes, all 26 today", dialog);
  await expect(dialog).toBeHidden();
  await expect(page.getByRole("button", { name: /^Wean all/ })).toHaveCount(0);
  await phone.tap("Undo", page.locator(".undo-bar"));
  await phone.tap("Wean all 26…");
  await phone.tap("Yes, all 26 today", dialog);
  await phone.open("#/year");
  await expect(figure("Weaned 26 from 20 put to the ram")).toBeVisible();
  // Its own sheet asks as the scales do.
  await phone.tab("Flock");
  await phone.look("1a");
  await phone.tap(/^Weigh/);
  await dialog.getByRole("textbox").fill("12");
  await phone.tap("Save", dialog);
  await expect(dialog).toContainText("It weighed 21.0 kg on");
  await phone.tap("Save", dialog);
  await expect(dialog).toBeHidden();
});
