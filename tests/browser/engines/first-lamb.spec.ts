// The main job in the two engines that the journeys do not run in: a ewe, her lamb, its weight, sucked; still there
// after a reload, on the Watch, and with the server gone; and nothing went wrong that only the console would tell.
import { expect, test as base } from "@playwright/test";
import { Site } from "../site";
import { inFirefox, inWebKit, patience, type Hand } from "./hands";

/** Keeps what goes wrong in the page, and says where the phone is at home. It runs before the app, as a file of the site, as the content policy wants it. */
const faults = `
  window.faults = [];
  // Weights are typed as in Europe, wherever the engine thinks it is.
  Object.defineProperty(navigator, "language", { value: "en-GB" });
  const told = console.error;
  console.error = (...words) => { window.faults.push(words.join(" ")); told(...words); };
  addEventListener("error", ({ message, target }) => window.faults.push(message ?? "not loaded: " + target.outerHTML), true);
  addEventListener("unhandledrejection", ({ reason }) => window.faults.push("not caught: " + reason));
  addEventListener("securitypolicyviolation", (event) =>
    window.faults.push(event.effectiveDirective + " forbade " + event.blockedURI));`;

const test = base.extend<{ site: Site }>({
  site: async ({}, use) => {
    const site = await Site.open();
    const page = await site.file("index.html");
    const body = page.replace('<meta charset="utf-8">', '$&<script src="./faults.js"></script>');
    site.instead.set("index.html", { kind: "text/html", body });
    site.instead.set("faults.js", { kind: "text/javascript", body: faults });
    await site.publishAnother("with faults kept", "./faults.js");
    await use(site);
    await site.close();
  },
});

async function firstLamb(hand: Hand, site: Site): Promise<void> {
  const poll = <T>(expression: string) => expect.poll(() => hand.see<T>(expression), { timeout: patience });
  // The text of rows that are not near the screen yet, too.
  const shows = (selector: string, text: string) =>
    poll(`document.querySelector(${JSON.stringify(selector)})?.textContent.replace(/\\s+/g, " ")`).toContain(text);
  const saved = () => shows(".save-mark[data-state=saved]", "saved");
  /** Keys that came where something else was pressed rest for a moment, so a hand waits until nothing moves. */
  const press = async (name: string) => {
    await poll("document.getAnimations().length").toBe(0);
    await hand.press(name);
  };
  const nothingWrong = async () => {
    expect(await hand.see("window.faults"), "what went wrong in the page").toEqual([]);
    expect(await hand.see("document.body.textContent")).not.toMatch(/could not be read|Something in Yeanling broke/);
  };

  await hand.open(site.address);
  await shows(".empty", "Nothing to watch yet");
  await press("Lambing");
  await shows("h1", "Who is lambing?");
  await hand.type("14");
  await press("Add ewe 14");
  await shows("h1", "Ewe 14 lambing");
  for (const name of ["Ewe lamb", "3", "point", "9", "Nursed"]) await press(name);
  await shows(".readout-number", "3.9");
  await shows(".toggle[aria-pressed=true]", "Nursed");
  await press("All lambs born");
  await shows(".row", "14a");
  await saved();
  await nothingWrong();

  await hand.open(site.address);
  await shows(".row", "14a");
  await saved();
  // Its weight stands on its own page, in the units of this browser's region.
  const lamb = await hand.see<string>("document.querySelector('a[href^=\"#/lamb/\"]').getAttribute('href')");
  await hand.open(`${site.address}${lamb}`);
  await shows("h1", "14a");
  await poll("document.querySelector('main').textContent").toMatch(/3\.9\s(kg|lb)/);
  await hand.open(`${site.address}#/share`);
  await shows("main", "ready to work offline");
  await nothingWrong();

  await site.close();
  await hand.open(`${site.address}#/flock`);
  await shows("main", "Ewe 14");
  await shows("main", "14a");
  await saved();
  await nothingWrong();
}

test("firefox: the first lamb of an empty book, still there with no network", async ({ site }) => {
  await inFirefox((hand) => firstLamb(hand, site));
});

test("webkit: the first lamb of an empty book, still there with no network", async ({ site }) => {
  await inWebKit((hand) => firstLamb(hand, site));
});
