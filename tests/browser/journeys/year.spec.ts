// The season in figures: counted from what was noted, held beside another season, drawn and told in words.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** A season of twenty ewes with twins from a day on: every fourth litter loses a lamb on its second day. */
function season(scribe: Scribe, from: Date, litters: number, weaned: boolean): void {
  for (let ewe = 0; ewe < litters; ewe += 1) {
    const born = new Date(from.getTime() + Math.floor(ewe / 4) * DAY + ewe * 60_000);
    const later = (time: number) => new Date(born.getTime() + time);
    const dam = scribe.note(new Date(born.getTime() - DAY), { "ewe-came": { tag: `${from.getUTCFullYear()}-${ewe + 1}` } });
    const lambs = [0, 1].map((order) =>
      scribe.note(later(order * 60_000), { "lamb-born": { dam, sex: order === 0 ? "ewe" : "ram", alive: true } }),
    );
    for (const [order, lamb] of lambs.entries()) {
      scribe.note(later(HOUR), { weighed: { lamb, kg: 3 + order + (ewe % 2) / 2 } });
    }
    if (ewe % 4 === 0) {
      scribe.note(later(30 * HOUR), { died: { animal: { lamb: lambs[1] }, cause: "cold" } });
    }
    if (weaned) {
      scribe.note(later(56 * DAY), { weighed: { lamb: lambs[0], kg: 20 } });
      scribe.note(later(56 * DAY), { weaned: { lamb: lambs[0] } });
    }
  }
}

/** The row of a figure, by the beginning of its name. */
const figure = (page: Page, name: string) =>
  page.getByRole("table", { name: "The flock" }).getByRole("row", { name: new RegExp(`^${name}`) });

test("two seasons stand beside each other, each figure with what it is a share of", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-04-20T09:00:00Z") });
  const phone = new Phone(page);
  await phone.open("#/year");
  await expect(page.getByText("No lamb is in the book yet")).toBeVisible();
  const scribe = new Scribe();
  season(scribe, new Date("2025-03-01T04:00:00Z"), 20, true);
  season(scribe, new Date("2026-03-01T04:00:00Z"), 10, false);
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.tab("More");
  await phone.row("Year").getByRole("link").tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Year");
  await expect(page.getByText("1 Mar to 3 Mar 2026")).toBeVisible();
  // Ten litters of twins: 2.00 a ewe; three of twenty lost on their second day.
  await expect(figure(page, "Ewes that lambed")).toContainText("10");
  await expect(figure(page, "Born for each ewe that lambed")).toContainText("2.00");
  await expect(figure(page, "Alive at a day")).toContainText("20 of 20 born alive that long ago");
  await expect(figure(page, "Alive at a week")).toContainText("85 %");
  await expect(figure(page, "Died before weaning")).toContainText("3 of 20 born alive");
  await expect(page.getByText("How many ewes were put to the ram is not noted")).toBeVisible();
  await expect(page.getByRole("table", { name: "What was lost, by age" })).toContainText("24 to 48 hours");
  await expect(page.getByRole("img", { name: "20 lambs on 3 days. Most on 1 Mar: 8." })).toBeVisible();
  await expect(page.getByText("Drawn from 30 lambs on")).toBeVisible();

  // Beside last year's, with 30 lambs and more a curve of its own.
  await phone.tap("2025", page.getByRole("group", { name: "Beside it" }));
  await expect(figure(page, "Ewes that lambed")).toContainText("20");
  await phone.tap("2025", page.getByRole("group", { name: "Season" }));
  await expect(figure(page, "Weaned")).toContainText("20");
  await expect(page.getByRole("img", { name: /3.0 kg to 3.5 kg: 10 of 10/ })).toBeVisible();
  await page.getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("Merck");
  await page.keyboard.press("Escape");
  await fitsTheScreen(page);
  await accessible(page);
});

test("a lamb struck leaves the figures, and comes back with them", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-04-20T09:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  season(scribe, new Date("2026-03-01T04:00:00Z"), 2, false);
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.open("#/year");
  await expect(figure(page, "Died before weaning")).toContainText("1 of 4 born alive");
  await phone.tab("Flock");
  await page.getByRole("link", { name: /2026-1b/ }).first().tap();
  await phone.tap(/^undo: Died/);
  await phone.open("#/year");
  await expect(figure(page, "Died before weaning")).toContainText("0 of 4 born alive");
});

test("the animals and their weights go to a spreadsheet", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-04-20T09:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  season(scribe, new Date("2026-03-01T04:00:00Z"), 2, false);
  const came = new Date("2026-03-02T04:00:00Z");
  const ewe = scribe.note(came, { "ewe-came": { tag: "=1+1" } });
  scribe.note(came, { life: { described: { ewe, born: { year: 2022 }, breed: "hill cross" } } });
  for (const text of ["one teat", "lame in May"]) scribe.note(came, { remarked: { animal: { ewe }, text } });
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  const table = async (name: string) => {
    const download = page.waitForEvent("download");
    await phone.tap(name);
    const file = await download;
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    const text = Buffer.concat(chunks).toString("utf8");
    return { name: file.suggestedFilename(), rows: text.split("\r\n").map((row) => row.split(",")) };
  };
  const animals = await table("Animals");
  expect(animals.name).toBe("yeanling-animals-2026-04-20.csv");
  // Heads, three ewes, four lambs, and the empty end of the last line.
  expect(animals.rows).toHaveLength(9);
  expect(animals.rows.every((row, place) => row.length === (place === 8 ? 1 : 23))).toBe(true);
  expect(animals.rows.map((row) => row[2])).toContain("Ewe =1+1");
  const dead = animals.rows.find((row) => row[2] === "2026-1b");
  expect(dead?.slice(11, 13)).toEqual(["4.00", "4.00"]);
  expect(dead?.[16]).toBe("cold");
  // What is known of a ewe goes along: her birth, her breed and what was remarked.
  const described = animals.rows.find((row) => row[2] === "Ewe =1+1");
  expect([described?.[4], described?.[6], described?.[22]]).toEqual(["2022", "hill cross", '"one teat; lame in May"']);
  const weights = await table("Weights");
  expect(weights.rows).toHaveLength(6);
  await phone.tap("Feeds");
  await expect(page.getByText("There is nothing of this kind in the book yet.")).toBeVisible();
});
