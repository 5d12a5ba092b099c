// What comes in from outside stays outside: the content policy as it is served, and words from a file that would be code.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { Scribe } from "../scribe";
import { tour } from "../tour";
import { expect, fitsTheScreen, test } from "../watching";

const directives = (policy: string | null | undefined) => (policy ?? "").split(";").map((one) => one.trim());

test("the page and its host give one policy, and nothing in the page would break it", async ({ page }) => {
  const answer = await page.request.get("./");
  const { policy, inline } = await page.evaluate((text) => {
    const page = new DOMParser().parseFromString(text, "text/html");
    const all = [...page.querySelectorAll("*")];
    const policies = page.querySelectorAll("meta[http-equiv=Content-Security-Policy]");
    return {
      policy: [...policies].map((one) => one.getAttribute("content")).join(" and "),
      inline: [
        ...all.filter((one) => one.matches("script:not([src]), style, base, iframe, object, embed")),
        ...all.filter((one) => [...one.attributes].some(({ name }) => name === "style" || name.startsWith("on"))),
      ].map((one) => one.outerHTML),
    };
  }, await answer.text());
  expect(inline).toEqual([]);
  expect(directives(policy).length, "directives").toBeGreaterThan(10);
  const served = directives(answer.headers()["content-security-policy"]);
  // A page cannot say who may frame it.
  expect(served).toEqual([...directives(policy), "frame-ancestors 'none'"]);
});

const CODE = `<script>alert(1)</script>"><img src=x onerror=alert(1)>`;
// Turns the direction of reading and never turns it back: U+202E, U+2066 and U+200F.
const TURNS = "\u202Egnorts\u2066\u200F";
const WORDS = `${CODE}${TURNS}`;

/** Returns a book of which every free text is code. */
function hostile(): string {
  const scribe = new Scribe();
  const ago = (hours: number) => new Date(Date.now() - hours * 3_600_000);
  const chose = (choice: unknown) => scribe.note(ago(2400), { chose: choice });
  chose({ "farm-name": WORDS });
  const group = scribe.note(ago(2400), { "group-formed": { name: "Texel" } });
  scribe.note(ago(2400), { "group-named": { group, name: WORDS } });
  scribe.note(ago(2400), { "ram-in": { group, ram: WORDS, age: "mature" } });
  scribe.note(ago(2400), { "crayon-changed": { group, color: WORDS } });
  const ewe = scribe.note(ago(2300), { "ewe-came": { tag: WORDS } });
  const other = scribe.note(ago(2300), { "ewe-came": { tag: "2" } });
  scribe.note(ago(2300), { tagged: { animal: { ewe: other }, tag: `${WORDS} 2` } });
  for (const one of [ewe, other]) scribe.note(ago(2300), { "joined-group": { ewe: one, group } });
  scribe.note(ago(2299), { "crayon-mark": { ewe: other, color: WORDS } });
  const pen = scribe.note(ago(5), { "pen-made": { name: WORDS } });
  const lamb = scribe.note(ago(4), { "lamb-born": { dam: ewe, sex: "ewe", alive: true } });
  scribe.note(ago(3), { tagged: { animal: { lamb }, tag: WORDS } });
  scribe.note(ago(3), { remarked: { animal: { lamb }, text: WORDS } });
  scribe.note(ago(3), { remarked: { animal: { ewe }, text: WORDS } });
  scribe.note(ago(3), { "pen-named": { pen, name: `${WORDS} pen` } });
  scribe.note(ago(3), { "put-in-pen": { animal: { ewe }, pen } });
  scribe.note(ago(3), { life: { marked: { animal: { lamb }, mark: WORDS } } });
  scribe.note(ago(3), { life: { described: { ewe, born: { year: 2022 }, breed: WORDS } } });
  const said = { product: WORDS, amount: WORDS, reason: WORDS, batch: WORDS, by: WORDS, "day-only": true };
  scribe.note(ago(3), { life: { treated: { animal: { ewe }, treatment: said } } });
  scribe.note(ago(1), { life: { went: { animal: { ewe: other }, how: "sold", to: WORDS } } });
  scribe.note(ago(2), { "colostrum-frozen": { from: { ewe }, bags: 4, ml: 60.0, brix: 26.5, label: WORDS } });
  return scribe.file();
}

/** Words stayed words: no element of theirs is there, and each stands apart from what is around it. */
async function onlyWords(page: Page): Promise<void> {
  const injected = await page.locator("body script, body img, [onerror]").count();
  expect(injected, "elements made of words").toBe(0);
  await fitsTheScreen(page);
}

test("what would be code in a file is words on every screen, and on paper", async ({ page }) => {
  test.setTimeout(120_000);
  const dialogs: string[] = [];
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  await page.setViewportSize({ width: 320, height: 640 });
  const phone = new Phone(page);
  await phone.open();
  await phone.openFile(hostile());
  await expect(page.getByText("2 ewes, 1 lamb")).toBeVisible();
  await onlyWords(page);
  await phone.tap("Add");
  await phone.saved();
  const shown = new Set<string>();
  for (const media of ["screen", "print"] as const) {
    await page.emulateMedia({ media });
    await tour(page, async (hash) => {
      await onlyWords(page);
      // The text of rows that are not near the screen yet, too.
      const words = (await page.locator("main").textContent()) ?? "";
      if (words.includes("<script>alert(1)</script>")) shown.add(hash.split("/")[1] ?? "");
    });
  }
  for (const screen of ["", "flock", "ewe", "lamb", "pens", "pen", "group", "score-ewes", "season", "supplies", "medicines", "weigh-lambs"]) {
    expect([...shown], "screens that show the words").toContain(screen);
  }
  expect(dialogs).toEqual([]);
});
