// A phone whose storage lies in a folder of its own, so that a test can spoil it as a disk or a setting does.
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type BrowserContext, type BrowserContextOptions, type LaunchOptions } from "@playwright/test";
import { Phone } from "./barn";

export class Profile {
  private context?: BrowserContext;
  private constructor(readonly folder: string, private readonly options: LaunchOptions & BrowserContextOptions) {}

  static async make(options: LaunchOptions & BrowserContextOptions): Promise<Profile> {
    const folder = await mkdtemp(join(tmpdir(), "yeanling-phone-"));
    await mkdir(join(folder, "Default"));
    return new Profile(folder, options);
  }

  /** Starts the browser on this profile, the app not opened yet. */
  async start(): Promise<{ phone: Phone; context: BrowserContext }> {
    const context = await chromium.launchPersistentContext(this.folder, this.options);
    this.context = context;
    return { phone: new Phone(context.pages()[0] ?? (await context.newPage())), context };
  }

  /** Ends the browser as a person does, with time to write what it has in hand. */
  async stop(): Promise<void> {
    await this.context?.close();
    this.context = undefined;
  }

  /** Forbids the browser to keep anything for any page, as a setting of its own does. Before the first start. */
  async forbidStorage(): Promise<void> {
    const profile = { default_content_setting_values: { cookies: 2 } };
    await writeFile(join(this.folder, "Default/Preferences"), JSON.stringify({ profile }));
  }

  /** Puts a file where the browser wants its folder for IndexedDB, so that no database can be opened. */
  async spoilIndexedDb(): Promise<void> {
    await this.mendIndexedDb();
    await writeFile(join(this.folder, "Default/IndexedDB"), "no folder");
  }

  /** Takes that file, or the whole folder, away. */
  async mendIndexedDb(): Promise<void> {
    await rm(join(this.folder, "Default/IndexedDB"), { recursive: true, force: true });
  }

  async forget(): Promise<void> {
    await this.stop();
    await rm(this.folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
