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

/** Returns ten years of a flock with so many lambs: groups with their rams, marks, scans, scores, weights; the last born minutes ago. */
export function history(lambs: number, now = Date.now()): string {
  const scribe = new Scribe();
  const years = 10;
  const ewes = Math.ceil((lambs * 5) / 8 / years);
  const start = (year: number) => now - (years - year) * 365 * DAY + 165 * DAY;
  const dams = Array.from({ length: ewes }, (_, at) => scribe.note(new Date(start(0) - DAY), { "ewe-came": { tag: `UK 0123 ${10_000 + at}` } }));
  let born = 0;
  for (let year = 0; year < years; year += 1) {
    const day = (after: number) => new Date(start(year) + after * DAY);
    for (let first = 0; first < ewes; first += 45) {
      const group = scribe.note(day(0), { "group-formed": { name: `Field ${first / 45 + 1}` } });
      const members = dams.slice(first, first + 45);
      for (const ewe of members) scribe.note(day(0), { "joined-group": { ewe, group } });
      for (const [at, ewe] of members.entries()) scribe.note(day(1), { conditioned: { ewe, score: 2.5 + (at % 6) / 4 } });
      scribe.note(day(45), { "ram-in": { group, ram: `R${(first / 45) % 9}`, age: "mature" } });
      for (const [at, ewe] of members.entries()) {
        if (at % 3 < 2) scribe.note(day(46 + (at % 34)), { "crayon-mark": { ewe, color: at % 34 < 17 ? "red" : "blue" } });
      }
      scribe.note(day(96), { "ram-out": { group } });
      for (const [at, ewe] of members.entries()) scribe.note(day(130), { scanned: { ewe, lambs: at % 5 < 2 ? 1 : 2 } });
      scribe.note(day(160), { "group-parted": { group } });
    }
    const grown: [string, number][] = [];
    for (const [at, dam] of dams.entries()) {
      // Field by field, a day later with each ewe of a field; the last of the last year are born today.
      const back = (45 - (at % 45)) * 0.8 * DAY - (at % 700) * MINUTE;
      const time = start(year) + 200 * DAY - Math.max(back, 30 * MINUTE);
      for (let order = 0; order < ((at + year) % 5 < 2 ? 1 : 2) && born < lambs; order += 1, born += 1) {
        const when = (after: number) => new Date(Math.min(time + order * 15 * MINUTE + after * MINUTE, now));
        const alive = born % 37 < 36;
        const lamb = scribe.note(when(0), { "lamb-born": { dam, sex: order ? "ram" : "ewe", alive } });
        if (!alive) continue;
        scribe.note(when(1), { "birth-ease": { lamb, ease: born % 19 === 18 ? "hard-by-hand" : "alone" } });
        scribe.note(when(2), { weighed: { lamb, kg: 3.1 + (born % 23) / 10 } });
        if (year < years - 1) scribe.note(when(3), { sucked: { lamb } });
        scribe.note(when(4), { tagged: { animal: { lamb }, tag: `${year}${10_000 + born}` } });
        if (year < years - 1) grown.push([lamb, born]);
      }
    }
    for (const [lamb, of] of grown) {
      for (const after of [50, 100]) scribe.note(day(200 + after), { weighed: { lamb, kg: 4 + (0.2 + (of % 29) / 200) * after } });
      scribe.note(day(301), { weaned: { lamb } });
    }
  }
  return scribe.file();
}
