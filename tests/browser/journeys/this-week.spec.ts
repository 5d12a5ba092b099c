// What the season asks for this week stands on the Watch until it is done, and a tick there makes no room.
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { expect, test } from "../watching";

const DAY = 86_400_000;

test("what the season asks for is a tick in its place, nothing moves, and it is gone once it is done", async ({ page }) => {
  const ramIn = new Date("2026-10-01T12:00:00Z");
  await page.clock.install({ time: new Date("2027-01-23T12:00:00Z") });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const came = new Date("2026-09-01T12:00:00Z");
  const group = scribe.note(came, { "group-formed": { name: "Top field" } });
  for (const tag of ["1", "2", "3"]) {
    const ewe = scribe.note(came, { "ewe-came": { tag } });
    scribe.note(came, { "joined-group": { ewe, group } });
  }
  scribe.note(ramIn, { "ram-in": { group } });
  scribe.note(new Date(ramIn.getTime() + 35 * DAY), { "ram-out": { group } });
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.tab("Watch");
  const week = page.locator("section").filter({ has: page.getByRole("heading", { name: "This week" }) });
  await expect(week).toContainText("Booster");
  const fedSo = page.getByRole("button", { name: /^Feeding this now: Top field/ });
  await expect(page.locator("[aria-disabled]")).toHaveCount(0);
  await page.getByRole("button", { name: /^Given: Top field/ }).scrollIntoViewIfNeeded();
  const before = await fedSo.boundingBox();
  await page.getByRole("button", { name: /^Given: Top field/ }).tap();
  // The booster stands ready by its name; what it was is a medicine like any other.
  await page.getByRole("dialog").getByRole("button", { name: "Save" }).tap();
  // What was pressed is a tick in its place, and nothing moves, as long as it can be undone.
  const ticks = week.locator("[data-done=true]");
  await expect(ticks).toHaveText(["Given"]);
  await expect(page.getByRole("button", { name: /^Given: Top field/ })).toHaveCount(0);
  expect(await fedSo.boundingBox()).toEqual(before);
  await fedSo.tap();
  await expect(ticks).toHaveText(["Given", "Feeding this now"]);
  await page.clock.runFor("00:09");
  for (const what of [/^Given: Top field/, /^Feeding this now: Top field/]) {
    await expect(page.getByRole("button", { name: what })).toHaveCount(0);
  }
  await phone.saved();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(page.getByRole("button", { name: /^(Given|Feeding this now): Top field/ })).toHaveCount(0);
});
