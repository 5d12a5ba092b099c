// What every journey watches for: nothing leaves the device, nothing fails unseen.
import { test as base, expect, type Page } from "@playwright/test";
import axe, { type RunOnly } from "axe-core";

export { expect };

/** A test whose page must load only from its own origin, keep the content policy, and log no error. */
export const test = base.extend<{ watched: void }>({
  watched: [
    async ({ context, baseURL }, use) => {
      const origin = new URL(baseURL ?? "").origin;
      const strangers: string[] = [];
      const complaints: string[] = [];
      context.on("request", (request) => {
        const url = request.url();
        if (!url.startsWith(`${origin}/`) && !/^(data|blob):/.test(url)) strangers.push(url);
      });
      context.on("console", (message) => {
        if (message.type() === "error" || message.text().includes("Content Security Policy")) {
          complaints.push(message.text());
        }
      });
      context.on("weberror", (error) => complaints.push(String(error.error())));
      await use();
      expect(strangers, "requests that left the app's own origin").toEqual([]);
      expect(complaints, "errors in the console").toEqual([]);
    },
    { auto: true },
  ],
});

/** A rule that is broken, and by what. */
type Result = { id: string; nodes: { html: string; failureSummary: string }[] };

/** Asks the active worker whether every file of its build is kept, and which build that is. */
function ask(page: Page): Promise<{ ready: boolean; version: string }> {
  return page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    return new Promise((resolve) => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = ({ data }) => resolve(data);
      active?.postMessage({ type: "ready?" }, [port2]);
    });
  });
}

/** Waits until the worker is active and says that every file of the build is kept. */
export async function readyOffline(page: Page): Promise<void> {
  await expect.poll(async () => (await ask(page)).ready, "ready to work offline").toBe(true);
}

/** Returns the version of the build that the active worker keeps. */
export async function workerVersion(page: Page): Promise<string> {
  return (await ask(page)).version;
}

/** The document must be no wider than the screen, or taps miss. */
export async function fitsTheScreen(page: Page): Promise<void> {
  // Not `innerWidth`: a phone zooms out until all of a wider page is seen, and then says the page's width.
  const wider = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
  expect(wider, "CSS pixels by which the document is wider than the screen").toBeLessThanOrEqual(0);
}

/** No word on what can be pressed goes over two lines; what people typed, longer than any word of ours, may. */
export async function noWordIsBroken(page: Page): Promise<void> {
  const broken = await page.evaluate(() => {
    const texts: Text[] = [];
    for (const one of document.querySelectorAll("button, a[href], summary, .tile")) {
      if (!one.checkVisibility({ opacityProperty: true })) continue;
      const walk = document.createTreeWalker(one, NodeFilter.SHOW_TEXT);
      while (walk.nextNode()) texts.push(walk.currentNode as Text);
    }
    const range = document.createRange();
    return texts.flatMap((text) =>
      [...text.data.matchAll(/[\p{L}\d]{2,16}/gu)].filter(({ 0: word, index }) => {
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        const lines = [...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top));
        return Math.max(...lines) - Math.min(...lines) > 4;
      }).map(([word]) => `${word} of “${text.parentElement?.closest("button, a, summary")?.textContent ?? text.data}”`),
    );
  });
  expect([...new Set(broken)], "words that go over two lines").toEqual([]);
}

/** Nothing that is written on this screen is cut off by what it stands in, or runs out of the button it stands on. */
export async function nothingIsCut(page: Page): Promise<void> {
  const cut = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("body *")].filter((one) => {
      // What is only read out is not seen at all.
      if (one instanceof SVGElement || one.matches(".unseen") || !one.checkVisibility({ opacityProperty: true })) return false;
      const { overflowX, overflowY } = getComputedStyle(one);
      const cuts = (overflow: string) => ["hidden", "clip"].includes(overflow);
      const low = one.scrollHeight > one.clientHeight + 1;
      const narrow = one.scrollWidth > one.clientWidth + 1;
      return (cuts(overflowY) && low) || ((cuts(overflowX) || one.matches("button, .button, .tab")) && narrow);
    }).map((one) => `${one.className}: ${one.innerText}`),
  );
  expect(cut, "what is cut off").toEqual([]);
  await fitsTheScreen(page);
}

/** Waits until nothing looks pressed any more: a button under the finger is faded for a moment, and no one reads it then. */
async function settled(page: Page): Promise<void> {
  await page.waitForFunction(() => !document.querySelector("button:active, a:active") && document.getAnimations().length === 0);
}

/** What axe finds broken on the page as it stands now, by the rules that `only` names. */
async function broken(page: Page, only: RunOnly): Promise<Result[]> {
  await settled(page);
  // Asked of the page itself: a builder would carry axe into it anew each time, and open a second page to add up. The
  // app has no frames.
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  return page.evaluate(async (only) => {
    const axe = (window as unknown as { axe: typeof import("axe-core") }).axe;
    const { violations } = await axe.run(document, { runOnly: only, resultTypes: ["violations"] });
    return violations.map(({ id, nodes }) => ({
      id,
      nodes: nodes.map(({ html, failureSummary }) => ({ html, failureSummary: failureSummary ?? "" })),
    }));
  }, only);
}

/** No rule of the WCAG, levels A and AA, is broken by what the page shows now. */
export async function accessible(page: Page): Promise<void> {
  const values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
  const found = await broken(page, { type: "tag", values });
  const named = found.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
  expect(named, "broken accessibility rules").toEqual([]);
}

/** Everything that the page shows now can be told from its ground. */
export async function contrasting(page: Page): Promise<void> {
  const found = await broken(page, { type: "rule", values: ["color-contrast"] });
  const faint = found.flatMap(({ nodes }) => nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`));
  expect(faint, "what is too faint").toEqual([]);
}
