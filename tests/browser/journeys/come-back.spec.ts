// Who comes back from an animal finds the list as it was left: what was looked for, where it was, and the focus on her.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { expect, test } from "../watching";

const NOW = new Date("2026-03-01T09:00:00Z");

/** Two ewes, one with twins of this morning, one with a single. */
async function twoEwes(page: Page): Promise<Phone> {
  await page.clock.install({ time: NOW });
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  const many = scribe.note(NOW, { "ewe-came": { tag: "40" } });
  const few = scribe.note(NOW, { "ewe-came": { tag: "41" } });
  for (const dam of [many, many, few]) scribe.note(NOW, { "lamb-born": { dam, sex: "ram", alive: true } });
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  return phone;
}

test("who comes back from an animal finds the search as it was; who comes from elsewhere begins anew", async ({ page }) => {
  const phone = await twoEwes(page);
  await phone.tab("Flock");
  const field = page.getByLabel("Find a tag or a name");
  await field.fill("40");
  await phone.look("40b");
  await page.locator(".top-bar-back").tap();
  await expect(field).toHaveValue("40");
  await expect(phone.row("40b")).toBeVisible();
  await expect(phone.row("41a")).toHaveCount(0);
  await phone.look("40b");
  await page.goBack();
  await expect(field).toHaveValue("40");
  await phone.tab("Watch");
  await phone.tab("Flock");
  await expect(field).toHaveValue("");
  await expect(phone.row("Ewe 41").or(phone.tile("Ewe 41"))).toBeVisible();
});

test("who comes back from an animal far down finds the list where it was, the focus on her; the Watch begins at its top", async ({
  page,
}) => {
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  for (let tag = 101; tag <= 136; tag += 1) scribe.note(NOW, { "ewe-came": { tag: String(tag) } });
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await phone.tab("Flock");
  const far = phone.tile("Ewe 130").getByRole("link");
  await far.scrollIntoViewIfNeeded();
  await far.tap();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Ewe 130");
  await page.locator(".top-bar-back").tap();
  await expect(far).toBeInViewport();
  await expect(far).toBeFocused();
  await far.tap();
  await page.goBack();
  await expect(far).toBeFocused();
  await phone.tab("Watch");
  await expect(page.locator("#title")).toBeFocused();
  await phone.tab("Flock");
  await expect(page.locator("#title")).toBeFocused();
  await expect(far).not.toBeInViewport();
});
