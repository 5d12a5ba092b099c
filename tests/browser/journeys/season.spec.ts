// The season ahead: from an empty book to a plan for sixty ewes, then marks, signs and births sharpen it.
import { accessible, expect, fitsTheScreen, test } from "../watching";
import { Phone } from "../barn";
import { Scribe } from "../scribe";

const DAY = 24 * 3_600_000;
const RAM_IN = new Date("2026-10-01T12:00:00Z");

/** Puts so many ewes, tagged from 1 on, to a ram for fifty days from the first of October; returns who they are. */
function mated(scribe: Scribe, count: number): string[] {
  const group = scribe.note(RAM_IN, { "group-formed": { name: "Hill" } });
  const ewes = Array.from({ length: count }, (_, at) => scribe.note(RAM_IN, { "ewe-came": { tag: `${at + 1}` } }));
  for (const ewe of ewes) scribe.note(RAM_IN, { "joined-group": { ewe, group } });
  scribe.note(RAM_IN, { "ram-in": { group, ram: null, age: null } });
  scribe.note(new Date(RAM_IN.getTime() + 50 * DAY), { "ram-out": { group } });
  return ewes;
}

/** Forms a group and puts ewes in by a typed list. */
async function form(phone: Phone, name: string, tags: string): Promise<void> {
  const { page } = phone;
  await phone.tap("Form a group");
  await page.getByRole("dialog").getByLabel("What it is called").fill(name);
  await phone.tap("Save", page.getByRole("dialog"));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(name);
  await phone.tap("Put ewes in…");
  await page.getByRole("dialog").getByLabel("Tags, a list or ranges").fill(tags);
}

test("from an empty book to a plan for sixty ewes", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-11-25T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/season");
  await expect(page.getByText("Form a group, put its ewes and the ram in")).toBeVisible();
  const before = phone.taps;
  await form(phone, "Lower field", "101–158, 7, 9, 7, 140-138");
  const sheet = page.getByRole("dialog");
  // A repeated tag counts once, a range that runs backwards is left out, and both are said before anything is noted.
  await expect(sheet).toContainText("60 new to the book: 101, 102");
  await expect(sheet).toContainText("More than once, counted once: 7");
  await expect(sheet).toContainText("“140-138” ends before it begins: left out");
  await sheet.getByLabel("In the group since").fill("2026-10-01");
  await phone.tap("Put 60 ewes in", sheet);
  await expect(page.getByText("60 ewes · no ram yet")).toBeVisible();
  await expect(page.locator(".undo-bar")).toContainText("and 59 more");
  await phone.tap("Ram in…");
  await sheet.getByLabel("Day").fill("2026-10-01");
  await phone.tap("Save", sheet);
  await phone.tap("Ram out…");
  // Out before in is refused in words, and the day stays as it was typed.
  await sheet.getByLabel("Day").fill("2026-09-30");
  await phone.tap("Save", sheet);
  await expect(sheet.getByRole("alert").first()).toContainText("The ram cannot go out at 30 Sep");
  await expect(sheet.getByLabel("Day")).toHaveValue("2026-09-30");
  await sheet.getByLabel("Day").fill("2026-11-20");
  await phone.tap("Save", sheet);
  expect(phone.taps - before).toBeLessThanOrEqual(12);
  // Ram in + 142 and ram out + 152; the booster four weeks before the first: season figures, section 1 and 7.
  const dates = page.getByRole("table", { name: "Dates" });
  await expect(dates.getByRole("row", { name: /^Booster/ })).toContainText("23 Jan");
  await expect(dates.getByRole("row", { name: /^First lambs/ })).toContainText("20 Feb");
  await fitsTheScreen(page);
  await accessible(page);

  await page.goto("./#/season");
  await expect(page.getByText("60 put to the ram · none has lambed")).toBeVisible();
  // 60 ewes, three cycles at what the handbook's 0.60 to 0.85 leaves open, Beta(36, 12): 60 × (1 − 12·13·14 / (48·49·50)).
  await expect(page.getByRole("img", { name: /^58\.9 births still to come/ })).toBeVisible();
  await expect(page.getByText(/Of 60 put to the ram, likely \d+ to 60 will lamb/)).toBeVisible();
  await expect(page.getByRole("img", { name: /^Most pens around/ })).toBeVisible();
  await page.getByRole("button", { name: /^why\?/ }).first().tap();
  await expect(page.getByRole("dialog")).toContainText("75 of 100 hold in a cycle of 17 days, the handbook’s");
  await page.keyboard.press("Escape");
  await fitsTheScreen(page);
  // In full, so that no target stands half under the bar at the foot.
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);

  const download = page.waitForEvent("download");
  await phone.tap("The dates to my calendar");
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const calendar = Buffer.concat(chunks).toString("utf8");
  // Seven in the morning at five hours west of Greenwich.
  expect(calendar).toContain("DTSTART:20270123T120000Z");
  await phone.saved();
  await page.reload();
  await expect(page.getByText("60 put to the ram · none has lambed")).toBeVisible();
});

test("a mark narrows her ribbon, a sign puts her first, and a birth leaves the forecast", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-10-01T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/season");
  await form(phone, "Hill", "1-4");
  await phone.tap("Put 4 ewes in", page.getByRole("dialog"));
  await phone.tap("Ram in…");
  await phone.tap("Save", page.getByRole("dialog"));
  await page.clock.fastForward(8 * 24 * 3_600_000);
  await phone.tab("Flock");
  await phone.look("Ewe 2");
  const hers = page.locator(".section", { hasText: "When she may lamb" });
  await expect(hers).toContainText(/between \d+ Feb and \d+ Apr/);
  await phone.tap("Crayon mark");
  await page.getByRole("dialog").getByLabel("Color").fill("red");
  await phone.tap("Save", page.getByRole("dialog"));
  // 9 October and 147 days: 5 March.
  await expect(hers).toContainText("likely 5 Mar");
  // In the new year the ram is long out, and it is the night of the fourth of March.
  // A browser's timers reach no further than 24 days at once.
  for (let days = 0; days < 146; days += 18.25) await page.clock.fastForward(18.25 * 24 * 3_600_000);
  await phone.open("#/season");
  const first = page.locator(".section", { hasText: "Who is near" }).locator(".row").first();
  await expect(first).toContainText("Ewe 2");
  await first.locator("a.row-words").tap();
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("Ewe lamb");
  await phone.open("#/season");
  await expect(page.getByText("4 put to the ram · 1 has lambed")).toBeVisible();
  await phone.open("#/year");
  await expect(page.getByRole("table", { name: "The flock" })).toContainText("1 of 4 put to the ram");
});

test("half have lambed, and the forecast is of the other half", async ({ page }) => {
  const now = new Date("2027-03-05T06:00:00-05:00");
  await page.clock.install({ time: now });
  const phone = new Phone(page);
  const scribe = new Scribe();
  const ewes = mated(scribe, 20);
  await phone.open();
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.open("#/season");
  await expect(page.getByText("20 put to the ram · none has lambed")).toBeVisible();
  const nights = page.getByRole("img", { name: /births still to come/ });
  const toCome = async () => Number.parseFloat((await nights.getAttribute("aria-label")) ?? "");
  const before = await toCome();

  // One a night, as ewes of the first cycle do: from 144 days after the ram came in.
  for (const [at, dam] of ewes.slice(0, 10).entries()) {
    const born = new Date(RAM_IN.getTime() + (144 + at) * DAY);
    const lamb = scribe.note(born, { "lamb-born": { dam, sex: "ewe", alive: true } });
    scribe.note(born, { "all-born": { lamb } });
  }
  await phone.open();
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.open("#/season");
  await expect(page.getByText("20 put to the ram · 10 have lambed")).toBeVisible();
  const after = await toCome();
  expect(after).toBeLessThanOrEqual(10);
  expect(after).toBeGreaterThan(7);
  expect(before).toBeGreaterThan(after + 5);
  // What has happened is drawn over what was expected, and no one who has lambed is near.
  await expect(page.locator(".chart-legend").first()).toContainText("lambed");
  await expect(page.getByText(/Of 20 put to the ram, likely \d+ to 20 will lamb/)).toBeVisible();
  const near = page.locator(".section", { hasText: "Who is near" }).locator(".row-name");
  await expect(near.first()).toBeVisible();
  for (const name of await near.allTextContents()) expect(Number(name.replace("Ewe ", ""))).toBeGreaterThan(10);
});

test("ewes put in after the ram count from then, which is said, and one tap says they were there", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-11-28T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/season");
  await form(phone, "Hill", "1-6, 3O1-330");
  const dialog = page.getByRole("dialog");
  // An O among digits is no range of 330 ewes.
  await expect(dialog).toContainText("“3O1-330” is no range");
  await phone.tap("Put 6 ewes in", dialog);
  await expect(page.locator(".undo-bar")).toContainText("and 5 more");
  await phone.tap("Ram in…");
  await dialog.getByLabel("Day").fill("2026-07-02");
  await phone.tap("Save", dialog);
  const main = page.locator("main");
  await expect(main).toContainText("ram in since 2 Jul, counted only until 21 Aug: say when he came out");
  await expect(main).toContainText("6 ewes are in the group only since 28 Nov, and the ram since 2 Jul.");
  await fitsTheScreen(page);
  await accessible(page);
  await phone.tap("They were with him from 2 Jul");
  await expect(main).not.toContainText("only since 28 Nov");
  // 147 days after 2 July is 26 November: the first have their likeliest days now.
  await expect(phone.row("Ewe 1")).toContainText(/likely \d+ Dec/);
  await phone.saved();
  await page.reload();
  await expect(phone.row("Ewe 1")).toContainText(/likely \d+ Dec/);
  await expect(main).not.toContainText("only since 28 Nov");
});

test("ewes past their days stay on the Watch and the season, with what a scan saw", async ({ page }) => {
  await page.clock.install({ time: new Date("2027-05-05T06:00:00-05:00") });
  const phone = new Phone(page);
  const scribe = new Scribe();
  const ewes = mated(scribe, 4);
  const scanned = new Date(RAM_IN.getTime() + 100 * DAY);
  for (const [ewe, lambs] of [[ewes[0], 0], [ewes[1], 2], [ewes[2], 1]] as const) {
    scribe.note(scanned, { scanned: { ewe, lambs, days: null } });
  }
  scribe.note(new Date(RAM_IN.getTime() + 150 * DAY), { "lamb-born": { dam: ewes[2], sex: "ewe", alive: true } });
  await phone.open();
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.tab("Watch");
  const row = phone.row("2 ewes");
  await expect(row).toContainText("Past the last day, not lambed");
  await row.getByRole("link").tap();
  const past = page.getByRole("region", { name: "Past her days" });
  await expect(past.locator(".row-name")).toHaveText(["Ewe 2", "Ewe 4"]);
  await expect(past.locator(".row").first()).toContainText("scanned 2");
  await fitsTheScreen(page);
  // In full, so that no target stands half under the bar at the foot.
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
});
