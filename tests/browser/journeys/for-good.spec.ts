// The book is kept for good: the browser is asked for it, and a copy elsewhere is asked for until there is one.
import { Phone } from "../barn";
import { aLamb, test } from "../disk";
import { Scribe } from "../scribe";
import { expect } from "../watching";

test("the browser is asked to keep the book for good once a lamb is in it, and its answer is shown", async ({ profile, baseURL }) => {
  const { phone, context } = await profile.start();
  const browser = await context.newCDPSession(phone.page);
  await context.addInitScript(() => {
    const { storage } = navigator;
    const persist = storage.persist.bind(storage);
    storage.persisted = async () => sessionStorage.getItem("answer") === "yes";
    storage.persist = async () => {
      sessionStorage.setItem("asked", `${Number(sessionStorage.getItem("asked")) + 1}`);
      const answer = await persist();
      sessionStorage.setItem("answer", answer ? "yes" : "no");
      return answer;
    };
  });
  const origin = new URL(baseURL ?? "").origin;
  await phone.open();
  const asked = () => phone.page.evaluate(() => Number(sessionStorage.getItem("asked")));
  await phone.lambing("13");
  await phone.saved();
  expect(await asked(), "for a ewe alone").toBe(0);
  await aLamb(phone, "14");
  await aLamb(phone, "15");
  await phone.saved();
  await expect.poll(asked, "once for the first lamb").toBe(1);
  const row = (name: string) => phone.row(name);
  await phone.share();
  await expect(row("Protected storage")).toContainText("may clear it if the phone runs out of room");
  await expect(row("Room")).toContainText(/about [\d.]+ MB, with the app, of \d+ MB/);
  await expect(row("Copy elsewhere")).toContainText("not yet");
  // The browser itself agrees once it trusts the app; here it is told to.
  await browser.send("Browser.grantPermissions", { origin, permissions: ["durableStorage"] });
  await phone.tap("Protect storage");
  await expect(row("Protected storage")).toContainText("the browser will not clear it");
});

test("a book with new births that has not left the phone for three days says so until it is sent", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-03-01T08:00:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await aLamb(phone, "14");
  await phone.saved();
  const stays = page.locator(".notice", { hasText: /No backup for \d+ days/ });
  const on = async (day: string) => {
    await page.clock.setSystemTime(new Date(day));
    await page.reload();
    await phone.tab("Watch");
  };
  await on("2026-03-04T07:00:00-05:00");
  await expect(stays).toHaveCount(0);
  await on("2026-03-04T09:00:00-05:00");
  await expect(stays).toContainText("1 new lamb");
  await phone.tap("Back up");
  await phone.handOver();
  // A file among the downloads of this phone is lost with it.
  await expect(stays).toContainText("1 new lamb");
  await expect(page.getByText("but only on this phone")).toBeVisible();
  await expect(phone.row("Copy elsewhere")).toContainText("not yet");
  await page.reload();
  await expect(stays).toContainText("1 new lamb");
  await phone.tap("A copy is safe elsewhere");
  await expect(stays).toHaveCount(0);
  await expect(phone.row("Copy elsewhere")).not.toContainText("not yet");
  // What another phone noted came here in a file, and is there too.
  const other = new Scribe();
  other.note(new Date("2026-03-04T08:30:00-05:00"), { "lamb-born": { dam: null, sex: "ewe", alive: true } });
  await phone.openFile(other.file());
  await phone.tap("Add");
  await on("2026-03-09T09:00:00-05:00");
  await expect(phone.page.getByRole("heading", { level: 1 })).toBeVisible();
  await expect(stays).toHaveCount(0);
});
