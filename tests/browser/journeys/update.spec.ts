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

test("a new build waits until it is asked for, and then needs no network", async ({ page, site }) => {
  await page.goto(site.address);
  await readyOffline(page);
  const first = await workerVersion(page);
  await site.publishAnother("second");
  expect(await lookForUpdate(page)).toBe("installed");
  await page.reload();
  expect(await workerVersion(page)).toBe(first);

  await site.close();
  await page.evaluate(async () => {
    const { waiting } = await navigator.serviceWorker.ready;
    const changed = new Promise((resolve) => navigator.serviceWorker.addEventListener("controllerchange", resolve));
    waiting?.postMessage({ type: "skip-waiting" });
    await changed;
  });
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  expect(await workerVersion(page)).toBe("second");
  await readyOffline(page);
  expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
});

for (const [what, answer] of Object.entries({
  "is missing": { status: 404, kind: "text/javascript", body: "" },
  "comes as a page that says sorry": { status: 200, kind: "text/html", body: "<p>sorry" },
})) {
  test(`a build of which one file ${what} leaves the old build working`, async ({ page, site }) => {
    await page.goto(site.address);
    await readyOffline(page);
    const first = await workerVersion(page);
    site.instead.set("extra.js", answer);
    await site.publishAnother("spoiled", "./extra.js");
    expect(await lookForUpdate(page)).toBe("redundant");
    await site.close();
    await page.reload();
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    expect(await workerVersion(page)).toBe(first);
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1);
  });
}
