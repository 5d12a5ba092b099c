// A new build waits until it is asked for, and a spoiled one never replaces a good one.
import { expect, test as base, type Page } from "@playwright/test";
import { Site } from "../site";
import { readyOffline, workerVersion } from "../watching";

const test = base.extend<{ site: Site }>({
  site: async ({}, use) => {
    const site = await Site.open();
    await use(site);
    await site.close();
  },
});

/** Looks for a new build and returns how that ended. */
function lookForUpdate(page: Page): Promise<"installed" | "redundant" | "none"> {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    const found = registration.installing ?? registration.waiting;
    if (!found) return "none";
    while (found.state === "installing") {
      await new Promise((resolve) => found.addEventListener("statechange", resolve, { once: true }));
    }
    return found.state as "installed" | "redundant";
  });
}

test("the app works in a folder of a host, and there with no network", async ({ page, site }) => {
  await page.goto(site.address);
  await readyOffline(page);
  await site.close();
  await page.goto(`${site.address}#/flock`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await page.goto(`${site.address}some/page/of/its/own`);
  await expect(page).toHaveTitle("Yeanling");
});

/** Takes the build that waits, as the offer in the app does, and loads the page anew. */
async function take(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { waiting } = await navigator.serviceWorker.ready;
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve));
    waiting?.postMessage({ type: "skip-waiting" });
    await changed;
  });
  await page.reload();
}

/** The app works with no network, with this build alone. */
async function worksOffline(page: Page, site: Site, version: string): Promise<void> {
  await site.close();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  expect(await workerVersion(page)).toBe(version);
  await readyOffline(page);
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
}

test("a new build waits until it is asked for, and then needs no network", async ({ page, site }) => {
  await page.goto(site.address);
  await readyOffline(page);
  const first = await workerVersion(page);
  await site.publishAnother("second");
  expect(await lookForUpdate(page)).toBe("installed");
  await page.reload();
  expect(await workerVersion(page)).toBe(first);

  await site.close();
  await take(page);
  await worksOffline(page, site, "second");
});

test("two builds come out while a tab stays open: it goes from the first to the last", async ({ page, site }) => {
  await page.goto(site.address);
  await readyOffline(page);
  const first = await workerVersion(page);
  await site.publishAnother("second");
  expect(await lookForUpdate(page)).toBe("installed");
  await site.publishAnother("third");
  expect(await lookForUpdate(page)).toBe("installed");
  expect(await workerVersion(page), "nothing takes over unasked").toBe(first);
  await readyOffline(page);
  await take(page);
  await worksOffline(page, site, "third");
});

for (const taken of [true, false]) {
  const state = taken ? "in use" : "waiting";
  test(`a build that is taken back while it is ${state} gives way to the one before`, async ({ page, site }) => {
    await page.goto(site.address);
    await readyOffline(page);
    const first = await workerVersion(page);
    await site.publishAnother("second");
    expect(await lookForUpdate(page)).toBe("installed");
    if (taken) await take(page);
    site.instead.delete("worker.js");
    expect(await lookForUpdate(page)).toBe("installed");
    await take(page);
    await worksOffline(page, site, first);
  });
}

test("a build that is taken back by a host in trouble leaves the one in use whole", async ({ page, site }) => {
  await page.goto(site.address);
  await readyOffline(page);
  const first = await workerVersion(page);
  await site.publishAnother("second");
  expect(await lookForUpdate(page)).toBe("installed");
  site.instead.delete("worker.js");
  site.instead.set("index.html", { kind: "text/html", body: "<title>Sorry</title><h1>Back soon</h1>" });
  site.instead.set(await site.kept("yeanling-", "wasm"), { status: 503, body: "" });
  await lookForUpdate(page);
  await site.close();
  await page.reload();
  await expect(page).toHaveTitle(/Yeanling/);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  expect(await workerVersion(page)).toBe(first);
});

const sorry = (body: string) => ({ status: 200, kind: "text/html", body });
for (const [what, beginning, end, answer] of [
  ["a script is missing", "yeanling-", "js", { status: 404, kind: "text/javascript", body: "" }],
  ["a script comes as a page that says sorry", "yeanling-", "js", sorry("<p>sorry")],
  ["the wasm comes as a page that says sorry", "yeanling-", "wasm", sorry("<p>sorry")],
  ["the wasm breaks off in the middle", "yeanling-", "wasm", { kind: "application/wasm", body: "\0asm".repeat(99_999), cut: true }],
  ["the page says sorry", "", "", sorry("<title>Sorry</title><h1>Back soon</h1>")],
  ["the page is that of another build", "", "", sorry('<script type="module" src="./start-0123456789abcdef.js"></script>')],
] as const) {
  test(`a build of which ${what} leaves the old build working`, async ({ page, site }) => {
    await page.goto(site.address);
    await readyOffline(page);
    const first = await workerVersion(page);
    site.instead.set(beginning ? await site.kept(beginning, end) : "index.html", answer);
    await site.publishAnother("spoiled");
    expect(await lookForUpdate(page)).toBe("redundant");
    await worksOffline(page, site, first);
  });
}
