// A busy hour of an invented night: so many animals with something due, from one in danger to the bottle lambs.
import { Scribe } from "./scribe";

/** How many animals have something due. */
export const DUE = 15;

const MINUTE = 60_000;

/** Returns the book of that hour. */
export function busyHour(now: number): string {
  const scribe = new Scribe("-05:00");
  const note = (ago: number, event: unknown) => scribe.note(new Date(now - ago * MINUTE), event);
  const ewe = (tag: string) => note(100 * 24 * 60, { "ewe-came": { tag } });
  const [three, seven, twelve, twenty, thirty, forty, fifty] = ["3", "7", "12", "20", "30", "40", "50"].map(ewe);
  const facts: [number, unknown][] = [];
  const later = (ago: number, event: unknown) => facts.push([ago, event]);
  const born = (ago: number, dam: string | null, kg: number, sex = "ewe") => {
    const lamb = note(ago, { "lamb-born": { dam, sex, alive: true } });
    later(ago - 1, { weighed: { lamb, kg } });
    return lamb;
  };
  // Two on the bottle for days, both hungry.
  const bottled = [5, 4].map((days) => born(days * 24 * 60, null, 3.4));
  for (const [at, lamb] of bottled.entries()) {
    later(4000 - at, { tagged: { animal: { lamb }, tag: ["Bramble", "Clover"][at] } });
    later(1000, { weighed: { lamb, kg: 4.2 } });
    later(400, { fed: { lamb, ml: 200, milk: "replacer", way: "bottle" } });
  }
  // Three that lambed in the evening: their lambs are well, the afterbirth was not seen.
  for (const dam of [twelve, twenty, thirty]) {
    const lamb = born(430, dam, 4);
    for (const fact of ["navel-dipped", "stood", "sucked"]) later(420, { [fact]: { lamb } });
    later(418, { "vigor-scored": { lamb, scale: "four-grade", score: 1 } });
    later(415, { "all-born": { lamb } });
    later(50, { "navel-dipped": { lamb } });
  }
  // Twins, one of them cold; its sister's navel was missed.
  const cold = born(391, seven, 2.8);
  const sister = born(380, seven, 3.1, "ram");
  later(375, { "all-born": { lamb: cold } });
  for (const lamb of [cold, sister]) later(350, { sucked: { lamb } });
  later(300, { "afterbirth-passed": { ewe: seven } });
  later(9, { "temperature-taken": { lamb: cold, celsius: 35 } });
  later(8, { "swallow-tried": { lamb: cold, able: false } });
  // Triplets that nobody saw to suck but one.
  const triplets = [130, 124, 118].map((ago) => born(ago, three, 3.6));
  later(110, { "all-born": { lamb: triplets[0] } });
  const pen = note(600, { "pen-made": { name: "4" } });
  later(105, { "put-in-pen": { pen, animal: { ewe: three } } });
  later(100, { stood: { lamb: triplets[1] } });
  later(90, { sucked: { lamb: triplets[2] } });
  // Twins of the last hour.
  const young = [58, 44].map((ago) => born(ago, fifty, 4.1));
  later(40, { "all-born": { lamb: young[0] } });
  for (const lamb of young) later(38, { "navel-dipped": { lamb } });
  // At work, with her waters.
  later(62, { "water-bag-seen": { ewe: forty } });
  // A single past its first hour.
  const [seventy] = ["70"].map(ewe);
  const single = born(75, seventy, 4.4, "ram");
  for (const fact of ["all-born", "stood", "navel-dipped"]) later(60, { [fact]: { lamb: single } });
  // Whoever lambed had her udder drawn and was seen up and eating.
  for (const [dam, ago] of [[seven, 370], [twelve, 410], [twenty, 410], [thirty, 410], [three, 85], [fifty, 36], [seventy, 58]] as const) {
    later(ago, { illness: { "udder-checked": { ewe: dam, left: "milks", right: "milks" } } });
    later(ago, { care: { settled: { ewe: dam } } });
  }
  // A restless one.
  const sixty = note(100 * 24 * 60, { "ewe-came": { tag: "60" } });
  later(65, { "sign-seen": { ewe: sixty, sign: "restless" } });
  for (const [ago, event] of facts.sort(([a], [b]) => b - a)) note(ago, event);
  return scribe.file();
}
