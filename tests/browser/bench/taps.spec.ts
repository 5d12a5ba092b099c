// Counts the taps that twins cost, with sex, help, navel and first suck for both; digits of weights are not counted.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("taps for twins", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open("#/flock");
  await page.getByLabel("Find a tag or a name").fill("27");
  await phone.tap("Add ewe 27");
  await phone.tab("Watch");
  phone.taps = 0;
  await phone.tap("Lambing", page.locator(".thumb"));
  await phone.tap("27");
  for (const [lamb, weight] of [["Ewe lamb", "3.9"], ["Ram lamb", "4.2"]] as const) {
    await phone.tap(lamb);
    await phone.weigh(weight);
    await phone.tap("No help");
    await phone.tap("Navel dipped");
    await phone.tap("Sucked");
    if (lamb === "Ewe lamb") await phone.tap("Next lamb");
  }
  await phone.tap("All lambs born");
  const { taps } = phone;
  await expect(phone.row("27a")).toContainText("3.9 kg");
  await expect(phone.row("27b")).toContainText("4.2 kg");
  console.log(`taps_twins ${taps} taps`);
});
