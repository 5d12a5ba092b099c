// What a screen reader is told: names and roles of what the main job uses, and what is read out by itself.
import type { Locator } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";

/** Whether a change of what stands here is read out by itself. */
function isReadOut(one: Locator): Promise<boolean> {
  return one.evaluate((one) => {
    const regions = "[aria-live], [role=status], [role=alert], [role=log], [role=timer], output";
    const region = one.closest(regions);
    const live = region?.getAttribute("aria-live");
    return region !== null && live !== "off" && (live !== null || region.getAttribute("role") !== "timer");
  });
}

test("everything of a birth has its name, its role and its state", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await expect(page.locator("body")).toMatchAriaSnapshot(`
    - main:
      - link "Night clock"
      - status: saved
      - heading /\\d\\d:\\d\\d/ [level=1]
      - link "Lambing"
    - status
    - navigation "screens":
      - link "Watch"
      - link "Flock"
      - link "Season"
      - link "Help"
      - link "Farm"
  `);
  await phone.tap("Lambing", page.locator(".thumb"));
  await expect(page.getByRole("main")).toMatchAriaSnapshot(`
    - main:
      - link "Watch"
      - heading "Who is lambing?" [level=1]
      - textbox "Her tag"
      - button "Dam unknown"
  `);
  await phone.lambing("14");
  await expect(page.getByRole("main")).toMatchAriaSnapshot(`
    - main:
      - heading "Ewe 14 lambing" [level=1]
      - region "A lamb is here":
        - button "Ewe lamb"
        - button "Ram lamb"
        - button "Sex not seen"
        - button "Born dead"
  `);
  await phone.tap("Ewe lamb");
  await phone.weigh("4.2");
  await phone.tap("Nursed");
  await expect(page.locator("body")).toMatchAriaSnapshot(`
    - main:
      - button "Undo"
      - status: /saved/
      - heading "Ewe 14 lambing" [level=1]
      - group /is a$/:
        - button "Ewe lamb" [pressed]
        - button "Ram lamb"
        - button "Born dead"
      - status: 4.2 kg
      - group "Unit of weight":
        - button "kg" [pressed]
        - button "lb"
      - group "number pad":
        - button "1"
        - button "point"
        - button "0"
        - button "delete last digit"
      - group "Seen so far":
        - button "Navel dipped"
        - button "Up"
        - button "Nursed" [pressed]
      - group "Help at birth":
        - button "No help"
      - button "Next lamb"
      - button "All lambs born"
    - status: /^14a. /
  `);
  await phone.tap("All lambs born");
  await expect(page.getByRole("main")).toMatchAriaSnapshot(`
    - main:
      - region "Now":
        - heading "Now" [level=2]
        - list:
          - listitem:
            - heading "Ewe 14" [level=3]
            - list "Ewe 14":
              - listitem:
                - link /14a Dip the navel; look at both eyes now/
                - button "Dipped, 14a"
                - img /Colostrum. .* left of 24 hours/
                - paragraph:
                  - button "why? Colostrum wanted"
              - listitem:
                - link /Ewe 14 Draw both teats.* now/
                - button "Both run, Ewe 14"
  `);
});

test("what was noted and that it is safe is read out; a countdown is not", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  const noted = page.locator(".noted-now");
  expect(await isReadOut(noted), "the region stands there before there is anything to say").toBe(true);
  await phone.lambing("31");
  await phone.tap("Ewe lamb");
  await expect(noted).toHaveText("Ewe 31: Ewe lamb born");
  await phone.saved();
  expect(await isReadOut(page.locator(".save-mark > span"))).toBe(true);
  await phone.tap("All lambs born");
  await page.evaluate(() => (location.hash = "#/night"));
  const timer = page.getByRole("timer");
  await expect(timer).toBeVisible();
  expect(await isReadOut(timer.locator(".figure")), "minutes to the next duty").toBe(false);
  expect(await isReadOut(page.locator(".night-top > p")), "the time of day").toBe(false);

  await page.evaluate(() => (location.hash = "#/"));
  const left = phone.row("31a").locator(".row-says");
  await page.clock.fastForward("01:05:00");
  const before = await left.innerText();
  expect(await isReadOut(left)).toBe(false);
  await page.clock.fastForward("00:31:00");
  await expect(left).not.toHaveText(before);
});

test("an alarm is read out from a region that was there before it", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("31");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await phone.saved();
  await phone.tap("Night clock");
  await phone.tap("Turn alarm on");
  const ring = await page.locator("main > .page-body > [role=alert]").elementHandle();
  expect(await ring?.evaluate((ring) => ring.children.length), "nothing rings").toBe(0);
  await page.clock.fastForward("00:31:00");
  await expect(page.getByRole("alert").getByRole("button", { name: /31a/ })).toBeVisible();
  expect(await ring?.evaluate((ring) => ring.isConnected && ring.children.length > 0), "the same region").toBe(true);
});
