// A static host of the test's own, in a folder as some hosts give, whose files the test may change or spoil.
import { readFile } from "node:fs/promises";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";
import { brotliCompressSync } from "node:zlib";

const dist = join(import.meta.dirname, process.env.YEANLING_QUICK ? "../../dist-quick" : "../../dist");
const kinds: Record<string, string> = {
  ".css": "text/css",
  ".html": "text/html",
  ".js": "text/javascript",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};

/** What the host says instead of the file; `cut` breaks the connection after half of what was promised. */
export type Answer = { status?: number; kind?: string; body: string; cut?: boolean };

export class Site {
  /** Answers by file name, such as "worker.js", in place of the build's files. */
  readonly instead = new Map<string, Answer>();
  /** What is asked at an address that is no file, worked out anew each time. */
  readonly asked = new Map<string, (address: URL) => Answer | Promise<Answer>>();
  /** Whether files are sent as most hosts send them: with brotli, but for what is compressed already. */
  packs = false;
  private readonly packed = new Map<string, Buffer>();
  private constructor(private readonly server: Server, readonly address: string, private readonly files: string) {}

  /** Opens a host at an address of this folder, of the app or of what else was built, named from here. */
  static async open(folder = "/farm/book/", built?: string): Promise<Site> {
    const files = built ? join(import.meta.dirname, built) : dist;
    const server = createServer(async (request, response) => {
      const address = new URL(request.url ?? "/", "http://host");
      const path = address.pathname;
      const name = path.startsWith(folder) ? path.slice(folder.length) || "index.html" : "";
      const answer = (await site.asked.get(name)?.(address)) ?? site.instead.get(name);
      const kind = answer?.kind ?? kinds[extname(name)] ?? "text/plain";
      try {
        const body = answer?.body ?? (await readFile(join(files, name)));
        if (answer?.cut) {
          response.writeHead(200, { "Content-Type": kind, "Content-Length": Buffer.byteLength(body) });
          response.write(body.slice(0, body.length / 2), () => response.destroy());
          return;
        }
        const headers = { "Content-Type": kind, "Cache-Control": "no-cache" };
        if (site.packs && ![".png", ".woff2"].includes(extname(name))) {
          // The build has packed what is large: to do it again keeps a first visit waiting.
          const copy = answer ? undefined : await readFile(join(files, `${name}.br`)).catch(() => undefined);
          const packed = site.packed.get(name) ?? copy ?? brotliCompressSync(body);
          site.packed.set(name, packed);
          response.writeHead(200, { ...headers, "Content-Encoding": "br" }).end(packed);
          return;
        }
        response.writeHead(answer?.status ?? 200, headers).end(body);
      } catch {
        response.writeHead(404, { "Content-Type": "text/html" }).end("<p>not here");
      }
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const site = new Site(server, `http://127.0.0.1:${(server.address() as AddressInfo).port}${folder}`, files);
    return site;
  }

  /** Returns the text of a file of the build. */
  file(name: string): Promise<string> {
    return readFile(join(this.files, name), "utf8");
  }

  /** Publishes a build that differs from the first in its version and, if given, in one more file to keep. */
  async publishAnother(version: string, alsoKeep?: string): Promise<void> {
    const worker = await this.file("worker.js");
    let body = worker.replace(/VERSION = "[0-9a-f]+"/, `VERSION = "${version}"`);
    if (alsoKeep) body = body.replace("FILES = [", `FILES = [${JSON.stringify(alsoKeep)},`);
    this.instead.set("worker.js", { body });
  }

  /** Returns the name of the file that the build's worker keeps and whose name begins and ends so. */
  async kept(beginning: string, end = ""): Promise<string> {
    const name = (await this.file("worker.js")).match(new RegExp(`"\\./(${beginning}[^"]*${end})"`))?.[1];
    if (!name) throw new Error(`the worker keeps no ${beginning}`);
    return name;
  }

  async close(): Promise<void> {
    this.server.closeAllConnections();
    await new Promise((resolve) => this.server.close(resolve));
  }
}
