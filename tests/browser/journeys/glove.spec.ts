// A glove presses twice: what has moved takes no press where it now stands, until it has stood there for a while.
import type { Locator, Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, test } from "../watching";

/** So long after the first a glove presses again, in milliseconds: too late for a double tap. */
const AGAIN = 900;

/** Returns the middle of something, where a finger lands. */
async function middle(of: Locator): Promise<[number, number]> {
  await of.scrollIntoViewIfNeeded();
  const box = await of.boundingBox();
  if (!box) throw new Error("it is not on the screen");
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Presses where something stands, and there again. */
async function pressTwice(page: Page, on: Locator): Promise<void> {
  const at = await middle(on);
  await page.touchscreen.tap(...at);
  await page.waitForTimeout(AGAIN);
  await page.touchscreen.tap(...at);
}

/** Returns the facts in the book, each by its name, in the order in which they were noted. */
async function facts(phone: Phone): Promise<string[]> {
  await phone.saved();
  const { entries } = JSON.parse((await phone.handOver()).text) as { entries: { event: object | string }[] };
  return entries.map(({ event }) => (typeof event === "string" ? event : String(Object.keys(event)[0])));
}

/** A night with three lambs whose navels wait, the oldest first. */
async function threeNavels(page: Page): Promise<Phone> {
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  for (const [tag, minutes] of [["7", 28], ["8", 27], ["9", 26]] as const) {
    const born = new Date(Date.now() - minutes * 60_000);
    const ewe = scribe.note(new Date(born.getTime() - 3_600_000), { "ewe-came": { tag } });
    const lamb = scribe.note(born, { "lamb-born": { dam: ewe, beside: null, sex: "ram", alive: true } });
    scribe.note(born, { "all-born": { lamb } });
  }
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await expect(page.getByText(/^Done\./)).toBeVisible();
  await phone.tab("Watch");
  await expect(phone.row("7a")).toBeVisible();
  return phone;
}

const first = (phone: Phone, name: string) => phone.row(name).locator("button[data-size=action]").first();

test("a ram lamb is not born dead by a second press in the same place", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  await pressTwice(page, page.getByRole("button", { name: "Ram lamb", exact: true }));
  const dead = page.getByRole("button", { name: "Born dead", exact: true });
  await expect(page.getByRole("heading", { name: "12a", exact: true })).toBeVisible();
  await expect(dead).toHaveAttribute("aria-pressed", "false");
  await expect(page.getByRole("button", { name: "Ram lamb", exact: true })).toHaveAttribute("aria-pressed", "true");
  expect((await facts(phone)).filter((fact) => fact === "lamb-born" || fact === "amended")).toEqual(["lamb-born"]);
});

test("what stands there counts once it has stood there for a while", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  const ram = page.getByRole("button", { name: "Ram lamb", exact: true });
  const at = await middle(ram);
  await page.touchscreen.tap(...at);
  await expect(page.locator("[aria-disabled]").first()).toBeVisible();
  // From the frame that showed it: 1.2 s, and a little for the page's own work.
  await page.waitForTimeout(1300);
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  const under = await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.closest("button")?.textContent, at);
  expect(under).toBe("Born dead");
  await page.touchscreen.tap(...at);
  await expect(page.getByRole("button", { name: "Born dead", exact: true })).toHaveAttribute("aria-pressed", "true");
});

test("a second press on the Watch notes nothing of another animal, nor another thing of the same", async ({ page }) => {
  const phone = await threeNavels(page);
  await expect(first(phone, "7a")).toHaveText("Dipped");
  await pressTwice(page, first(phone, "7a"));
  const noted = (await facts(phone)).filter((fact) => !["ewe-came", "lamb-born", "all-born"].includes(fact));
  expect(noted).toEqual(["navel-dipped"]);
});

test("another finger does not press what has moved under it either", async ({ page }) => {
  const phone = await threeNavels(page);
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  await expect(first(phone, "8a")).toBeInViewport();
  const one = await middle(first(phone, "7a"));
  const other = await first(phone, "8a").boundingBox();
  if (!other) throw new Error("8a is on the screen");
  await page.touchscreen.tap(...one);
  await page.waitForTimeout(400);
  await page.touchscreen.tap(other.x + other.width / 2, other.y + other.height / 2);
  const { text } = await phone.handOver();
  const { entries } = JSON.parse(text) as { entries: { id: string; event: Record<string, { lamb?: string }> }[] };
  const born = entries.filter(({ event }) => event["lamb-born"]).map(({ id }) => id);
  const dipped = entries.flatMap(({ event }) => event["navel-dipped"]?.lamb ?? []);
  // The first, and of the second press either nothing or what was aimed at.
  expect(dipped[0]).toBe(born[0]);
  expect(dipped).not.toContain(born[2]);
  expect(entries.flatMap(({ event }) => Object.keys(event))).not.toContain("sucked");
});

test("a row that moved since another tab noted something takes no press, and then it does", async ({ page, context }) => {
  const phone = await threeNavels(page);
  await phone.saved();
  const other = new Phone(await context.newPage());
  await other.open();
  await page.bringToFront();
  await expect(first(phone, "7a")).toHaveText("Dipped");
  const at = await middle(first(phone, "7a"));
  const before = await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.closest("button")?.ariaLabel, at);
  expect(before).toBe("Dipped, 7a");
  await first(other, "7a").evaluate((button: HTMLElement) => button.click());
  const under = () =>
    page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.closest("button")?.ariaLabel, at);
  await expect.poll(under).not.toBe("Dipped, 7a");
  await page.touchscreen.tap(...at);
  await page.waitForTimeout(200);
  const there = await page.evaluate(() => localStorage.length);
  await page.waitForTimeout(1300);
  expect(await page.evaluate(() => localStorage.length)).toBe(there);
  await page.touchscreen.tap(...at);
  await expect(page.locator(".undo-bar [role=status]")).not.toBeEmpty();
});

test("a sheet that comes up under the finger takes no press, and is not closed by one", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("3");
  await phone.tap("Ewe lamb");
  await phone.tap("More about this lamb");
  for (const name of ["Vigor", "Belly", "Died"]) {
    await pressTwice(page, page.getByRole("button", { name, exact: true }));
    await expect(page.getByRole("dialog")).toBeVisible();
    await phone.tap("Close", page.getByRole("dialog"));
    await expect(page.getByRole("dialog")).toHaveCount(0);
  }
  expect((await facts(phone)).filter((fact) => ["vigor-scored", "belly-felt", "died"].includes(fact))).toEqual([]);
});

test("a tick is not taken back by the glove that set it", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("4");
  await phone.tap("Ewe lamb");
  const dipped = page.getByRole("button", { name: "Navel dipped", exact: true });
  await expect(dipped).toBeEnabled();
  await pressTwice(page, dipped);
  await expect(dipped).toHaveAttribute("aria-pressed", "true");
  // Once it has stood for a while it can be taken back.
  await dipped.tap();
  await expect(dipped).toHaveAttribute("aria-pressed", "false");
});

test("keys and other things that stay where they are take every press", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("5");
  await phone.tap("Ewe lamb");
  const key = (name: string) => page.getByRole("button", { name, exact: true });
  await expect(key("4")).toBeEnabled();
  const [four, point, two] = [await middle(key("4")), await middle(key("point")), await middle(key("2"))];
  for (const at of [four, point, two]) await page.touchscreen.tap(...at);
  await expect(page.locator(".readout-value")).toHaveText("4.2");
  for (const at of [two, two]) await page.touchscreen.tap(...at);
  await expect(page.locator(".readout-value")).toHaveText("4.222");
});

/** Returns what stands in a row where its button was pressed: a tick, and the word of the button. */
const ticked = (phone: Phone, name: string) => phone.row(name).locator(".row-action [data-done=true]");

/** Returns the facts that were noted on this phone since the file was taken in, each with its lamb, as the disk has them. */
function notedHere(page: Page, fact: string): Promise<string[]> {
  return page.evaluate((fact) => {
    const lines = Object.keys(localStorage).filter((key) => key.startsWith("yeanling/entry/"));
    const events = lines.sort().map((key) => JSON.parse(localStorage.getItem(key) ?? "{}").event as Record<string, { lamb: string }>);
    return events.flatMap((event) => event[fact]?.lamb ?? []);
  }, fact);
}

test("three rows are pressed one after another where they stood at first, and each becomes a tick in its place", async ({ page }) => {
  // High enough for three rows with their ribbons above the bars.
  await page.setViewportSize({ width: 390, height: 1600 });
  const phone = await threeNavels(page);
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  const names = ["7a", "8a", "9a"];
  const stood = async (name: string) => (await phone.row(name).boundingBox())?.y;
  const [boxes, tops] = [new Map<string, unknown>(), new Map<string, unknown>()];
  const places: [number, number][] = [];
  for (const name of names) {
    await expect(first(phone, name)).toHaveText("Dipped");
    const box = await first(phone, name).boundingBox();
    if (!box) throw new Error(`${name} is on the screen`);
    boxes.set(name, box);
    tops.set(name, await stood(name));
    places.push([box.x + box.width / 2, box.y + box.height / 2]);
  }
  for (const [at, place] of places.entries()) {
    await page.touchscreen.tap(...place);
    await page.waitForTimeout(300);
    // All that is ticked so far, and what is not, stands where it stood.
    for (const [other, name] of names.entries()) {
      const here = other <= at ? ticked(phone, name) : first(phone, name);
      await expect(here).toContainText("Dipped");
      expect(await here.boundingBox(), name).toEqual(boxes.get(name));
      expect(await stood(name), name).toBe(tops.get(name));
    }
  }
  await phone.saved();
  const dipped = await notedHere(page, "navel-dipped");
  expect(new Set(dipped).size, "each of the three, and none twice").toBe(3);
  expect(dipped).toHaveLength(3);
  for (const fact of ["sucked", "stood", "fed", "put-off"]) expect(await notedHere(page, fact)).toEqual([]);
  await accessible(page);
  // It is no button any more, and read as done; what was noted is said by the bar alone.
  await expect(ticked(phone, "9a").getByRole("img", { name: "done" })).toBeVisible();
  await expect(phone.row("9a").getByRole("button", { name: /^Dipped/ })).toHaveCount(0);
  await expect(page.locator(".undo-bar [role=status]")).toHaveText("9a: Navel dipped");
  expect(await ticked(phone, "9a").evaluate((one) => one.closest("[aria-live], [role=status], [role=alert]"))).toBeNull();

  // Undone, it is a button again, at once and in its place; the others stay ticked.
  await phone.tap("Undo", page.locator(".undo-bar"));
  await expect(first(phone, "9a")).toHaveText("Dipped");
  expect(await first(phone, "9a").boundingBox()).toEqual(boxes.get("9a"));
  for (const name of ["7a", "8a"]) {
    await expect(ticked(phone, name)).toBeVisible();
    expect(await stood(name)).toBe(tops.get(name));
  }

  // Once the offer has ended, each goes where it belongs.
  const section = (name: string) => page.getByRole("region", { name, exact: true }).locator(".row-name");
  await expect(section("Now")).toHaveText(["9a", "7a", "8a"], { timeout: 12_000 });
  // They move with nobody's press, so what came under a finger takes none for a while.
  await expect(page.locator(".row [aria-disabled]").first()).toBeVisible();
  await expect(first(phone, "7a")).toHaveText("Score");
  await expect(page.locator("[data-done]")).toHaveCount(0);
  await expect(page.locator(".room[data-room], .row[data-size]")).toHaveCount(0);
});

test("a row stays with its tick though nothing more is due for it, and leaves when the offer to undo ends", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  for (const [tag, minutes] of [["7", 380], ["8", 375]] as const) {
    const born = new Date(Date.now() - minutes * 60_000);
    const ewe = scribe.note(new Date(born.getTime() - 3_600_000), { "ewe-came": { tag } });
    const lamb = scribe.note(born, { "lamb-born": { dam: ewe, beside: null, sex: "ram", alive: false } });
    scribe.note(born, { "all-born": { lamb } });
  }
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await expect(page.getByText(/^Done\./)).toBeVisible();
  await phone.tab("Watch");
  await expect(first(phone, "Ewe 7")).toHaveText("Passed");
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  const before = await first(phone, "Ewe 8").boundingBox();
  const heights = (await phone.row("Ewe 7").boundingBox())?.height;
  const tally = await page.locator(".title").boundingBox();
  await first(phone, "Ewe 7").tap();
  await expect(ticked(phone, "Ewe 7")).toHaveText("Passed");
  await expect(phone.row("Ewe 7")).toContainText("Nothing due");
  // The other answers to it are gone, and their room stays.
  await expect(phone.row("Ewe 7").locator("button[data-size=action], a.button, .others button")).toHaveCount(0);
  expect((await phone.row("Ewe 7").boundingBox())?.height).toBe(heights);
  expect(await page.locator(".title").boundingBox()).toEqual(tally);
  expect(await first(phone, "Ewe 8").boundingBox()).toEqual(before);
  await first(phone, "Ewe 8").tap();
  await expect(ticked(phone, "Ewe 8")).toHaveText("Passed");
  await expect(phone.row("Ewe 7")).toBeVisible();
  await expect(phone.row("Ewe 7")).toHaveCount(0, { timeout: 12_000 });
  await expect(phone.row("Ewe 8")).toHaveCount(0);
});

test("an animal that comes into danger goes first at once, whatever is held in its place", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("7");
  await phone.tap("Ram lamb");
  await phone.tap("All lambs born");
  await phone.lambing("14");
  await phone.tap("What shows…");
  await phone.tap("Tail", page.getByRole("dialog"));
  await phone.tab("Watch");
  const ewe = phone.row("Ewe 14");
  await expect(ewe).toBeVisible();
  // By the farm's limit a tail is in danger a quarter of an hour after it was seen.
  for (let minutes = 0; minutes < 13; minutes += 1) await page.clock.runFor("01:00");
  await expect(ewe).toHaveAttribute("data-state", "late");
  await phone.row("7a").getByRole("button", { name: "Dipped, 7a" }).tap();
  const done = phone.row("7a").locator("[data-done=true]");
  await expect(done).toHaveText("Dipped");
  // The offer goes on with every press.
  for (let seconds = 0; (await ewe.getAttribute("data-state")) === "late"; seconds += 7) {
    expect(seconds).toBeLessThan(180);
    await page.clock.runFor("00:05");
    await phone.tap("Undo", page.locator(".undo-bar"));
    await page.clock.runFor("00:02");
    await phone.row("7a").getByRole("button", { name: "Dipped, 7a" }).tap();
  }
  await expect(ewe).toHaveAttribute("data-state", "danger");
  await expect(done).toHaveText("Dipped");
  const danger = page.getByRole("region", { name: "Danger", exact: true });
  await expect(danger.locator(".row-name")).toHaveText(["Ewe 14"]);
  await expect(page.locator(".row-name").first()).toHaveText("Ewe 14");
});

test("what stands over the rows makes no room for a tick either", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 1600 });
  await page.clock.install({ time: new Date("2026-02-25T01:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await page.clock.runFor(1_000);
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.weigh("4.0");
  await page.clock.runFor(1_000);
  await phone.tap("All lambs born");
  for (const name of ["12a", "12b"]) {
    await phone.look(name);
    await phone.tap(/^Fed \d/);
    await phone.tab("Watch");
  }
  // The phone goes into a pocket for half the night, and comes out again.
  const turn = (hidden: boolean) =>
    page.evaluate((hidden) => {
      Object.defineProperty(document, "hidden", { value: hidden, configurable: true });
      document.dispatchEvent(new Event("visibilitychange"));
    }, hidden);
  await turn(true);
  await page.clock.fastForward("06:30:00");
  await turn(false);
  const missed = page.locator(".notice", { hasText: /late/i });
  await expect(missed).toBeVisible();
  const round = phone.row("Bottle round");
  await expect(round).toContainText("2 lambs");
  await page.clock.runFor("00:02");
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  const tops = async () => {
    const rows = await page.locator("main .row, main .section, main .notice").all();
    return Promise.all(rows.map(async (row) => (await row.boundingBox())?.y));
  };
  const before = await tops();
  const [a, b] = ["12a", "12b"].map((name) => phone.row(name));
  for (const row of [a, b]) {
    for (let presses = 0; presses < 9; presses += 1) {
      const button = row.locator("button[data-size=action]").filter({ hasText: /^(Fed|Dipped|Up|Sucked)/ }).first();
      if ((await button.count()) === 0) break;
      const word = await button.innerText();
      await button.tap();
      await expect(row.locator("[data-done=true]").filter({ hasText: word }).first(), word).toBeVisible();
      const after = await tops();
      expect(after).toHaveLength(before.length);
      const moved = after.filter((top, at) => Math.abs((top ?? 0) - (before[at] ?? 0)) > 1);
      expect(moved, `what moved for ${word}`).toEqual([]);
    }
  }
  await expect(missed).toContainText("Nothing you missed is still late");
  await page.clock.runFor("00:09");
  await expect(missed).toHaveCount(0);
  // Both are fed: what is told is the next round.
  await expect(round).toContainText("2 lambs, from");
  await expect(page.locator(".room[data-room]")).toHaveCount(0);
});

test("a press by keyboard is never held back", async ({ page }) => {
  const phone = await threeNavels(page);
  await first(phone, "7a").focus();
  await page.keyboard.press("Enter");
  await first(phone, "8a").focus();
  await page.keyboard.press("Enter");
  const noted = (await facts(phone)).filter((fact) => !["ewe-came", "lamb-born", "all-born"].includes(fact));
  expect(noted).toEqual(["navel-dipped", "navel-dipped"]);
});

/** Returns where everything that can be pressed stands on the page, by its name; what was ticked or told apart. */
function places(page: Page): Promise<Record<string, number>> {
  return page.locator("main").evaluate((main) => {
    const thumb = main.querySelector(".thumb");
    const pressed = [...main.querySelectorAll("button, a[href]")].filter((one) => !thumb?.contains(one));
    const named = (one: Element) => (one.textContent ?? "").replace(/\d\d:\d\d/, "").trim();
    return Object.fromEntries(pressed.map((one) => [named(one), Math.round(one.getBoundingClientRect().top + scrollY)]));
  });
}

/** Presses each of these, and finds all that stood on the page before where it stood. */
async function nothingMoves(page: Page, names: string[]): Promise<void> {
  for (const name of names) {
    const before = await places(page);
    await page.getByRole("button", { name: new RegExp(`^${name}`) }).first().tap();
    await expect(page.locator("[aria-disabled]")).toHaveCount(0, { timeout: 8000 });
    const after = await places(page);
    const moved = Object.keys(before).filter((one) => one in after && Math.abs((after[one] ?? 0) - (before[one] ?? 0)) > 1);
    expect(moved, `what moved for ${name}`).toEqual([]);
  }
}

test("on the lambing screen nothing below moves for a tick", async ({ page }) => {
  test.setTimeout(120_000);
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("21");
  await nothingMoves(page, ["Off alone", "Udder tight", "Restless", "Water bag", "Straining", "Discharge"]);
  await phone.tab("Watch");
  await phone.lambing("21");
  // What is due stands above now, and keeps its room.
  await expect(page.locator(".labor-due .card")).toBeVisible();
  await nothingMoves(page, ["Straining", "Helping", "Slack behind", "Vet called"]);
  await page.evaluate(() => scrollTo(0, 0));
  await phone.tap("Ewe lamb");
  await expect(page.locator(".keypad")).toBeVisible();
  await nothingMoves(page, ["Navel dipped", "Up", "Sucked", "Ram lamb", "Born dead", "Ram lamb"]);
  await nothingMoves(page, (await page.locator(".lambing-help button").allInnerTexts()).map((text) => text.trim()));
  await phone.weigh("4.2");
  await expect(page.getByRole("button", { name: "Undo" })).toBeVisible();
  await nothingMoves(page, ["Sucked", "Navel dipped"]);
});

test("what is refused is said where the finger is, and takes nothing that is open away", async ({ page, context }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("23");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await expect(page.locator(".undo-bar")).toContainText("Weighed 4.0 kg");
  await phone.tap("More about this lamb");
  await page.getByText("By tube").tap();
  const tubed = page.getByRole("button", { name: /^All true/ });
  await tubed.tap();
  await expect(page.locator(".noted-text", { hasText: "by tube" })).toBeVisible();
  await expect(tubed).toBeEnabled();
  if (!(await tubed.isVisible())) await page.getByText("By tube").tap();
  await tubed.tap();
  const refused = page.locator(".refusal [role=alert]");
  await expect(refused).toBeInViewport({ ratio: 1 });
  await expect(page.locator(".noted-text", { hasText: "by tube" })).toHaveCount(1);
  await phone.tap("OK", page.locator(".refusal"));
  await expect(refused).toHaveCount(0);

  // On a sheet: what another tab noted meanwhile forbids it.
  await phone.tap("Vigor");
  const dialog = page.getByRole("dialog");
  await expect(dialog).toBeVisible();
  await phone.saved();
  const other = new Phone(await context.newPage());
  await other.open(new URL(page.url()).hash);
  await other.tap("Died");
  await other.page.getByRole("dialog").getByRole("button").first().tap();
  await expect(other.page.getByText("It is dead", { exact: false }).or(other.page.locator(".notice")).first()).toBeVisible();
  await other.saved();
  await page.bringToFront();
  await page.waitForTimeout(500);
  await dialog.locator(".choice").first().tap();
  await expect(dialog.locator(".refusal [role=alert]")).toBeInViewport({ ratio: 1 });
  await expect(dialog).toBeVisible();
});

test("the wrong ewe is put right from the lamb with all that hangs on it, and taken back as one", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Restless");
  await phone.tap("Ewe lamb");
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.tap("All lambs born");
  await phone.look("14b");
  await phone.tap("Wrong ewe?");
  const dialog = page.getByRole("dialog");
  await dialog.getByLabel("Her tag").fill("41");
  await phone.tap("Add ewe 41", dialog);
  await expect(dialog).toContainText("From ewe 14 to ewe 41.");
  await expect(dialog.getByRole("button", { name: "Both lambs" })).toHaveAttribute("aria-pressed", "true");
  await expect(dialog).toContainText("Seen: restless");
  await expect(dialog.getByRole("button", { name: "That was ewe 41 too" })).toHaveAttribute("aria-pressed", "true");
  await phone.tap("Move to ewe 41", dialog);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("41b");
  await phone.tap("Undo", page.locator(".undo-bar"));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("14b");
  // Again, and this one alone: the other stays, with what was seen of its dam.
  await phone.tap("Wrong ewe?");
  await phone.tap("41", dialog);
  await phone.tap("Only 14b", dialog);
  await expect(dialog.getByRole("button", { name: "That was ewe 14", exact: true })).toHaveAttribute("aria-pressed", "true");
  await phone.tap("Move to ewe 41", dialog);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("41a");
  expect((await phone.flock()).map((row) => row.split("\n")[0])).toEqual(expect.arrayContaining(["14a", "41a"]));
  await phone.look("Ewe 14");
  await expect(page.locator(".noted-text", { hasText: "restless" })).toBeVisible();
});

test("the aid, its button and the lamb's own page speak of one number", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("25");
  await phone.tap("Ewe lamb");
  // 2.78 kg: 50 ml/kg are 139 ml, 4.7 fl oz.
  await phone.weigh("2.78");
  await expect(page.locator(".undo-bar")).toContainText("Weighed 2.78 kg");
  await phone.open("#/practice");
  await phone.tap("lb, fl oz, °F");
  await phone.saved();
  await phone.tab("Watch");
  await phone.look("25a");
  await expect(page.locator(".card .figure").first()).toContainText("4.7");
  await expect(page.getByRole("button", { name: "Fed 4.7" })).toBeVisible();
  await phone.tap("Take its temperature");
  await phone.weigh("100.4");
  await phone.tap("That is it");
  await phone.tap("Yes, both");
  await expect(page.locator(".steps")).toContainText("4.7 fl oz");
  await expect(page.getByRole("button", { name: /4\.7 fl oz/ })).toBeVisible();
});
