// Writes book files as a phone would: every entry with an id of its own, in the order in which it was noted.
import { createHash } from "node:crypto";

/** Returns the digest under which entries travel. */
export const seal = (entries: unknown[]) =>
  `sha256-${createHash("sha256").update(JSON.stringify(entries)).digest("hex")}`;

/** A phone that is not here, and what was noted on it. */
export class Scribe {
  private readonly entries: { id: string; device: string; noted: string; at: string; event: unknown }[] = [];
  /** The offset of the clock on its wall from UTC. */
  constructor(private readonly offset = "+00:00") {}

  private readonly device = "019c0000-0000-7000-8000-00000000d001";

  /** Notes a fact that happened at this instant; returns its id. */
  note(at: Date, event: unknown): string {
    const id = `019c0000-0000-7000-8000-${(this.entries.length + 1).toString(16).padStart(12, "0")}`;
    const sign = this.offset.startsWith("-") ? -1 : 1;
    const [hours, minutes] = this.offset.slice(1).split(":").map(Number);
    const wall = new Date(at.getTime() + sign * (hours * 60 + minutes) * 60_000);
    const instant = wall.toISOString().replace("Z", this.offset);
    this.entries.push({ id, device: this.device, noted: instant, at: instant, event });
    return id;
  }

  /** Returns the file. */
  file(): string {
    const { entries } = this;
    return JSON.stringify({
      format: "yeanling-book",
      version: 1,
      made: entries.at(-1)?.noted,
      device: this.device,
      count: entries.length,
      digest: seal(entries),
      entries,
    });
  }
}
