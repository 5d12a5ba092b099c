// A night with three lambs whose navels wait: rows to press, and what then stands in the book.
import type { Locator, Page } from "@playwright/test";
import { Phone } from "./barn";
import { Scribe } from "./scribe";
import { expect } from "./watching";

/** Returns the facts in the book, each by its name, in the order in which they were noted. */
export async function facts(phone: Phone): Promise<string[]> {
  await phone.saved();
  const { entries } = JSON.parse((await phone.handOver()).text) as { entries: { event: object | string }[] };
  return entries.map(({ event }) => (typeof event === "string" ? event : String(Object.keys(event)[0])));
}

/** A night in which each of these ewes had a ram lamb so many minutes ago, taken in from a file. */
export async function births(page: Page, ewes: readonly (readonly [tag: string, minutes: number])[], alive: boolean): Promise<Phone> {
  const phone = new Phone(page);
  await phone.open();
  const scribe = new Scribe();
  for (const [tag, minutes] of ewes) {
    const born = new Date(Date.now() - minutes * 60_000);
    const ewe = scribe.note(new Date(born.getTime() - 3_600_000), { "ewe-came": { tag } });
    const lamb = scribe.note(born, { "lamb-born": { dam: ewe, beside: null, sex: "ram", alive } });
    scribe.note(born, { "all-born": { lamb } });
    // Her udder was drawn and she was seen up and eating: what else is due is what a test is about.
    scribe.note(born, { illness: { "udder-checked": { ewe, left: "milks", right: "milks" } } });
    scribe.note(born, { care: { settled: { ewe } } });
  }
  await phone.openFile(scribe.file());
  await phone.tap("Add");
  await expect(page.getByText(/^Done\./)).toBeVisible();
  await phone.tab("Watch");
  return phone;
}

/** A night with three lambs whose navels wait, the oldest first. */
export async function threeNavels(page: Page): Promise<Phone> {
  const phone = await births(page, [["7", 28], ["8", 27], ["9", 26]], true);
  await expect(phone.row("7a")).toBeVisible();
  return phone;
}

/** Returns the first button of the row of an animal. */
export const first = (phone: Phone, name: string): Locator =>
  phone.row(name).locator("button[data-size=action]").first();
