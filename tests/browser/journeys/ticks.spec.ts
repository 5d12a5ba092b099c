// What was pressed is a tick in its place: a row stays where the hand is, and nothing moves for a tick.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { births, facts, first, threeNavels } from "../navels";
import { accessible, expect, test } from "../watching";

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
  await expect(page.locator(".undo-bar > p")).toHaveText("9a: Navel dipped");
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
  const phone = await births(page, [["7", 380], ["8", 375]], false);
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
  await phone.tap("What shows");
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
  for (const sex of ["Ewe lamb", "Ram lamb"]) {
    await phone.tap(sex);
    await phone.weigh("4.0");
    await page.clock.runFor(1_000);
    for (const seen of ["Navel dipped", "Up"]) await phone.tap(seen);
    if (sex === "Ewe lamb") await phone.tap("Next lamb");
  }
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
  await page.clock.fastForward("07:45:00");
  await turn(false);
  const missed = page.locator(".notice", { hasText: /late/i });
  await expect(missed).toBeVisible();
  // Her own jobs are done first.
  for (const what of ["Both run, Ewe 12", "Up, eating, Ewe 12", "Passed, Ewe 12"]) {
    await phone.tap(what, phone.row("Ewe 12"));
    await page.clock.runFor("00:10");
  }
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
      const button = row.locator("button[data-size=action]").filter({ hasText: /^(Fed|Dipped|Up|Nursed)/ }).first();
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

/** Returns where everything that can be pressed stands on the page, by its name; what was ticked or told apart. */
function places(page: Page): Promise<Record<string, number>> {
  return page.locator("main").evaluate((main) => {
    // The line above goes with the glass, as what is under the thumb does.
    const pressed = [...main.querySelectorAll("button, a[href]")].filter((one) => !one.closest(".thumb, .top-bar"));
    const named = (one: Element) => (one.getAttribute("aria-label") ?? one.textContent ?? "").replace(/\d\d:\d\d/, "").trim();
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
  await nothingMoves(page, ["Straining", "Helping", "Vulva slack", "Vet called"]);
  await page.evaluate(() => scrollTo(0, 0));
  await phone.tap("Ewe lamb");
  await expect(page.locator(".keypad")).toBeVisible();
  await nothingMoves(page, ["Navel dipped", "Up", "Nursed", "Ram lamb", "Born dead", "Ram lamb"]);
  await nothingMoves(page, (await page.locator(".lambing-help button").allInnerTexts()).map((text) => text.trim()));
  await phone.weigh("4.2");
  await expect(page.getByRole("button", { name: "Undo" })).toBeVisible();
  await nothingMoves(page, ["Nursed", "Navel dipped"]);
});
