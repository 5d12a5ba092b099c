// A hand that has only a keyboard, and looks where the focus is after each key.
import type { Page } from "@playwright/test";
import { expect } from "./watching";

/** What has the focus: its role or tag, its name, and whether an eye can find it. */
type Focus = { tag: string; name: string; ringed: boolean; open: boolean };

/** A page without a finger or a mouse. */
export class Keys {
  constructor(readonly page: Page) {}

  /** Returns what has the focus. */
  focus(): Promise<Focus> {
    return this.page.evaluate(() => {
      const one = document.activeElement ?? document.body;
      const labels = one instanceof HTMLInputElement ? [...(one.labels ?? [])].map((label) => label.innerText) : [];
      const name = one.getAttribute("aria-label") ?? (labels.join(" ") || (one as HTMLElement).innerText || "");
      const style = getComputedStyle(one);
      const { left, top, width, height } = one.getBoundingClientRect();
      const seen = document.elementFromPoint(left + width / 2, top + height / 2);
      return {
        tag: one.tagName.toLowerCase(),
        name: name.replace(/\s+/g, " ").trim(),
        ringed: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
        open: seen !== null && (one.contains(seen) || seen.contains(one)),
      };
    });
  }

  /** Goes on with Tab to the next thing of this name; each thing on the way must be seen to have the focus. */
  async to(name: string | RegExp): Promise<void> {
    const fits = (given: string) => (typeof name === "string" ? given === name : name.test(given));
    const passed: string[] = [];
    for (let step = 0; step < 90; step += 1) {
      await this.page.keyboard.press("Tab");
      const focus = await this.focus();
      // Behind the last thing comes the browser's own bar, here the page itself.
      if (focus.tag !== "body") {
        expect(focus, `what has the focus, after ${passed.at(-1)}`).toMatchObject({ ringed: true, open: true });
      }
      if (fits(focus.name)) return;
      passed.push(focus.name);
    }
    expect(passed, "what Tab led to").toContain(name);
  }

  /** Goes to a button or a link and presses it. */
  async press(name: string | RegExp, key: "Enter" | "Space" = "Enter"): Promise<void> {
    await this.to(name);
    await this.page.keyboard.press(key);
  }

  /** A new screen has begun: the focus stands on its heading, so that it is read out. */
  async beganAt(heading: string | RegExp): Promise<void> {
    await expect(this.page.getByRole("heading", { level: 1 })).toHaveText(heading);
    await expect.poll(async () => (await this.focus()).tag, "the focus on the heading").toBe("h1");
  }

  /** The focus is on something, so that whoever listens knows where they are. */
  async isSomewhere(): Promise<void> {
    await expect.poll(async () => (await this.focus()).tag, "the focus").not.toBe("body");
  }
}
