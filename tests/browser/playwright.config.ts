// Runs the journeys in a phone-sized Chromium against the finished app in dist/.
// `cargo xtask test`, `bench` and `shots` call it; by hand: npx playwright test --project=journeys
import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { defineConfig } from "@playwright/test";

const port = Number(process.env.YEANLING_PORT ?? 8137);
const origin = `http://127.0.0.1:${port}`;
const usual = "/usr/bin/chromium";
const executablePath = process.env.CHROMIUM ?? (existsSync(usual) ? usual : undefined);
const xtask = process.env.YEANLING_XTASK ? `"${process.env.YEANLING_XTASK}"` : "cargo xtask";
// YEANLING_QUICK=1 tests the debugging build of `cargo xtask build --quick`.
const quick = process.env.YEANLING_QUICK ? " --quick" : "";

export default defineConfig({
  outputDir: "./results",
  reporter: "list",
  retries: 0,
  // A journey waits most of its time, as the hand that it plays does: two to a processor keep it busy.
  workers: Math.min(8, 2 * availableParallelism()),
  fullyParallel: true,
  forbidOnly: Boolean(process.env.CI),
  timeout: 45_000,
  use: {
    baseURL: `${origin}/`,
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
    // Times, dates and units as most journeys read them; those of another region have a journey of their own.
    locale: "en-GB",
    timezoneId: "America/New_York",
    serviceWorkers: "allow",
    trace: "off",
    actionTimeout: 8_000,
    launchOptions: {
      executablePath,
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-default-apps",
        "--disable-domain-reliability",
        "--disable-sync",
        "--metrics-recording-only",
        "--no-first-run",
        "--no-pings",
      ],
    },
  },
  webServer: {
    command: `${xtask} serve --no-build --port ${port}${quick}`,
    url: `${origin}/`,
    cwd: "../..",
    reuseExistingServer: false,
    stdout: "ignore",
    stderr: "pipe",
    timeout: 120_000,
  },
  projects: [
    { name: "journeys", testDir: "./journeys" },
    { name: "shots", testDir: "./shots" },
    { name: "engines", testDir: "./engines", workers: 1 },
    { name: "kill", testDir: "./kill", workers: 1 },
    { name: "bench", testDir: "./bench", workers: 1 },
  ],
});
