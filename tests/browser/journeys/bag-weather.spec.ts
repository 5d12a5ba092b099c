// A bag of colostrum and tonight's weather, from Figures alone; what is wrong is told kindly and stays as it was typed.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("a bag of colostrum: good or poor, the antibody of a feed, how old, how to thaw", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T08:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/figures");
  await phone.tap("Colostrum bag");
  const brix = page.getByRole("textbox", { name: "Brix" });
  await brix.fill("265");
  await expect(page.getByText("265 % cannot be read in colostrum. Between 0 and 40 % is allowed. Did you mean 26.5?")).toBeVisible();
  await expect(brix).toHaveValue("265");
  await brix.fill("26.5");
  await expect(page.getByText("good ewe colostrum")).toBeVisible();
  await brix.fill("24");
  await expect(page.getByText("The cow’s mark of 22 does not carry over")).toBeVisible();

  await page.getByLabel("This feed").fill("250");
  await expect(page.getByText("With the antibody in a liter")).toBeVisible();
  await page.getByRole("textbox", { name: "Antibody in it" }).fill("50");
  const feed = page.locator(".answer", { hasText: "Antibody in this feed" });
  await expect(feed).toContainText("12.5 g");
  await expect(feed).toContainText("42 % of the 30 g wanted in 24 h");
  await page.getByRole("textbox", { name: "Antibody in it" }).fill("5000");
  await expect(page.getByText("5000 g/L cannot be.")).toBeVisible();
  await expect(page.getByRole("textbox", { name: "Antibody in it" })).toHaveValue("5000");

  const filled = page.getByLabel("Put in on");
  await filled.fill("2025-05-25");
  await expect(page.getByText(/Good for \d+ days.* more in the freezer/)).toBeVisible();
  await expect(page.getByText(/By 6 months .*: too old/)).toBeVisible();
  await expect(page.getByText(/By 2 years .*: still good/)).toBeVisible();
  await phone.tap("Fridge");
  await expect(page.getByText(/Too old for the fridge/)).toBeVisible();
  await filled.fill("2026-03-05");
  await expect(page.getByText("That day has not come yet.")).toBeVisible();
  await expect(filled).toHaveValue("2026-03-05");

  await expect(page.getByText("Never in a microwave.")).toBeVisible();
  await page.getByLabel("Water for thawing").fill("50");
  await expect(page.getByText("Warmer than the strictest source allows. Add cold water.")).toBeVisible();
  await page.getByLabel("lamb’s serum").fill("12");
  await expect(page.getByText("suggests that too little got through")).toBeVisible();
  await phone.tap("before 24 h");
  await expect(page.getByText("Taken early")).toBeVisible();
});

test("the weather outdoors by the farm's limit, and under a roof by the air alone", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/figures");
  await phone.tap("Weather");
  await phone.tap("outdoors");
  await page.getByLabel("Air").fill("5");
  const wind = page.getByLabel("Wind");
  await wind.fill("-2");
  await expect(page.getByText("-2 m/s cannot be a wind. Between 0 and 40 m/s is allowed.")).toBeVisible();
  await expect(wind).toHaveValue("-2");
  await wind.fill("60");
  await expect(page.getByText("Did you mean 60 km/h?")).toBeVisible();
  await wind.fill("18 km/h");
  const rain = page.getByLabel("Rain in the day");
  await rain.fill("10");
  // Nixon-Smith 1972 at 5 °C, 5 m/s, 10 mm: 1270.9 kJ/m²/h.
  await expect(page.locator(".answer", { hasText: "Chill index" })).toContainText("1271");
  await expect(page.getByText("High risk for lambs: 1271 kJ/m²/h is over the limit (Agriculture Victoria, 1000).")).toBeVisible();
  await page.locator(".answer", { hasText: "Chill index" }).getByRole("button", { name: /^why\?/ }).tap();
  await expect(page.getByRole("dialog")).toContainText("Murdoch");
  await page.keyboard.press("Escape");
  await rain.fill("-1");
  await expect(page.getByText("-1 mm cannot be a day’s rain.")).toBeVisible();
  await expect(rain).toHaveValue("-1");

  await phone.tap("under a roof");
  await expect(page.getByText("This holds outdoors only.")).toBeVisible();
  await expect(page.getByText("a wet lamb can chill under a roof too")).toBeVisible();
});

test("a farm in °F, mph and inches gets the same index, and its lambs at most risk", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/practice");
  await phone.tap("lb, fl oz, °F");
  await phone.lambing("12");
  await phone.tap("Ewe lamb");
  await phone.weigh("6.0");
  await phone.tap("All lambs born");
  await phone.tab("Figures");
  await phone.tap("Weather");
  await phone.tap("outdoors");
  await page.getByLabel("Air").fill("41");
  await page.getByLabel("Wind").fill("11.2");
  await page.getByLabel("Rain in the day").fill("0.39");
  await expect(page.locator(".answer", { hasText: "Chill index" })).toContainText(/12[67]\d/);
  await expect(phone.row("12a")).toContainText("It is under a day old. It is under 6.6 lb.");
  await page.getByLabel("Air").fill("141");
  await expect(page.getByText("141.0 °F is no weather to lamb in.")).toBeVisible();
  await expect(page.getByLabel("Air")).toHaveValue("141");
});

test("a birth weight does not become the weight of today, and a day at its cap reads as one volume", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/practice");
  await phone.tap("lb, fl oz, °F");
  await page.evaluate(() => (location.hash = "#/figures"));
  await page.getByLabel("Weight", { exact: true }).fill("6.8");
  await phone.tap("Bottle");
  await expect(page.getByLabel("Weight today")).toHaveValue("");
  await page.getByLabel("Age in days").fill("9");
  await page.getByLabel("Weight today").fill("6.8");
  const day = page.locator(".answer", { hasText: "In the day" }).locator(".figure-number");
  const cap = page.locator(".answer", { hasText: "Never over, in a day" }).locator(".figure-number");
  await expect(day).toHaveText(await cap.innerText());
});

test("Help has a page for each, with no network needed to read it", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/help");
  for (const [topic, says] of [
    ["A bottle lamb", "200 g added to 1 L of water is only 167 g/L"],
    ["Off the bottle", "By Teagasc’s rule"],
    ["A bag of colostrum", "Never in a microwave."],
    ["Weather that chills", "Agriculture Victoria, 1000"],
  ] as const) {
    await expect(page.locator(".help-part", { hasText: topic }).filter({ hasText: says }).first()).toBeVisible();
  }
});
