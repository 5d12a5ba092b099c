// A hand in each of the two engines that the journeys do not run in: it presses with the engine's own pointer.
import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createServer, type AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { Builder, By, until, type WebDriver } from "selenium-webdriver";
import { launchFirefox, miniBrowser, noGraphics, withScreen } from "../installed";

/** How long to look for what should be there, in milliseconds. */
export const patience = 8000;

/** What a hand does, in any engine. */
export interface Hand {
  /** Loads an address anew, whatever was open before. */
  open(address: string): Promise<void>;
  /** Presses a button or a link by its name. */
  press(name: string): Promise<void>;
  /** Types into the only field. */
  type(text: string): Promise<void>;
  /** Works out an expression in the page. */
  see<T>(expression: string): Promise<T>;
}

/** Finds it by its name, once it takes a press: what has just moved under the finger does not. */
const named = (name: string) =>
  `//*[self::button or self::a][normalize-space()="${name}" or @aria-label="${name}"][not(@aria-disabled="true")]`;

/** By then what moved is known to have. */
const drawn = `const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 50)))`;

/** Runs something in Firefox, on a new profile. */
export async function inFirefox(run: (hand: Hand) => Promise<void>): Promise<void> {
  const profile = await mkdtemp(join(tmpdir(), "yeanling-firefox-"));
  const browser = await launchFirefox(profile, { HOME: profile });
  try {
    const page = await browser.newPage();
    await page.setViewport({ width: 390, height: 844 });
    await run({
      open: async (address) => {
        await page.goto("about:blank");
        await page.goto(address);
      },
      press: async (name) => {
        await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50))));
        await page.locator(`::-p-xpath(${named(name)})`).setTimeout(patience).click();
      },
      type: (text) => page.locator("input").setTimeout(patience).fill(text),
      see: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
    });
  } finally {
    await browser.close();
    await rm(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Runs something in WebKit's small browser, which starts with an empty storage when it is driven. */
export async function inWebKit(run: (hand: Hand) => Promise<void>): Promise<void> {
  await withScreen(() =>
    withDriver(async (driver) => {
      const find = (locator: By) => driver.wait(until.elementLocated(locator), patience);
      await driver.manage().window().setRect({ width: 420, height: 880 });
      await run({
        open: async (address) => {
          await driver.get("about:blank");
          await driver.get(address);
        },
        press: async (name) => {
          await driver.executeAsyncScript(drawn);
          const button = await find(By.xpath(named(name)));
          await driver.executeScript("arguments[0].scrollIntoView({ block: 'center' })", button);
          await button.click();
        },
        type: async (text) => (await find(By.css("input"))).sendKeys(text),
        see: <T>(expression: string) => driver.executeScript<T>(`return ${expression}`),
      });
    }),
  );
}

async function withDriver(run: (driver: WebDriver) => Promise<void>): Promise<void> {
  const address = `http://127.0.0.1:${await freePort()}/`;
  const service = spawn("WebKitWebDriver", [`--port=${new URL(address).port}`], {
    stdio: "ignore",
    env: { ...process.env, ...noGraphics },
  });
  try {
    await answers(`${address}status`);
    const driver = await new Builder()
      .usingServer(address)
      .withCapabilities({
        browserName: "MiniBrowser",
        "webkitgtk:browserOptions": { binary: miniBrowser(), args: ["--automation"] },
      })
      .build();
    try {
      await run(driver);
    } finally {
      await driver.quit();
    }
  } finally {
    service.kill();
  }
}

/** Waits until a server answers. */
async function answers(address: string): Promise<void> {
  for (const late = Date.now() + patience; ; await sleep(50)) {
    const answer = await fetch(address).catch((error: unknown) => error);
    if (answer instanceof Response) return;
    if (Date.now() > late) throw new Error(`no answer from ${address}: ${answer}`);
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
}
