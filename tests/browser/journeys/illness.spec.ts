// A ewe or a lamb that is not right, and the udder after lambing: few taps at night, and a card that can be read out.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const NIGHT = new Date("2026-02-25T03:12:00-05:00");
const DAY = 24 * 60 * 60_000;

/** Takes a book in that was noted on another phone. */
async function takeIn(phone: Phone, scribe: Scribe): Promise<void> {
  await phone.openFile(scribe.file());
  await phone.tap(/^Add/);
  await phone.tab("Watch");
}

/** Returns every button or link that gives milk to a lamb. */
const milk = (page: Page) => page.getByRole("button", { name: /^(Fed|Feed|Nursed)\b/, disabled: false }).filter({ visible: true });

test("a ewe that is down ten days before lambing is the vet's now in four taps, and her card is read out", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe("-05:00");
  const ewe = scribe.note(new Date(NIGHT.getTime() - 200 * DAY), { "ewe-came": { tag: "15" } });
  // Eighty days on a scan of 57 days ago: ten days to go of 147.
  scribe.note(new Date(NIGHT.getTime() - 57 * DAY), { scanned: { ewe, lambs: 2, days: 80 } });
  await takeIn(phone, scribe);

  const before = phone.taps;
  await phone.tap("Not right", page.locator(".thumb"));
  await phone.tap("15");
  // All three questions stand on one screen, above the thumb, on a narrow phone too.
  const { width, height } = page.viewportSize() ?? { width: 390, height: 844 };
  for (const narrow of [320, width]) {
    await page.setViewportSize({ width: narrow, height });
    const last = await page.getByRole("group", { name: "No bleeding, nothing out?" }).boundingBox();
    const thumb = await page.locator(".thumb").boundingBox();
    expect((last?.y ?? Infinity) + (last?.height ?? 0), `at ${narrow} px`).toBeLessThanOrEqual(thumb?.y ?? 0);
  }
  await phone.tap("No", page.getByRole("group", { name: "Standing?" }));
  await phone.tap("What now?");
  expect(phone.taps - before).toBeLessThanOrEqual(4);
  await expect(page.getByText("Call your vet now").first()).toBeVisible();
  await expect(page.getByText("Never drench: nothing by mouth.")).toBeVisible();
  // What a reader says of the card, line by line.
  await expect(page.getByRole("region", { name: "For the call" })).toMatchAriaSnapshot(`
    - region "For the call":
      - heading "For the call"
      - paragraph: Read this out to your vet.
      - list:
        - listitem: Ewe 15
        - listitem: "Stage: Last six weeks before lambing"
        - listitem: "Scanned: twins"
        - listitem: "Since: 03:12"
        - listitem: "Seen: not standing"
        - listitem: "Given: nothing noted"
  `);
  await fitsTheScreen(page);
  await accessible(page);
  await phone.tab("Watch");
  await expect(page.locator(".row").first()).toContainText(/call your vet now/i);
});

test("a lamb with a wet chin at 26 hours is offered no milk though its bottle is due", async ({ page }) => {
  test.setTimeout(60_000);
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe("-05:00");
  const ago = (hours: number) => new Date(NIGHT.getTime() - hours * 60 * 60_000);
  const ewe = scribe.note(ago(200), { "ewe-came": { tag: "7" } });
  const born = { dam: ewe, alive: true };
  const lambs = [scribe.note(ago(26), { "lamb-born": born }), scribe.note(ago(25.9), { "lamb-born": born })];
  for (const lamb of lambs) {
    scribe.note(ago(25.5), { weighed: { lamb, kg: 4 } });
    scribe.note(ago(8), { fed: { lamb, ml: 150, milk: "ewe-colostrum", way: "bottle" } });
  }
  await takeIn(phone, scribe);
  await expect(page.getByRole("button", { name: /^Fed .*, 7a$/ })).toBeVisible();

  await phone.tap("Not right", page.locator(".thumb"));
  await phone.tap("7a");
  await phone.tap("Chin wet again");
  await phone.tap("What now?");
  await expect(page.getByText("Call your vet now").first()).toBeVisible();
  await phone.tab("Watch");
  const of7a = page.getByRole("button", { name: /^(Fed|Feed|Nursed)\b.*7a$/ });
  await expect(phone.row("7a")).toContainText(/call your vet now/i);
  await expect(of7a).toHaveCount(0);
  await page.goto("./#/bottle-round");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Bottle round");
  await expect(of7a).toHaveCount(0);
  await page.goto("./#/night");
  await expect(page.getByText("7a").first()).toBeVisible();
  await expect(milk(page)).toHaveCount(0);
  await page.goto("./#/");
  await phone.look("7a");
  await expect(milk(page)).toHaveCount(0);
  await expect(page.getByText(/until your vet allows it/).first()).toBeVisible();
});

test("with no thermometer at three in the morning a cold mouth holds milk and leads to warmth", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  await phone.tap("Ram lamb");
  await phone.weigh("4.0");
  await phone.tap("All lambs born");
  await page.clock.fastForward("02:00:00");
  await phone.tab("Watch");
  await phone.tap("Not right", page.locator(".thumb"));
  await phone.tap("12a");
  await phone.tap("No thermometer");
  await phone.tap("Cold");
  await phone.tap(/^Weakly/);
  await phone.tab("Watch");
  await expect(phone.row("12a")).toHaveAttribute("data-state", "danger");
  await expect(milk(page)).toHaveCount(0);
});

test("the udder after lambing: both halves in one tap, and a half without milk leads on", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  await phone.tap("Ram lamb");
  await phone.weigh("4.0");
  await phone.tap("All lambs born");
  await page.clock.fastForward("02:05:00");
  await phone.tab("Watch");
  await phone.tap("Half by half, Ewe 12");
  const sheet = page.getByRole("dialog");
  await fitsTheScreen(page);
  await accessible(page);
  await phone.tap("no milk", sheet.getByRole("group", { name: "Left half" }));
  await phone.tap("milk, warm, soft", sheet.getByRole("group", { name: "Right half" }));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Ewe 12");
  await expect(page.getByText("Leave one lamb on her.")).toBeVisible();
  await page.clock.fastForward("01:05:00");
  await phone.tab("Watch");
  const before = phone.taps;
  await phone.tap("Both run, Ewe 12");
  expect(phone.taps - before).toBe(1);
});
