// Before the app is there, and before the first paint: the look that was chosen on this phone, and the first screen for those
// who come for the first time. What is pressed on it is pressed once the app has taken it over.
{
  const root = document.documentElement;
  let kept;
  try {
    kept = localStorage;
  } catch {}
  const look = kept?.getItem("yeanling/look")?.replaceAll('"', "");
  if (look === "day" || look === "night") root.dataset.look = look;
  const known = kept?.length !== 0 || navigator.serviceWorker?.controller;
  if (!known && /^(#\/?)?$/.test(location.hash)) root.dataset.first = "";

  const say = (words, more = "") => {
    const line = document.querySelector(".splash-said");
    if (line) line.textContent = line.dataset[words] + more;
    return Boolean(line);
  };

  let pressed;
  addEventListener("click", (event) => {
    const one = event.target.closest(".first :is(a, button)");
    if (!one) return;
    event.preventDefault();
    pressed?.removeAttribute("data-pressed");
    pressed = one;
    one.dataset.pressed = "";
    say("waits", ` ${one.textContent}`);
  }, true);
  addEventListener("stands", () => setTimeout(() => pressed?.click()));

  // The first format of a date is slow to make: it is made once the screen stands and the app is on its way.
  requestAnimationFrame(() => setTimeout(() => new Intl.DateTimeFormat([], { day: "numeric", month: "numeric", hour: "numeric" })));

  const fails = () => {
    if (say("fails")) root.dataset.failed = "";
  };
  addEventListener("error", fails, true);
  addEventListener("unhandledrejection", fails);
}
