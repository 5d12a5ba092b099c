// A lamb that may be cold: from the thermometer to what to do, at most four taps, resumed wherever it was left.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { expect, test } from "../watching";

async function aLamb(phone: Phone, weight = "4.0"): Promise<void> {
  await phone.lambing("12");
  await phone.tap("Ram lamb");
  await phone.weigh(weight);
  await phone.tap("All lambs born");
  await expect(phone.row("12a")).toContainText(/kg|lb/);
  await phone.look("12a");
}

const steps = (page: Page) => page.locator(".steps > li");

test("a cold lamb is read, told in order, read again in twenty minutes, and done when it is warm", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await phone.tap("Take its temperature");
  await phone.weigh("36.0");
  const before = phone.taps;
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  expect(phone.taps - before).toBeLessThanOrEqual(4);
  // Henderson 1996; US extension: under 37 °C and up to five hours old.
  await expect(page.getByRole("heading", { name: "Dangerously cold, up to 5 h old" })).toBeVisible();
  await expect(steps(page)).toHaveText([
    "Rub it dry.",
    "Warm it until it reads 37 °C (98.6 °F).",
    "Take its temperature again in 20 min.",
    "Then, only with its head up and swallowing: 200 ml of colostrum.",
    "Back to its ewe.",
  ]);
  await expect(page.locator(".nevers")).toContainText("No milk and no colostrum below 37 °C");
  await expect(page.locator(".nevers")).toContainText("No glucose for a lamb of up to 5 hours");
  await expect(page.getByText("03:32")).toBeVisible();
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);
  await phone.tap("Warming begun");
  await expect(page.getByText("Warming since 03:12")).toBeVisible();
  await phone.saved();
  await page.reload();
  await expect(page.getByText("Warming since 03:12")).toBeVisible();

  await page.clock.fastForward("00:21:00");
  await expect(page.getByRole("heading", { name: "Take its temperature again" })).toBeVisible();
  await phone.weigh("37.5");
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  await expect(page.getByText("37 °C (98.6 °F) reached.")).toBeVisible();
  await expect(page.locator(".readings")).toContainText("36.0 °C (96.8 °F): dangerously cold");
  await phone.tap("Fed 200 ml by bottle");
  await expect(page.getByText(/^Fed 200 ml 03:33/)).toBeVisible();

  await page.clock.fastForward("00:21:00");
  await phone.weigh("39.2");
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  await expect(steps(page)).toHaveText(["Leave it with its ewe. See that it feeds."]);
  await phone.tap("Lamb record");
  await expect(page.getByText("39.2 °C (102.6 °F), normal")).toBeVisible();
  await expect(page.getByText(/^Again at/)).toHaveCount(0);
});

test("no milk is offered to a bottle lamb that is too cold or does not swallow, until it is well again", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await phone.tap(/^Fed \d/);
  await page.clock.fastForward("02:30:00");

  const reading = async (degrees: string, swallows: "Yes, both" | "No") => {
    await phone.tap(/Take its temperature|Cold lamb: what to do/);
    await phone.weigh(degrees);
    await phone.tap("Use this reading");
    await phone.tap(swallows);
    await phone.tap("Lamb record");
  };
  await reading("36.2", "Yes, both");
  const card = page.locator(".card").first();
  await expect(card).toContainText("No milk yet");
  await expect(card).toContainText("It read 36.2 °C (97.2 °F): no milk under 37 °C (98.6 °F)");
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);
  await expect(page.getByText("By tube", { exact: true })).toHaveCount(0);
  await phone.tap("Already fed");
  const sheet = page.getByRole("dialog");
  await expect(sheet).toContainText("no milk under 37 °C");
  await expect(sheet.locator(".readout-number")).toHaveText("–");
  await expect(sheet.getByRole("button", { name: "½" })).toHaveCount(0);
  await page.keyboard.press("Escape");
  await phone.tap("All bottle lambs");
  await expect(phone.row("12a")).toContainText("No milk yet");
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);
  await phone.tab("Watch");
  await expect(phone.row("12a").getByRole("button", { name: /^Fed/ })).toHaveCount(0);

  await phone.look("12a");
  await page.clock.fastForward("00:20:00");
  await reading("38.5", "No");
  await expect(card).toContainText("Its head was down, or it did not swallow");
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);

  await page.clock.fastForward("00:20:00");
  await reading("39.2", "Yes, both");
  await expect(page.getByRole("button", { name: /^Fed \d/ })).toBeVisible();
});

test("a lamb that does not swallow is the vet's at once, and the call is one tap", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await phone.tap("Take its temperature");
  await phone.weigh("38.0");
  await phone.tap("Use this reading");
  await phone.tap("No");
  await expect(steps(page).first()).toHaveText("No tube.");
  await expect(page.locator(".nevers")).toContainText("Never tube a lamb that does not hold its head up");
  await phone.tap("Vet called");
  await expect(page.getByText(/^Vet called \d/)).toBeVisible();
});

test("on the Watch a lamb that must not have milk is the vet's first, with no suck and no volume to press", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await page.clock.fastForward("02:05:00");
  await phone.tap("Take its temperature");
  await phone.weigh("36.2");
  await phone.tap("Use this reading");
  await phone.tap("No");
  await phone.tab("Watch");
  const row = page.locator(".row").first();
  await expect(row.locator(".row-text")).toHaveText("36.2 °C, no swallow");
  await expect(row.locator(".row-step")).toHaveText(/^Dry and warm it now, nothing by mouth · Not seen to nurse, but no milk yet/);
  await expect(row).toHaveAttribute("data-state", "danger");
  await expect(row.getByRole("button", { name: /^Vet called/ })).toBeVisible();
  await expect(row.getByRole("link", { name: "Cold lamb steps" }).first()).toHaveAttribute("href", /^#\/cold-lamb\//);
  await expect(row.getByRole("button", { name: /^(Nursed|Fed)/ })).toHaveCount(0);
  await expect(row.locator(".facts")).toHaveCount(0);
});

test("a failing lamb is read before any milk, and that it read cold stays said after the vet was called", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone);
  await expect(page.getByRole("button", { name: /^Fed/ })).toBeVisible();
  await page.clock.fastForward("00:06:00");
  await page.getByRole("button", { name: /^Vigor/ }).tap();
  const dialog = page.getByRole("dialog");
  // Whom the sheet is about stands on it.
  await expect(dialog.locator(".sheet-whose")).toHaveText("12a");
  await dialog.getByRole("button", { name: /^4/ }).or(dialog.getByRole("radio", { name: /^4/ })).tap();
  await expect(page.locator("main")).toContainText("take its temperature");
  await expect(page.getByRole("button", { name: /^Fed/ })).toHaveCount(0);
  await page.getByRole("link", { name: "Take its temperature" }).tap();
  await phone.weigh("36.0");
  await phone.tap("Use this reading");
  await phone.tap("No");
  await phone.tap("Vet called");
  await phone.tab("Watch");
  // Too young to be late for milk; what it is in stays said, whatever was tapped.
  await expect(phone.row("12a").locator(".row-text")).toHaveText("36.0 °C, no swallow, failing");
  await expect(phone.row("12a").locator(".row-step")).toContainText("Dry and warm it now, nothing by mouth");
  await page.clock.fastForward("02:00:00");
  await expect(phone.row("12a")).toContainText("no milk yet: it does not swallow");
});

test("degrees Fahrenheit from end to end", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/settings/farm");
  await phone.tap("lb, fl oz, °F");
  await aLamb(phone, "8.8");
  await phone.tap("Take its temperature");
  await phone.weigh("99.5");
  await phone.tap("Use this reading");
  await phone.tap("Yes, both");
  await expect(page.getByRole("heading", { name: "Cold", exact: true })).toBeVisible();
  await expect(page.locator(".figure").first()).toContainText("99.5 °F");
  await expect(page.locator(".figure").first()).toContainText("37.5 °C");
  // 8.8 lb at 50 ml/kg is 199.6 ml: 6.7 fl oz, as on its own page and on the Watch.
  await expect(steps(page).nth(2)).toHaveText("Feed 6.7 fl oz by bottle or tube.");
  await phone.tap("Lamb record");
  await expect(page.getByText("99.5 °F (37.5 °C), cold")).toBeVisible();
});

test("without a record it goes on after a reload, and starts over when told to", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/calculators");
  await phone.tap("Cold lamb: step by step");
  await phone.weigh("36.0");
  await phone.tap("Use this reading");
  await expect(page.getByRole("heading", { name: "How old is it?" })).toBeVisible();
  await page.reload();
  await expect(page.getByText("36.0 °C (96.8 °F): dangerously cold")).toBeVisible();
  await phone.tap(/^not known/);
  await phone.tap(/^Not sure/);
  await expect(page.getByRole("heading", { name: "Dangerously cold, age not known: treated as over 5 h" })).toBeVisible();
  await expect(steps(page).nth(0)).toContainText("wrapped");
  await expect(steps(page).nth(1)).toHaveText("Call your vet now.");
  await expect(steps(page).nth(3)).toContainText("Glucose injection first, by your vet");
  await expect(steps(page).nth(6)).toContainText("50 ml/kg");
  await page.getByLabel("Weight", { exact: true }).fill("4");
  await expect(steps(page).nth(6)).toContainText("200 ml");
  await expect(page.getByLabel("Weight", { exact: true })).toHaveValue("4");
  await page.reload();
  await expect(steps(page).nth(6)).toContainText("200 ml");
  await phone.tap("Start over");
  await expect(page.getByRole("heading", { name: "How warm is it?" })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("heading", { name: "How warm is it?" })).toBeVisible();
});

test("ten points are scored with their scale, and without an oximeter out of eight", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/settings/care");
  await phone.tap(/^ten points/);
  await aLamb(phone);
  await phone.tap("Vigor");
  const sheet = page.getByRole("dialog");
  for (const [sign, seen] of [
    ["Pulse a minute", "over 175"],
    ["Oxygen at the ear", "No oximeter"],
    ["Gums", "pink"],
    ["Nose touched", "slight"],
    ["Rump touched", "nothing"],
  ] as const) {
    await sheet.getByRole("group", { name: sign }).getByRole("button", { name: seen }).tap();
  }
  await expect(sheet).toContainText("5 of 8 points, adapted, 8 is best");
  await sheet.getByRole("group", { name: "Oxygen at the ear" }).getByRole("button", { name: "over 65%" }).tap();
  await expect(sheet).toContainText("7 of 10 points, 10 is best");
  await phone.tap("Note the score");
  await expect(page.locator(".noted-text").first()).toContainText("7 of 10");
});

test("a ring before a day old is refused, and after it is noted", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/settings/care");
  await phone.tap(/^England and Wales/);
  await aLamb(phone);
  const rings = page.locator("main");
  await expect(rings).toContainText(/Tail ring: after 24\sh of age, before 7\sdays[^]*check local rules/);
  await phone.tap("Tail ringed");
  await expect(page.getByRole("alert").filter({ hasText: "No ring in the first 24 hours" }).first()).toBeVisible();
  await page.clock.fastForward("24:01:00");
  await phone.tap("Tail ringed");
  await expect(rings).toContainText("Tail ring: on since");
});
