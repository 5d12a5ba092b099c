// A book sent to the phone opens in Yeanling by itself, with a signal or without; nothing changes before it is added.
import { test as plain, type Page } from "@playwright/test";
import { Phone, anotherPhone } from "../barn";
import { Site } from "../site";
import { expect, readyOffline, test } from "../watching";

/** Hands a file to the app as the phone's share sheet does: a form with the file, posted to the manifest's address. */
async function share(page: Page, text: string, name = "book.json.txt"): Promise<void> {
  const address = await page.evaluate(async () => {
    const manifest = document.querySelector<HTMLLinkElement>("link[rel=manifest]")!.href;
    const { share_target: target } = await (await fetch(manifest)).json();
    return { action: new URL(target.action, manifest).href, field: target.params.files[0].name, ...target };
  });
  const { action, method, enctype, field } = address;
  await Promise.all([
    page.waitForEvent("load"),
    page.evaluate(
      ({ action, method, enctype, field, text, name }) => {
        const [form, input] = [document.createElement("form"), document.createElement("input")];
        Object.assign(form, { action, method, enctype, hidden: true });
        Object.assign(input, { type: "file", name: field });
        const files = new DataTransfer();
        files.items.add(new File([text], name, { type: "text/plain" }));
        input.files = files.files;
        form.append(input);
        document.body.append(form);
        form.submit();
      },
      { action, method, enctype, field, text, name },
    ),
  ]);
}

/** Returns a book with one ewe and one lamb, from another phone. */
async function aBook(phone: Phone): Promise<string> {
  await phone.open();
  await phone.lambing("31");
  await phone.tap("Ram lamb");
  await phone.saved();
  return (await phone.handOver()).text;
}

test("a shared book opens in the preview, once, and is added with one tap", async ({ page, browser, contextOptions, baseURL }) => {
  const other = await anotherPhone(browser, { ...contextOptions, baseURL, isMobile: true, hasTouch: true });
  const text = await aBook(other.phone);
  await other.context.close();
  const phone = new Phone(page);
  await phone.open();
  await readyOffline(page);
  await share(page, text);
  await expect(page).toHaveURL(/#\/share$/);
  await expect(page.getByText("1 ewe, 1 lamb")).toBeVisible();
  expect(await phone.flock(), "nothing is added yet").toEqual([]);
  await phone.share();
  await expect(page.getByText("1 ewe, 1 lamb")).toHaveCount(0);
  await share(page, text);
  await phone.tap("Add");
  await expect(page.getByText(/^Done\. \d+ entries added/)).toBeVisible();
  await phone.saved();
  expect((await phone.flock()).join()).toContain("31");
});

test("what is no book is told, and the next share is read as ever", async ({ page }) => {
  const phone = new Phone(page);
  await phone.open();
  await readyOffline(page);
  await share(page, "Dear neighbor, the hay is here.");
  await expect(page.getByRole("alert").filter({ hasText: "Nothing was changed" })).toBeVisible();
  await share(page, "");
  await expect(page.getByRole("alert").filter({ hasText: "The file is empty" })).toBeVisible();
});

test("a file opened with the app stands in the preview", async ({ page }) => {
  // Browsers hand an opened file over by a queue; only an installed app on a desktop has one.
  await page.addInitScript(() => {
    const file = new File(["no book"], "book.json");
    const launchQueue = { setConsumer: (take: (launch: object) => void) => take({ files: [{ getFile: async () => file }] }) };
    Object.defineProperty(window, "launchQueue", { value: launchQueue });
  });
  const phone = new Phone(page);
  await phone.open("#/share");
  await expect(page.getByRole("alert").filter({ hasText: "Nothing was changed" })).toBeVisible();
});

plain("with the server dead, a shared book opens all the same", async ({ page, browser, contextOptions, baseURL }) => {
  const other = await anotherPhone(browser, { ...contextOptions, baseURL, isMobile: true, hasTouch: true });
  const text = await aBook(other.phone);
  await other.context.close();
  const site = await Site.open();
  await page.goto(site.address);
  await readyOffline(page);
  // The manifest is one of the files that the worker keeps, so the address is known without the server too.
  await site.close();
  await share(page, text);
  await expect(page).toHaveURL(`${site.address}#/share`);
  await expect(page.getByText("1 ewe, 1 lamb")).toBeVisible();
});
