// Ewe after ewe: a group gone through in the race, a tap for each, and how it stands against its target.
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { accessible, expect, fitsTheScreen, test } from "../watching";

test("a group is scored ewe after ewe, one passed over, one taken back, and the thin ones are told", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-10-01T10:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const before = new Date("2026-09-01T10:00:00-05:00");
  const group = scribe.note(before, { "group-formed": { name: "Hill" } });
  for (const tag of ["2", "10", "9", "1"]) {
    const ewe = scribe.note(before, { "ewe-came": { tag } });
    scribe.note(before, { "joined-group": { ewe, group } });
    scribe.note(before, { "ewe-weighed": { ewe, kg: 80 } });
  }
  await phone.openFile(scribe.file());
  await phone.tap("Add to my book");
  await phone.open(`#/group/${group}`);
  await phone.tap("Score, scan or mark, ewe after ewe");
  const name = page.getByRole("heading", { level: 2 }).first();
  // By tag as people count: 1, 2, 9, 10.
  await expect(name).toHaveText("Ewe 1");
  await phone.tap("2");
  await expect(name).toHaveText("Ewe 2");
  await phone.tap("Skip");
  await expect(name).toHaveText("Ewe 9");
  await phone.tap("3.5");
  await expect(name).toHaveText("Ewe 10");
  await phone.tap("3");
  await expect(page.getByText("All ewes of this group were gone through.")).toBeVisible();
  // FAS Scotland, lowland at mating: 3.5. SRUC: 12 % of 80 kg a score; 1.5 scores are 14.4 kg.
  await expect(page.getByText("3 scored, 2.83 on the mean. Target 3.5: 2 under it.")).toBeVisible();
  await expect(phone.row("Ewe 1")).toContainText("needs 1.5, some 14.4 kg, 85 days at 170 g");
  await phone.tap(/undo/i, page.locator(".undo-bar"));
  await expect(page.getByText("2 scored, 2.75 on the mean. Target 3.5: 1 under it.")).toBeVisible();
  await phone.tap("late pregnancy");
  await expect(page.getByText("No target is printed for this time of the year there")).toBeVisible();
  await fitsTheScreen(page);
  await accessible(page);

  await phone.tap("Scan");
  await expect(name).toHaveText("Ewe 1");
  await phone.tap("Two");
  await phone.tap("Empty");
  await phone.saved();
  await page.reload();
  await phone.tap("Scan");
  await expect(page.getByText("Scanned: 2 lambs on 1 Oct")).toBeVisible();
});
