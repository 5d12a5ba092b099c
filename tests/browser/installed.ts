// The engines as they are installed, and a screen that is not there for the one that has windows only.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import puppeteer, { type Browser } from "puppeteer-core";

/** Starts Chromium on a profile of its own, with variables added to the environment. */
export function launchChromium(profile: string, variables: Record<string, string>): Promise<Browser> {
  return puppeteer.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--no-first-run", "--disable-background-networking", "--disable-component-update"],
    userDataDir: profile,
    env: { ...process.env, ...variables },
  });
}

/** Starts Firefox on a profile of its own, with variables added to the environment. */
export function launchFirefox(profile: string, variables: Record<string, string>): Promise<Browser> {
  return puppeteer.launch({
    browser: "firefox",
    executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr",
    userDataDir: profile,
    env: { ...process.env, ...variables },
  });
}

/** What keeps WebKit from looking for a graphics card. */
export const noGraphics = { WEBKIT_DISABLE_DMABUF_RENDERER: "1", LIBGL_ALWAYS_SOFTWARE: "1", GTK_A11Y: "none" };

/** Returns where Debian puts WebKit's small browser. */
export function miniBrowser(): string {
  const folders = ["x86_64-linux-gnu", "aarch64-linux-gnu"].map((kind) => `/usr/lib/${kind}`);
  const names = folders.flatMap((folder) => ["4.1", "6.0", "4.0"].map((api) => join(folder, `webkit2gtk-${api}/MiniBrowser`)));
  return names.find((name) => existsSync(name)) ?? "MiniBrowser";
}

/** Runs something with DISPLAY set to a screen of its own, and ends the screen. */
export async function withScreen(run: () => Promise<void>): Promise<void> {
  const screen = spawn("Xvfb", ["-displayfd", "1", "-screen", "0", "800x900x24"], { stdio: ["ignore", "pipe", "ignore"] });
  const number = await new Promise<string>((resolve, reject) => {
    screen.once("error", reject);
    screen.stdout.once("data", (data) => resolve(String(data).trim()));
  });
  const before = process.env.DISPLAY;
  process.env.DISPLAY = `:${number}`;
  try {
    await run();
  } finally {
    if (before === undefined) delete process.env.DISPLAY;
    else process.env.DISPLAY = before;
    screen.kill();
  }
}
