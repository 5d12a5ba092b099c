// A phone may put the app on its home screen.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { expect, readyOffline, test } from "../watching";

test("the browser finds nothing that keeps the app from being installed", async ({ baseURL, launchOptions }) => {
  // A private window can never install, so this needs a profile on disk.
  const profile = await mkdtemp(join(tmpdir(), "yeanling-profile-"));
  const context = await chromium.launchPersistentContext(profile, { ...launchOptions, baseURL });
  try {
    const page = await context.newPage();
    await page.goto("./");
    await readyOffline(page);
    const browser = await context.newCDPSession(page);
    const { errors: problems } = await browser.send("Page.getAppManifest");
    expect(problems).toEqual([]);
    const { installabilityErrors } = await browser.send("Page.getInstallabilityErrors");
    expect(installabilityErrors).toEqual([]);
  } finally {
    await context.close();
    await rm(profile, { recursive: true, force: true });
  }
});

test("every picture that the manifest names is there in the size that it says", async ({ page }) => {
  await page.goto("./");
  const wrong = await page.evaluate(async () => {
    const address = document.querySelector<HTMLLinkElement>("link[rel=manifest]")!.href;
    const manifest = await (await fetch(address)).json();
    const pictures = [...manifest.icons, ...(manifest.screenshots ?? [])];
    const found = await Promise.all(
      pictures.map(async ({ src, sizes }: { src: string; sizes: string }) => {
        const image = new Image();
        image.src = new URL(src, address).href;
        await image.decode();
        const size = `${image.naturalWidth}x${image.naturalHeight}`;
        return sizes === "any" || sizes === size ? [] : [`${src}: ${size} instead of ${sizes}`];
      }),
    );
    return found.flat();
  });
  expect(wrong).toEqual([]);
});
