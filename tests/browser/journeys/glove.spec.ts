// A glove presses twice: what has moved takes no press where it now stands, until it has stood there for a while.
import type { Locator, Page } from "@playwright/test";
import { Phone } from "../barn";
import { facts, first, threeNavels } from "../navels";
import { expect, test } from "../watching";

/** So long after the first a glove presses again, in milliseconds: too late for a double tap, and with room for a slow machine
 *  before what came up has stood for its 1.2 s. */
const AGAIN = 600;

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
  const noted = (await facts(phone)).filter((fact) => !["ewe-came", "lamb-born", "all-born", "illness", "care"].includes(fact));
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
  await expect(page.locator(".noted-now")).not.toBeEmpty();
});

test("a sheet that comes up under the finger takes no press, and is not closed by one", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("3");
  await phone.tap("Ewe lamb");
  await phone.tap("More about this lamb");
  for (const name of ["Vigor", "Belly", "Died"]) {
    // What came or moved under the last press is barred at first, however slow the machine: it is waited for.
    const ask = page.getByRole("button", { name, exact: true });
    await phone.drawn();
    await expect(ask).toBeEnabled();
    await pressTwice(page, ask);
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
  await expect(page.locator(".readout-number")).toHaveText("4.2");
  for (const at of [two, two]) await page.touchscreen.tap(...at);
  await expect(page.locator(".readout-number")).toHaveText("4.222");
});

test("a press by keyboard is never held back", async ({ page }) => {
  const phone = await threeNavels(page);
  await first(phone, "7a").focus();
  await page.keyboard.press("Enter");
  await first(phone, "8a").focus();
  await page.keyboard.press("Enter");
  const noted = (await facts(phone)).filter((fact) => !["ewe-came", "lamb-born", "all-born", "illness", "care"].includes(fact));
  expect(noted).toEqual(["navel-dipped", "navel-dipped"]);
});

test("what is refused is said where the finger is, and takes nothing that is open away", async ({ page, context }) => {
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("23");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await expect(page.locator(".undo-bar")).toContainText("Weighed 4.0 kg");
  await phone.tap("More about this lamb");
  // A tube is for a lamb that was seen to swallow.
  await phone.tap(/Take its temperature|Cold lamb: what to do/);
  await phone.weigh("39.2");
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  await phone.tap("Lamb record");
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
  await phone.open("#/settings/farm");
  await phone.tap("lb, fl oz, °F");
  await phone.saved();
  await phone.tab("Watch");
  await phone.look("25a");
  await expect(page.locator(".card .figure").first()).toContainText("4.7");
  await expect(page.getByRole("button", { name: "Fed 4.7" })).toBeVisible();
  await phone.tap("Take its temperature");
  await phone.weigh("100.4");
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  await expect(page.locator(".steps")).toContainText("4.7 fl oz");
  await expect(page.getByRole("button", { name: /4\.7 fl oz/ })).toBeVisible();
});
