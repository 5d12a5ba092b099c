// The season ahead: from an empty book to a plan for sixty ewes in a dozen taps, and its dates in the phone's calendar.
import { Phone } from "../barn";
import { accessible, expect, fitsTheScreen, test } from "../watching";

test("from an empty book to a plan for sixty ewes", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-11-25T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open("#/season");
  const before = phone.taps;
  await phone.tap("Form a group");
  const sheet = page.getByRole("dialog");
  await sheet.getByLabel("Name").fill("Lower field");
  await phone.tap("Save", sheet);
  await phone.tap("Add ewes");
  await sheet.getByLabel("Tags: a list or ranges").fill("101–158, 7, 9");
  await sheet.getByLabel("In the group since").fill("2026-10-01");
  await phone.tap("Put 60 ewes in", sheet);
  await phone.tap("Ram in");
  await sheet.getByLabel("Day").fill("2026-10-01");
  await phone.tap("Save", sheet);
  await phone.tap("Ram out");
  await sheet.getByLabel("Day").fill("2026-11-20");
  await phone.tap("Save", sheet);
  expect(phone.taps - before).toBeLessThanOrEqual(12);
  await fitsTheScreen(page);
  await accessible(page);

  await page.evaluate(() => (location.hash = "#/season"));
  await expect(page.getByRole("img", { name: /lambings to come/ })).toBeVisible();
  await fitsTheScreen(page);
  // In full, so that no target stands half under the bar at the foot.
  await page.setViewportSize({ width: 390, height: 3000 });
  await accessible(page);

  const download = page.waitForEvent("download");
  await phone.tap("Add dates to my calendar");
  const chunks: Buffer[] = [];
  for await (const chunk of await (await download).createReadStream()) chunks.push(chunk as Buffer);
  const calendar = Buffer.concat(chunks).toString("utf8");
  // Seven in the morning at five hours west of Greenwich.
  expect(calendar).toContain("DTSTART:20270123T120000Z");
});
