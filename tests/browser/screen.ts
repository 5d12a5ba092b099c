// WebKit's small browser, and a screen that is not there for it: it has windows only.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";

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
