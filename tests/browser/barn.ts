// What a shepherd does on the phone, as steps that journeys share. Every tap is a real tap, and counted.
import type { Browser, BrowserContext, Locator, Page } from "@playwright/test";
import { expect } from "./watching";

/** One phone: a page, and how often it was tapped (digits of weights apart). */
export class Phone {
  taps = 0;
  constructor(readonly page: Page) {}

  /** Opens the app at an address of its own, such as `#/flock`. */
  async open(hash = ""): Promise<void> {
    await this.page.goto(`./${hash}`);
    await expect(this.page.getByRole("heading", { level: 1 })).toBeVisible();
  }

  /** Taps a button or a link by its name. */
  async tap(name: string | RegExp, within = this.page.locator("body")): Promise<void> {
    const exact = typeof name === "string";
    const found = within.getByRole("button", { name, exact }).or(within.getByRole("link", { name, exact }));
    await this.drawn();
    if ((await found.count()) === 0) await this.unfold(name, within);
    await found.first().tap();
    this.taps += 1;
  }

  /** Opens the fold in which a button lies, as a hand does that looks for it. */
  private async unfold(name: string | RegExp, within: Locator): Promise<void> {
    const wanted = { name, exact: typeof name === "string", includeHidden: true };
    const folds = within.locator("details:not([open])", { has: this.page.getByRole("button", wanted) });
    if ((await folds.count()) === 0) return;
    await folds.first().locator("summary").first().tap();
    this.taps += 1;
  }

  /**
   * Waits until what the last press changed is drawn and looked at: what has moved is disabled from then on, for as long
   * as a hand needs, and waited for like anything disabled. Quicker than a frame no hand is.
   */
  async drawn(): Promise<void> {
    const drawn = this.twoFrames();
    const atMost = new Promise<void>((done) => setTimeout(done, 300));
    await Promise.race([drawn.catch(() => undefined), atMost]);
  }

  /** Waits until two frames are drawn: in the second stands what a new screen draws below the glass. */
  private twoFrames(): Promise<void> {
    return this.page.evaluate(
      () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))),
    );
  }

  /** Goes to a tab at the foot of the page. */
  async tab(name: string): Promise<void> {
    await this.tap(name, this.page.getByRole("navigation"));
  }

  /** Goes to Share & back up. */
  async share(): Promise<void> {
    await this.under("Farm", "Share & back up");
  }

  /** Goes to the calculators. */
  async calculators(): Promise<void> {
    await this.under("Help", "Calculators");
  }

  /** Goes to a screen by its row on a tab. */
  private async under(tab: string, screen: string): Promise<void> {
    await this.tab(tab);
    await this.row(screen).locator("a.row-words").tap();
    await expect(this.page.getByRole("heading", { level: 1 })).toHaveText(screen);
  }

  /** Starts the lambing of a ewe, who is added by her tag if she is not in the book. */
  async lambing(tag: string): Promise<void> {
    await this.tab("Watch");
    await this.tap("Lambing", this.page.locator(".thumb"));
    const known = this.page.getByRole("button", { name: tag, exact: true });
    const add = `Add ewe ${tag}`;
    await this.page.getByLabel("Her tag").fill(tag);
    await expect(known.or(this.page.getByRole("button", { name: add, exact: true })).first()).toBeVisible();
    await this.tap((await known.count()) > 0 ? tag : add);
    await expect(this.page.getByRole("heading", { level: 1 })).toHaveText(`Ewe ${tag} lambing`);
  }

  /** Types a weight on the large keys, which are not counted as taps. */
  async weigh(digits: string): Promise<void> {
    for (const digit of digits) {
      await this.page.getByRole("button", { name: digit === "." ? "point" : digit, exact: true }).tap();
    }
  }

  /** Waits until everything that was noted is on the disk. */
  async saved(): Promise<void> {
    await expect(this.page.locator(".save-mark")).toHaveAttribute("data-state", "saved");
  }

  /** Returns the row of an animal on this screen, or its place in a small flock. */
  row(name: string) {
    const named = this.page.locator(".row-name").getByText(name, { exact: true });
    return this.page.locator(".row", { has: named }).filter({ visible: true }).or(this.tile(name));
  }

  /** Returns the place of an animal in a small flock. */
  tile(name: string) {
    return this.page.locator(".tile").filter({ has: this.page.getByRole("link", { name, exact: true }) }).filter({ visible: true });
  }

  /** Opens the screen of an animal from a list, or from its place in a small flock. */
  async look(name: string): Promise<void> {
    await this.row(name).locator("a.row-words").or(this.tile(name).locator("a")).first().tap();
    await expect(this.page.getByRole("heading", { level: 1 })).toHaveText(name);
  }

  /** Saves the book as a file and returns its name and text. */
  async handOver(): Promise<{ name: string; text: string }> {
    await this.share();
    const download = this.page.waitForEvent("download");
    await this.tap("Save as a file");
    const file = await download;
    const chunks: Buffer[] = [];
    for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
    return { name: file.suggestedFilename(), text: Buffer.concat(chunks).toString("utf8") };
  }

  /** Opens a file in Share & back up. */
  async openFile(text: string | Buffer, name = "book.json.txt"): Promise<void> {
    await this.share();
    await this.page.locator("#field-book-file").setInputFiles({
      name,
      mimeType: "text/plain",
      buffer: typeof text === "string" ? Buffer.from(text) : text,
    });
  }

  /** Returns the flock as the screen shows it: every name with its soft words, in order. */
  async flock(): Promise<string[]> {
    await this.tab("Flock");
    await expect(this.page.getByRole("heading", { level: 1 })).toHaveText("Flock");
    await this.twoFrames();
    const texts = await this.page.locator(".row-words, .tile").allInnerTexts();
    // What is only read out of a tile stands on a line of its own.
    return texts.map((text) => text.replace(/^Ewe\s+/, "Ewe "));
  }
}

/** Opens another phone: a context of its own, which shares no storage with the first. */
export async function anotherPhone(
  browser: Browser,
  options: Parameters<Browser["newContext"]>[0],
): Promise<{ phone: Phone; context: BrowserContext }> {
  const context = await browser.newContext(options);
  return { phone: new Phone(await context.newPage()), context };
}
