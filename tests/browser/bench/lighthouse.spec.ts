// What Lighthouse says of a first visit on a phone, out of a hundred: the middle of five visits for speed, the least of
// them for the rest.
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import lighthouse from "lighthouse";
import { launchChromium } from "../installed";
import { Site } from "../site";
import { expect, test } from "../watching";
import { median, print } from "./stopwatch";

const VISITS = 5;

/** Returns the scores of a visit by a browser that knows nothing: Lighthouse leaves the local storage of an earlier one. */
async function look(address: string): Promise<{ id: string; score: number | null }[]> {
  const profile = await mkdtemp(join(tmpdir(), "yeanling-lighthouse-"));
  const browser = await launchChromium(profile, {});
  try {
    const port = Number(new URL(browser.wsEndpoint()).port);
    const onlyCategories = ["performance", "accessibility", "best-practices"];
    const seen = await lighthouse(address, { port, onlyCategories, logLevel: "error" });
    expect(seen?.lhr.runtimeError, "what kept Lighthouse from looking").toBeUndefined();
    return Object.values(seen?.lhr.categories ?? {});
  } finally {
    await browser.close();
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

test("a first visit as Lighthouse sees it", async () => {
  test.setTimeout(240_000);
  const site = await Site.open();
  // As most hosts send it; the app's own server packs nothing.
  site.packs = true;
  const scores: Record<string, number[]> = {};
  try {
    for (let visit = 0; visit < VISITS; visit += 1) {
      for (const { id, score } of await look(site.address)) (scores[id] ??= []).push((score ?? 0) * 100);
    }
  } finally {
    await site.close();
  }
  expect(Object.keys(scores).sort()).toEqual(["accessibility", "best-practices", "performance"]);
  print("lighthouse_performance", median(scores["performance"] ?? []), "of_100");
  print("lighthouse_accessibility", Math.min(...(scores["accessibility"] ?? [])), "of_100");
  print("lighthouse_best_practices", Math.min(...(scores["best-practices"] ?? [])), "of_100");
});
