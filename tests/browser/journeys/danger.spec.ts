// An animal in danger stands first, says its sign and the next step, and stays so until good news about that very sign.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { accessible, expect, fitsTheScreen, test } from "../watching";

const NIGHT = new Date("2026-02-25T01:00:00-05:00");

/** A ewe with two lambs, the first of them weighed. */
async function twins(phone: Phone): Promise<void> {
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await phone.tap("Next lamb");
  await phone.tap("Ram lamb");
  await phone.weigh("3.8");
  await phone.page.clock.runFor(1_500);
}

/** Reads a lamb on the aid and answers whether it swallows. */
async function reads(phone: Phone, name: string, celsius: string, swallows: RegExp | string): Promise<void> {
  await phone.tab("Watch");
  await phone.look(name);
  await phone.tap(/^(Take its temperature|Cold lamb)/);
  await phone.weigh(celsius);
  await phone.tap("Use this reading");
  await phone.tap(swallows);
}

/** No rule is broken by the page in full view: what is scrolled under the bars is not what is looked at. */
async function accessibleInFull(page: Page): Promise<void> {
  const size = page.viewportSize();
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);
  if (size) await page.setViewportSize(size);
}

test("a lamb of 35 °C that does not swallow stays first whatever is tapped, until it is warm and swallows", async ({ page }) => {
  test.setTimeout(90_000);
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await twins(phone);
  await page.clock.fastForward("06:30:00");
  await reads(phone, "12b", "35.0", "No");
  // Over five hours: shelter, the vet, glucose, then warmth.
  await expect(page.locator(".steps > li").first()).toContainText("wrapped");
  await expect(page.locator(".steps")).toContainText("Glucose injection first");
  await phone.tab("Watch");
  const first = page.locator(".row").first();
  const headline = "35.0 °C, no swallow: glucose first, no milk, no heat yet";
  const step = "Glucose first, no milk, no heat yet";
  const stands = async () => {
    await expect(first.locator(".row-name")).toHaveText("12b");
    await expect(first).toHaveAttribute("data-state", "danger");
    await expect(first.locator(".row-text")).toContainText("35.0 °C, no swallow");
  };
  await stands();
  await expect(first.locator(".row-step")).toContainText(step);
  await expect(first.locator(".figure, .ribbon")).toHaveCount(0);
  await fitsTheScreen(page);
  await accessibleInFull(page);
  await phone.tap("Vet called, 12b", first);
  await stands();
  await expect(first).toContainText(/vet called 07:3\d, look again 07:5\d/);
  // Nobody is offered "all well" of a lamb in danger, nor the same way twice; small jobs are left to their buttons.
  await expect(first.getByRole("button", { name: /^All well/ })).toHaveCount(0);
  await expect(first.getByRole("link", { name: "Cold lamb steps" })).toHaveCount(1);
  await expect(first).not.toContainText("Dip the navel");
  // Nobody reached: the call is one tap again.
  await phone.tap("What the vet said, 12b", first);
  await phone.tap("Nobody reached", page.getByRole("dialog"));
  await expect(first).toContainText("call again");
  await page.clock.fastForward("00:02:00");
  await phone.tap("Vet called, 12b", first);
  await stands();
  // Advice is a plan and a look, no end.
  await phone.tap("What the vet said, 12b", first);
  const dialog = page.getByRole("dialog");
  await phone.tap("Advised by phone", dialog);
  await phone.tap("1 h", dialog);
  await dialog.getByRole("textbox").fill("wrap, glucose by mouth");
  await accessibleInFull(page);
  await phone.tap("Save", dialog);
  await stands();
  await expect(first).toContainText("vet advised");
  await expect(first).toContainText("wrap, glucose by mouth; look again 08:3");
  await phone.saved();
  await page.reload();
  await stands();
  // The Lamb gives the same answer.
  await phone.look("12b");
  await expect(page.locator(".notice .lead")).toContainText(headline);
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);
  // Glucose given: now warmth.
  await phone.tap(/Cold lamb|Take its temperature/);
  // What came under the finger takes no press for a moment.
  await page.waitForTimeout(1_500);
  await phone.tap("Glucose given, vet-trained");
  await expect(page.locator(".done-line").filter({ hasText: "Glucose given" })).toBeVisible();
  await phone.tab("Watch");
  await stands();
  await expect(first.locator(".row-step")).toContainText("Glucose given: warm it now, no milk");
  // Warm is not yet swallowing; both end it.
  await page.clock.fastForward("00:21:00");
  await reads(phone, "12b", "37.4", "No");
  await phone.tab("Watch");
  await expect(first.locator(".row-text")).toContainText("Does not swallow");
  await expect(first.locator(".row-step")).toContainText("Nothing by mouth");
  await page.clock.fastForward("00:21:00");
  await reads(phone, "12b", "38.2", "Yes, both");
  await phone.tab("Watch");
  await expect(page.locator('.row[data-state="danger"]')).toHaveCount(0);
});

test("a sign after the first lamb leaves the late check late", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.tab("Watch");
  await page.clock.fastForward("01:05:00");
  const ewe = phone.row("Ewe 14");
  await expect(ewe).toHaveAttribute("data-state", "late");
  await ewe.locator("a.row-words").tap();
  await phone.tap("Straining");
  await phone.tab("Watch");
  await expect(ewe).toHaveAttribute("data-state", "late");
  await expect(ewe).toContainText("Another lamb? Check inside");
});

test("a tail is put right now, and put right is a button", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("What shows");
  await phone.tap("Tail", page.getByRole("dialog"));
  await phone.tab("Watch");
  const ewe = phone.row("Ewe 14");
  await expect(ewe).toHaveAttribute("data-state", "now");
  await expect(ewe).toContainText("Tail: put right now, or call your vet");
  await page.clock.fastForward("00:16:00");
  await expect(ewe).toHaveAttribute("data-state", "danger");
  await phone.tap("Put right, Ewe 14", ewe);
  await expect(ewe).not.toHaveAttribute("data-state", "danger");
});

test("the afterbirth has three answers", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  await phone.tap("All lambs born");
  await phone.tab("Watch");
  const ewe = phone.row("Ewe 14");
  await page.clock.fastForward("02:05:00");
  await phone.tap("Both run, Ewe 14", ewe);
  await page.clock.fastForward("00:00:09");
  await phone.tap("Up, eating, Ewe 14", ewe);
  await page.clock.fastForward("04:00:00");
  await expect(ewe).toHaveAttribute("data-state", "now");
  // The other answers are folded behind her line.
  await ewe.locator("a.row-words").tap();
  await phone.tap("Not seen; bright, eats, Ewe 14");
  await page.clock.fastForward("00:00:09");
  await phone.tab("Watch");
  await expect(ewe).toHaveCount(0);
  await page.clock.fastForward("06:05:00");
  await expect(ewe).toHaveAttribute("data-state", "now");
  await ewe.locator("a.row-words").tap();
  await phone.tap("Afterbirth hangs, Ewe 14");
  await phone.tab("Watch");
  await expect(ewe).toContainText("Afterbirth still hangs: call your vet. Never pull it");
  await phone.tap("Passed, Ewe 14", ewe);
  // Its tick keeps her row in its place as long as it can be undone.
  await expect(ewe.locator("[data-done=true]").first()).toHaveText("Passed");
  await page.clock.fastForward("00:00:09");
  await expect(ewe).toHaveCount(0);
});

test("a lamb that was found takes the safer age, and a finger in the mouth stands in for a thermometer", async ({ page }) => {
  await page.clock.install({ time: NIGHT });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh("4.0");
  await phone.page.clock.runFor(1_500);
  await phone.tab("Watch");
  await phone.look("12a");
  await phone.tap("Found already born");
  await accessible(page);
  await phone.tap("1–6 h ago", page.getByRole("dialog"));
  await expect(page.locator(".noted-text").filter({ hasText: "Found already born" })).toBeVisible();
  // It may have been without milk for six hours.
  await phone.tab("Watch");
  await expect(phone.row("12a")).toHaveAttribute("data-state", "late");
  await phone.tap("Temperature", phone.row("12a"));
  await phone.tap("No thermometer");
  const dialog = page.getByRole("dialog");
  await phone.tap("Cold", dialog);
  await accessible(page);
  await phone.tap("Not at all", dialog);
  await expect(page.locator("main")).toContainText("Finger in its mouth: cold, sucks not at all");
  await phone.tab("Watch");
  const first = page.locator(".row").first();
  await expect(first).toHaveAttribute("data-state", "danger");
  // It may be over five hours old: glucose before heat.
  await expect(first.locator(".row-text")).toContainText("Cold mouth");
  await expect(first.locator(".row-step")).toContainText("Glucose first, no milk, no heat yet");
});
