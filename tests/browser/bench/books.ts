// Books as large as figures want them, as lambing years make them; the newest lambs are a few minutes old.
import { Scribe } from "../scribe";

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
/** How long it is from one lambing to the next. */
const NEXT = 87 * MINUTE;
/** So many of the last lambings wait for what is done with one tap. */
const WAITING = 12;

type Fact = (dam: string, lamb: string) => unknown;

/** What to note of one lamb after its birth, in order; of one that waits, only its weight. */
function firstDay(number: number, waits: boolean): Fact[] {
  const weighed: Fact = (_, lamb) => ({ weighed: { lamb, kg: 3.1 + (number % 23) / 10 } });
  if (waits) return [weighed];
  const fed: Fact = (_, lamb) => ({ fed: { lamb, ml: 190 + (number % 23), milk: "ewe-colostrum", way: "bottle" } });
  const sucked: Fact = (_, lamb) => ({ sucked: { lamb } });
  return [
    (_, lamb) => ({ "birth-ease": { lamb, ease: number % 9 === 8 ? "slight-by-hand" : "alone" } }),
    (_, lamb) => ({ stood: { lamb } }),
    (_, lamb) => ({ "navel-dipped": { lamb } }),
    weighed,
    // One in five is helped to its first milk; each then lives from its ewe, since bottle lambs of all years would
    // stand on the Watch for ever.
    ...(number % 5 === 4 ? [fed, fed, fed, sucked] : [sucked]),
    (_, lamb) => ({ "belly-felt": { lamb, belly: "full" } }),
    (_, lamb) => ({ tagged: { animal: { lamb }, tag: `${10_000 + number}` } }),
  ];
}

/** Returns a book of exactly so many entries: years of so many ewes, the last of their lambings minutes ago. */
export function lived(entries: number, ewes = 500, now = Date.now()): string {
  // Counted back from the newest: how many lambs each lambing has, and what is noted of each.
  const lambings: Fact[][][] = [];
  let left = entries - ewes;
  for (;;) {
    const number = lambings.length;
    const lambs = Array.from({ length: number % 4 === 3 ? 1 : 2 }, (_, order) => firstDay(2 * number + order, number < WAITING));
    const cost = 2 + lambs.reduce((sum, facts) => sum + 1 + facts.length, 0);
    if (cost > left) break;
    lambings.push(lambs);
    left -= cost;
  }
  const scribe = new Scribe();
  const years = Math.ceil(lambings.length / ewes);
  const came = new Date(now - years * 365 * DAY - ewes * NEXT);
  const dams = Array.from({ length: ewes }, (_, at) => scribe.note(came, { "ewe-came": { tag: `UK 0123 ${10_000 + at}` } }));
  for (const ewe of dams.slice(0, left)) scribe.note(came, { remarked: { animal: { ewe }, text: "Slow with her first." } });
  for (let back = lambings.length - 1; back >= 0; back -= 1) {
    const born = now - 40 * MINUTE - Math.floor(back / ewes) * 365 * DAY - (back % ewes) * NEXT;
    const dam = dams[back % ewes];
    scribe.note(new Date(born - 20 * MINUTE), { "water-bag-seen": { ewe: dam } });
    for (const [order, facts] of lambings[back].entries()) {
      const at = born + order * 15 * MINUTE;
      const lamb = scribe.note(new Date(at), { "lamb-born": { dam, sex: order ? "ram" : "ewe", alive: true } });
      for (const [after, fact] of facts.entries()) scribe.note(new Date(at + (after + 1) * MINUTE), fact(dam, lamb));
    }
    scribe.note(new Date(born + 30 * MINUTE), { "afterbirth-passed": { ewe: dam } });
  }
  return scribe.file();
}

/** Returns a book of ewes, and of their lambs of this spring: twins, and one more for some. */
export function flock(ewes: number, lambs: number, now = Date.now()): string {
  const scribe = new Scribe();
  const began = now - 60 * DAY;
  const dams = Array.from({ length: ewes }, (_, at) =>
    scribe.note(new Date(began - DAY), { "ewe-came": { tag: `UK 0123 ${10_000 + at}` } }),
  );
  for (let at = 0; at < lambs; at += 1) {
    const born = new Date(began + (at % ewes) * NEXT);
    const dam = dams[at % ewes];
    const lamb = scribe.note(born, { "lamb-born": { dam, sex: at % 2 ? "ram" : "ewe", alive: true } });
    scribe.note(born, { weighed: { lamb, kg: 3.1 + (at % 23) / 10 } });
    scribe.note(born, { sucked: { lamb } });
  }
  return scribe.file();
}

/** Returns a book of ewes in groups with their rams, near their first lambing; if `marked`, every third was seen so. */
export function mated(ewes: number, groups: number, marked: boolean, now = Date.now()): string {
  const scribe = new Scribe();
  const ramIn = (group: number) => now - (140 - group) * DAY;
  const colors = ["red", "blue", "green"];
  for (let group = 0; group < groups; group += 1) {
    const began = new Date(ramIn(group));
    const id = scribe.note(began, { "group-formed": { name: `Field ${group + 1}` } });
    for (let at = 0; at < ewes / groups; at += 1) {
      const ewe = scribe.note(began, { "ewe-came": { tag: `UK ${group + 10} ${100 + at}` } });
      scribe.note(began, { "joined-group": { ewe, group: id } });
      if (marked && at % 3 === 0) {
        const seen = new Date(began.getTime() + (1 + (at % 34)) * DAY);
        scribe.note(seen, { "crayon-mark": { ewe, color: colors[at % colors.length] } });
      }
    }
    scribe.note(began, { "ram-in": { group: id, ram: `Ram ${group + 1}`, age: "mature" } });
    scribe.note(new Date(began.getTime() + 51 * DAY), { "ram-out": { group: id } });
  }
  return scribe.file();
}
