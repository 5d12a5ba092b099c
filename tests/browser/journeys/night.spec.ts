// The phone on the nail: black, awake, armed. What becomes due rings louder and louder until someone is up.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { accessible, expect, fitsTheScreen, test } from "../watching";

declare global {
  interface Window {
    heard: { loudness: number; state: AudioContextState }[];
    asked: string[];
    shook: number;
  }
}

/** Listens to what the real sound engine is told to play, and to how often the screen is asked to stay on. */
async function listen(page: Page, wake: "gives" | "refuses" | "lacks" = "gives"): Promise<void> {
  await page.addInitScript((wake) => {
    Object.assign(window, { heard: [], asked: [], shook: 0 });
    const start = OscillatorNode.prototype.start;
    const gains = new WeakMap<AudioNode, GainNode>();
    const connect = AudioNode.prototype.connect;
    AudioNode.prototype.connect = function (this: AudioNode, to: AudioNode) {
      if (to instanceof GainNode) gains.set(this, to);
      return connect.call(this, to);
    } as typeof connect;
    OscillatorNode.prototype.start = function (when) {
      window.heard.push({ loudness: gains.get(this)?.gain.value ?? 0, state: this.context.state });
      start.call(this, when);
    };
    navigator.vibrate = () => Boolean((window.shook += 1));
    const lock = {
      request: async (kind: string) => {
        window.asked.push(kind);
        if (wake === "refuses") throw new DOMException("battery", "NotAllowedError");
        const sentinel = { released: false, onrelease: null as null | (() => void), release: async () => (sentinel.released = true) };
        document.addEventListener("visibilitychange", () => {
          if (!document.hidden || sentinel.released) return;
          sentinel.released = true;
          sentinel.onrelease?.();
        });
        return sentinel;
      },
    };
    Object.defineProperty(navigator, "wakeLock", { value: wake === "lacks" ? undefined : lock });
  }, wake);
}

/** Returns how loud each tone was since the last question. */
async function heard(page: Page): Promise<number[]> {
  const tones = await page.evaluate(() => window.heard.splice(0));
  expect(tones.every(({ state }) => state !== "closed")).toBe(true);
  return tones.map(({ loudness }) => loudness);
}

async function turn(page: Page, state: "hidden" | "visible"): Promise<void> {
  await page.evaluate((state) => {
    Object.defineProperty(document, "visibilityState", { value: state, configurable: true });
    Object.defineProperty(document, "hidden", { value: state === "hidden", configurable: true });
    document.dispatchEvent(new Event("visibilitychange"));
  }, state);
}

/** A lamb of 03:00 whose navel is dipped, and the phone on the nail. */
async function night(page: Page): Promise<Phone> {
  await page.clock.install({ time: new Date("2026-02-25T03:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("27");
  await phone.tap("Ewe lamb");
  await phone.tap("Navel dipped");
  await phone.tap("All lambs born");
  await phone.saved();
  await phone.tap("Night clock");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Night clock");
  return phone;
}

test("armed, it rings when a duty becomes due, louder until tapped, and leads to the lamb", async ({ page }) => {
  await listen(page);
  const phone = await night(page);
  await expect(page.getByText("Rings only while this screen is on.")).toBeVisible();
  await expect(page.getByText("Alarm off.")).toBeVisible();
  expect(await heard(page)).toEqual([]);
  await phone.tap("Turn alarm on");
  await expect(page.getByText(/Alarm on, tested 03:00/)).toBeVisible();
  expect(await heard(page), "the test: two tones").toEqual([0.25, 0.25]);

  // Its vigor is to be scored 5 minutes after birth (ours).
  await expect(page.getByText("Nothing due. Next look: 03:05")).toBeVisible();
  await expect(page.getByRole("timer")).toContainText("5 min");
  await page.clock.runFor("01:00");
  await expect(page.getByRole("timer")).toContainText("4 min");
  await page.clock.runFor("03:30");
  expect(await heard(page), "not a second early").toEqual([]);
  await page.clock.runFor("00:35");
  // A score is told, and wakes nobody.
  await expect(page.locator(".night-due").first()).toContainText("Score its vigor");
  const ring = page.locator(".ring");
  await expect(ring).toHaveCount(0);
  expect(await heard(page)).toEqual([]);
  await page.clock.fastForward("24:00");
  await page.clock.runFor("01:05");
  await expect(ring).toContainText("27a");
  await expect(ring).toContainText("Not seen up");
  await page.clock.runFor("00:40");
  const tones = await heard(page);
  expect(tones.length).toBeGreaterThan(60);
  expect(tones).toEqual(tones.toSorted((a, b) => a - b));
  expect([...new Set(tones.map((tone) => tone.toFixed(2)))]).toEqual(["0.06", "0.12", "0.25", "0.50", "1.00"]);
  expect(await page.evaluate(() => window.shook)).toBeGreaterThan(30);
  await accessible(page);

  // Anywhere will do: here the upper left corner.
  await ring.tap({ position: { x: 20, y: 20 } });
  await expect(ring).toHaveCount(0);
  await heard(page);
  await page.clock.runFor("01:30");
  expect(await heard(page), "once answered it is quiet").toEqual([]);
  await expect(page.getByText(/Alarm on/)).toBeVisible();
  await phone.tap("Go to 27a");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("27a");
});

test("what is done before anyone is up stops ringing; what becomes late rings again", async ({ page, context }) => {
  test.setTimeout(90_000);
  await listen(page);
  const phone = await night(page);
  await phone.tap("Turn alarm on");
  await expect(page.getByText(/Alarm on/)).toBeVisible();
  await page.clock.fastForward("30:10");
  await expect(page.locator(".ring")).toContainText("Not seen up");
  // Someone notes it in another tab, as another phone's book would bring it.
  const other = new Phone(await context.newPage());
  await other.page.clock.install({ time: new Date("2026-02-25T03:31:00-05:00") });
  await other.open();
  await other.look("27a");
  await other.tap("Up");
  await other.saved();
  await other.page.close();
  await expect(page.locator(".ring")).toHaveCount(0);
  await heard(page);
  // Seen to suck is due at an hour, and late at two: each rings once.
  await page.clock.fastForward("30:00");
  await expect(page.locator(".ring")).toContainText("27a");
  await page.locator(".ring").tap();
  await heard(page);
  await page.clock.fastForward("20:00");
  await page.clock.runFor("00:05");
  expect(await heard(page)).toEqual([]);
  await page.clock.fastForward("40:00");
  await expect(page.locator(".ring")).toBeVisible();
});

test("the screen is held awake, again after each return, and not once the night is left", async ({ page }) => {
  await listen(page);
  const phone = await night(page);
  await expect(page.getByText("Held awake.")).toBeVisible();
  const asked = () => page.evaluate(() => window.asked.length);
  expect(await asked()).toBe(1);
  await turn(page, "hidden");
  await turn(page, "visible");
  await expect.poll(asked).toBe(2);
  await expect(page.getByText("Held awake.")).toBeVisible();
  await phone.tap("Watch");
  await expect(page.getByRole("navigation")).toBeVisible();
  await turn(page, "hidden");
  await turn(page, "visible");
  await page.clock.runFor(2000);
  expect(await asked()).toBe(2);
});

for (const wake of ["refuses", "lacks"] as const) {
  test(`a phone that ${wake} to stay awake is told of`, async ({ page }) => {
    await listen(page, wake);
    await night(page);
    await expect(page.getByText("This phone may go dark.")).toBeVisible();
    await expect(page.getByText("Set your phone’s alarm for 03:05")).toBeVisible();
  });
}

test("the alarms go to the phone's calendar at their right times, and again under the same names", async ({ page }) => {
  await listen(page);
  const phone = await night(page);
  const take = async (button = "Alarms to my calendar"): Promise<string> => {
    const download = page.waitForEvent("download");
    await phone.tap(button);
    const file = await download;
    expect(file.suggestedFilename()).toBe("yeanling-alarms.ics");
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    return Buffer.concat(chunks).toString("utf8").replaceAll("\r\n ", "");
  };
  const all = (text: string, name: string) => [...text.matchAll(new RegExp(`^${name}:(.*)\r$`, "gm"))].map(([, value]) => value);
  const first = await take();
  // 03:05 and 03:30 in New York in winter are 08:05 and 08:30 UTC.
  expect(all(first, "DTSTART").slice(0, 2)).toEqual(["20260225T080500Z", "20260225T083000Z"].map((time) => expect.stringMatching(time.slice(0, 13))));
  expect(all(first, "SUMMARY")[0]).toBe("27a: Score its vigor");
  expect(all(first, "TRIGGER").every((trigger) => trigger === "-PT0M")).toBe(true);
  const link = all(first, "URL")[0];
  await page.clock.runFor("02:00");
  const second = await take();
  expect(all(second, "UID")).toEqual(all(first, "UID"));
  expect(Number(all(second, "SEQUENCE")[0])).toBeGreaterThan(Number(all(first, "SEQUENCE")[0]));
  const one = await take("only this to my calendar");
  expect(all(one, "UID")).toEqual(all(first, "UID").slice(0, 1));
  await page.goto("about:blank");
  await page.goto(link);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("27a");
});

test("the count of what is due stands before the title, and goes with it", async ({ page }) => {
  const phone = await night(page);
  await expect(page).toHaveTitle("Yeanling");
  await page.clock.runFor("05:10");
  await expect(page).toHaveTitle("(1) Yeanling");
  await phone.tap("Watch");
  await phone.tap("Farm", page.getByRole("navigation"));
  await expect(page).toHaveTitle("(1) Yeanling");
});

test("Night is black whatever the look, and fits a narrow phone", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "light" });
  const phone = await night(page);
  const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await ground()).toBe("rgb(0, 0, 0)");
  const bars = page.locator("meta[name=theme-color]").first();
  await expect(bars).toHaveAttribute("content", "#000000");
  await accessible(page);
  await page.setViewportSize({ width: 320, height: 640 });
  await fitsTheScreen(page);
  await phone.tap("Watch");
  await expect.poll(ground).toBe("rgb(246, 241, 229)");
  await expect(bars).toHaveAttribute("content", "#f6f1e7");
});
