// What was noted last can be undone from the line above the page's name: till the next tap, and nothing is covered by it.
import { Phone } from "../barn";
import { expect, test } from "../watching";

test("the offer to undo waits for the next tap, in sight wherever one has scrolled, and covers nothing", async ({ page }) => {
  await page.clock.install({ time: new Date("2026-02-25T03:12:00-05:00") });
  const phone = new Phone(page);
  await phone.open();
  await phone.lambing("14");
  await phone.tap("Ewe lamb");
  const offer = page.locator(".undo-bar");
  await expect(offer).toContainText("Ewe 14: Ewe lamb born");
  // A hand that was called away finds it still there.
  await page.clock.runFor("10:00");
  await expect(offer).toBeVisible();
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await expect(offer.getByRole("button", { name: "Undo" })).toBeInViewport({ ratio: 1 });
  // All that can be pressed on the glass is pressed where it stands, and not through the line above.
  const covered = await page.evaluate(() => {
    const line = document.querySelector(".top-bar")?.getBoundingClientRect();
    const free = (one: Element) => {
      const box = one.getBoundingClientRect();
      const middle = [box.left + box.width / 2, box.top + box.height / 2] as const;
      const below = line && middle[1] > line.bottom && middle[1] < innerHeight;
      const on = below ? document.elementFromPoint(...middle) : null;
      return !on || one.contains(on) || on.closest(".thumb, .tab-bar") !== null;
    };
    return [...document.querySelectorAll("main :is(button, a, input)")].filter((one) => !free(one)).map((one) => one.outerHTML);
  });
  expect(covered).toEqual([]);
  await phone.tap("Navel dipped");
  await expect(offer).toContainText("Navel dipped");
  await phone.tap("Undo", offer);
  await expect(page.getByRole("button", { name: "Navel dipped", exact: true })).toHaveAttribute("aria-pressed", "false");
  await expect(offer).toHaveCount(0);
  // A press that notes and leads on takes its own offer along; a link lets it go.
  await phone.tap("All lambs born");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(/:/);
  await expect(offer).toContainText("All lambs born");
  await phone.tab("Flock");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Flock");
  await expect(offer).toHaveCount(0);
});
