// The patcher on the browser's own elements: wherever one comes from, a page is what drawing it anew gives, and what stays
// on it is the same element. The law over every page without a browser is in tests/pages/html.rs.
import type { Page } from "@playwright/test";
import { Phone } from "../barn";
import { threeNavels } from "../navels";
import { go, screens } from "../tour";
import { expect, test } from "../watching";

/** What stands in the browser, a line an element: without what tells of the way there, of a hand at work or of the minute. */
function stands(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const passing = ".top-bar, .refusal";
    const lines: string[] = [];
    const walk = (node: Node, deep: number) => {
      if (node instanceof Text) {
        // How much room the app takes grows as it goes.
        if (node.data && !node.data.includes(" MB,")) lines.push(`${" ".repeat(deep)}${node.data}`);
        return;
      }
      if (!(node instanceof Element) || node.matches(passing)) return;
      const attributes = [...node.attributes]
        // A heading that was gone to can be focused from then on.
        .filter(({ name }) => !["data-hears", "aria-disabled"].includes(name) && !(name === "tabindex" && node.matches("h1")))
        .map(({ name, value }) => `${name}=${JSON.stringify(value)}`)
        .sort();
      const value = node instanceof HTMLInputElement || node instanceof HTMLTextAreaElement ? ` is ${node.value}` : "";
      lines.push(`${" ".repeat(deep)}<${node.tagName}${node.namespaceURI === "http://www.w3.org/2000/svg" ? " svg" : ""} ${attributes.join(" ")}>${value}`);
      node.childNodes.forEach((inside) => walk(inside, deep + 1));
    };
    document.querySelectorAll("main, .tab-bar").forEach((one) => walk(one, 0));
    return lines;
  });
}

/** Waits until all rows of a list are drawn. */
async function whole(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)))));
}

/** Marks every element that stands there; what is marked later was made later. */
async function mark(page: Page): Promise<void> {
  await page.evaluate(() => document.querySelectorAll("*").forEach((one) => Object.assign(one, { stood: true })));
}

/** Names what stands there by an id or an address of its own, each with whether it stood when all was marked. */
function kept(page: Page): Promise<[string, boolean][]> {
  return page.evaluate(() => {
    const named = [...document.querySelectorAll("main :is([id], a.row-words[href]):not(dialog *)")];
    return named.map((one) => [one.id || `row ${one.getAttribute("href")}`, "stood" in one] as [string, boolean]);
  });
}

/** What can be asked for on a page, by its label: its sheets. */
const asks = (page: Page) => page.locator("main [aria-haspopup=dialog]:not(dialog *)");

test("from any page to any other the page is what drawing it anew gives", async ({ page }) => {
  test.setTimeout(180_000);
  // The minute stands still, so that a page does not grow older on the way.
  await page.clock.setFixedTime(new Date());
  await threeNavels(page);
  // Nothing was saved yet in this visit: it is not told when.
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  // Also the screens of one animal, as the Watch and the flock lead to them.
  await go(page, "#/flock");
  await whole(page);
  const rows = await page.locator("a.row-words").evaluateAll((links) => links.map((one) => one.getAttribute("href") ?? ""));
  const all = [...screens, ...rows.slice(0, 3), ...rows.slice(-2)];
  expect(all.length).toBeGreaterThan(20);
  // Each is come to twice, from a neighbor and from far off; both ways lead to the same page.
  const walked = new Map<string, string[]>();
  const far = all.map((_, at) => all[(at * 7) % all.length] ?? "");
  for (const hash of [...all, ...far]) {
    await go(page, hash);
    await whole(page);
    const here = await stands(page);
    const before = walked.get(hash);
    if (before) expect(here, `${hash}, come to from elsewhere`).toEqual(before);
    walked.set(hash, here);
  }
  for (const hash of all) {
    await page.goto("about:blank");
    await page.goto(`./${hash}`);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await expect(page.locator(".save-mark").or(page.locator(".night"))).toBeVisible();
    await whole(page);
    expect(await stands(page), `${hash}, drawn anew`).toEqual(walked.get(hash));
  }
});

test("a sheet that comes up leaves every element of its page, and looks the same whatever was open before", async ({ page }) => {
  test.setTimeout(120_000);
  // The minute stands still, so that the page under the sheet does not grow older.
  await page.clock.setFixedTime(new Date());
  const phone = await threeNavels(page);
  await phone.look("7a");
  await whole(page);
  const count = await asks(page).count();
  expect(count, "sheets that can be asked for").toBeGreaterThan(6);
  const before = await stands(page);
  const seen = new Map<number, string[]>();
  const places = [...Array(count).keys()];
  for (const place of [...places, ...places.reverse()]) {
    await mark(page);
    const ask = asks(page).nth(place);
    await ask.evaluate((one: HTMLElement) => one.click());
    await expect(page.getByRole("dialog")).toBeVisible();
    const sheet = (await stands(page)).filter((line) => !before.includes(line));
    const first = seen.get(place);
    if (first) expect(sheet, `sheet ${place}, asked for again`).toEqual(first);
    seen.set(place, sheet);
    const under = await kept(page);
    expect(under.filter(([, stood]) => !stood), "made anew under the sheet").toEqual([]);
    expect(under.length).toBeGreaterThan(0);
    await page.keyboard.press("Escape");
    await expect(page.locator("dialog")).toHaveCount(0);
    expect(await stands(page), "the page behind the sheet").toEqual(before);
  }
});

test("a fact that is noted and undone leaves the elements that stay", async ({ page }) => {
  const phone = await threeNavels(page);
  await whole(page);
  const before = (await kept(page)).map(([name]) => name);
  await mark(page);
  await phone.tap("Dipped, 8a");
  await expect(page.locator(".undo-bar")).toContainText("Navel dipped");
  const after = await kept(page);
  expect(after.filter(([name, stood]) => before.includes(name) && !stood), "made anew by the fact").toEqual([]);
  expect(after.filter(([name]) => name.startsWith("row ")).length).toBeGreaterThan(2);
  await phone.tap("Undo", page.locator(".undo-bar"));
  await expect(page.getByRole("button", { name: "Dipped, 8a" })).toBeVisible();
  expect((await kept(page)).filter(([name, stood]) => before.includes(name) && !stood), "made anew by the undo").toEqual([]);
});

test("what is typed stays in its field, with the caret, while the page around it changes", async ({ page }) => {
  const phone = await threeNavels(page);
  await phone.tab("Flock");
  const field = page.getByRole("searchbox");
  await field.tap();
  await page.keyboard.type("7");
  await mark(page);
  for (const typed of ["a", "Backspace", "x", "Backspace"]) {
    await page.keyboard.press(typed);
    await whole(page);
    const [id, stood] = await field.evaluate((one) => [one.id, "stood" in one && document.activeElement === one]);
    expect(stood, `${id} after ${typed}`).toBe(true);
  }
  await expect(field).toHaveValue("7");
});
