import { checkedFileList, type FileList, fileListName } from "./fileList";

/** Longest wait for the network before what is kept is shown, ms. Common practice, no source. */
export const patienceMilliseconds = 3000;

const prefix = "wakewright-";
/** Holds the name of the build that is shown without a network. */
const currentCache = `${prefix}current`;
const buildCache = (build: string) => `${prefix}build-${build}`;

/**
 * Builds of the page that are kept in the browser, each in a cache of its own. A build counts only once all of its files
 * are there with the contents that its list promises; until then the one before stays.
 */
export class KeptBuilds {
  readonly #root: string;
  /** Fillings one after the other: two tabs may ask at once. */
  #queue: Promise<unknown> = Promise.resolve();

  /** @param root address of the page's document */
  constructor(root: string) {
    this.#root = root;
  }

  /** The build that is shown without a network; null before one was kept. */
  async current(): Promise<string | null> {
    const kept = await (await caches.open(currentCache)).match(this.#root);
    return kept === undefined ? null : kept.text();
  }

  /** The document of the current build. */
  async document(): Promise<Response | null> {
    const build = await this.current();
    if (build === null) return null;
    return (await (await caches.open(buildCache(build))).match(this.#root)) ?? null;
  }

  /** A file of the current build, or else of another that is kept: tabs stay open over an update. */
  async file(request: Request): Promise<Response | null> {
    const build = await this.current();
    if (build === null) return null;
    // The files are the same for every origin, whatever a server says of it: module requests name theirs, the list's did not.
    const options = { ignoreVary: true };
    const kept = await (await caches.open(buildCache(build))).match(request, options);
    return kept ?? (await caches.match(request, options)) ?? null;
  }

  /**
   * Brings what is kept to the server's present build. Rejects when a file cannot be had or kept; what was current stays.
   * @returns the build, and whether it has just replaced another
   */
  update(): Promise<{ readonly build: string; readonly isNew: boolean }> {
    const updated = this.#queue.then(() => this.#update());
    this.#queue = updated.catch(() => {});
    return updated;
  }

  async #update(): Promise<{ readonly build: string; readonly isNew: boolean }> {
    const answer = await fetch(this.#address(fileListName), { cache: "no-store" });
    const list = answer.ok ? checkedFileList(await answer.json()) : null;
    if (list === null) throw new Error(`${fileListName} is not a list of files`);
    const before = await this.current();
    if (before !== list.build) {
      await this.#fill(list);
      await (await caches.open(currentCache)).put(this.#root, new Response(list.build));
    }
    await this.#tidy([list.build, ...(before === null ? [] : [before])], before !== list.build);
    return { build: list.build, isNew: before !== null && before !== list.build };
  }

  /** All files of a list, the document last: a cache that has it is whole. */
  async #fill(list: FileList): Promise<void> {
    const cache = await caches.open(buildCache(list.build));
    for (const [file, hash] of Object.entries(list.files)) {
      const address = this.#address(file);
      if (await hasContent(await cache.match(address), hash)) continue;
      const kept = await caches.match(address, { ignoreVary: true });
      await cache.put(address, (await sameContent(kept, hash)) ?? (await this.#fetched(address, hash)));
    }
    await cache.put(this.#root, await this.#fetched(this.#root, list.document));
  }

  async #fetched(address: string, hash: string): Promise<Response> {
    const answer = await fetch(address, { cache: "no-cache" });
    const whole = answer.ok ? await sameContent(answer, hash) : null;
    if (whole === null) throw new Error(`${address} is not what the list of files promises`);
    return whole;
  }

  /** Removes builds that nobody needs; the one before an update is kept for tabs that still show it. */
  async #tidy(wanted: readonly string[], isUpdate: boolean): Promise<void> {
    if (!isUpdate) return;
    const names = new Set([currentCache, ...wanted.map(buildCache)]);
    for (const name of await caches.keys()) {
      if (name.startsWith(prefix) && !names.has(name)) await caches.delete(name);
    }
  }

  #address(file: string): string {
    return new URL(file, this.#root).href;
  }
}

/** The answer with its content read, when that is what was promised; otherwise null. */
async function sameContent(answer: Response | undefined, hash: string): Promise<Response | null> {
  if (answer === undefined) return null;
  const content = await answer.arrayBuffer();
  if ((await digest(content)) !== hash) return null;
  return new Response(content, { headers: { "content-type": answer.headers.get("content-type") ?? "" } });
}

async function hasContent(answer: Response | undefined, hash: string): Promise<boolean> {
  return answer !== undefined && (await digest(await answer.arrayBuffer())) === hash;
}

/** SHA-256 in hexadecimal. */
async function digest(content: ArrayBuffer): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
