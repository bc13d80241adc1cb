/**
 * Keeps the handbook on the device. All but the thread pages is fetched when the worker is installed,
 * the thread pages when a page asks. Every file is held to its digest, so that a page of a network's
 * sign-in, or half a file, is never kept as ours. A copy answers as one: pages and scripts of one
 * build, until the reader takes the next.
 */
import { PrecacheController } from 'workbox-precaching';
import {
  LEAVING,
  type Listed,
  type Order,
  type Progress,
  type Replaced,
  type Said,
} from './messages';

/** Put in by the build. */
declare const HANDBOOK_FILES: Listed[];
declare const THREAD_FILES: Listed[];

/** The part of a worker's world that is used here; the page's own types know nothing of it. */
interface Lasting extends Event {
  waitUntil: (work: Promise<unknown>) => void;
}
interface Asked extends Lasting {
  request: Request;
  respondWith: (answer: Promise<Response>) => void;
}
interface Told extends Lasting {
  data: unknown;
}
interface Window {
  postMessage: (message: Said) => void;
}
interface World {
  location: Location;
  caches: CacheStorage;
  clients: {
    claim: () => Promise<void>;
    matchAll: (of: { includeUncontrolled?: boolean; type: 'window' }) => Promise<Window[]>;
  };
  skipWaiting: () => Promise<void>;
  addEventListener: ((type: 'install' | 'activate', listener: (event: Lasting) => void) => void) &
    ((type: 'fetch', listener: (event: Asked) => void) => void) &
    ((type: 'message', listener: (event: Told) => void) => void);
}

const world = globalThis as unknown as World;
const HANDBOOK = 'handbook';
const THREADS = 'handbook-threads';
/** Scripts and styles of the copy before this one, for windows that still show it. */
const EARLIER = 'handbook-earlier';
const NO_NETWORK = '/no-network/';
const ASSETS = '/_astro/';

const absolute = (address: string): string => new URL(address, world.location.origin).href;
/** Files named by their content never change; the rest is told apart by its digest. */
const revision = ([address, integrity]: Listed): string | null =>
  address.startsWith(ASSETS) ? null : integrity.slice(7, 23);

let installed = 0;
const controller = new PrecacheController({
  cacheName: HANDBOOK,
  plugins: [
    {
      handlerDidComplete: async () => {
        installed += 1;
        if (installed % 10 === 0) await tell({ installed });
      },
    },
  ],
});
controller.addToCacheList(
  HANDBOOK_FILES.map((file) => ({ url: file[0], integrity: file[1], revision: revision(file) })),
);

const threadKeys = new Map(
  THREAD_FILES.map((file) => [
    absolute(file[0]),
    { key: absolute(`${file[0]}?digest=${revision(file)}`), integrity: file[1] },
  ]),
);

/** What of the handbook is here, by the names it is kept under. Asked once for all: one by one takes seconds. */
async function keptKeys(): Promise<Set<string>> {
  const cache = await world.caches.open(HANDBOOK);
  return new Set((await cache.keys()).map(({ url }) => url));
}

async function keptHandbook(): Promise<number> {
  const kept = await keptKeys();
  return [...controller.getURLsToCacheKeys().values()].filter((key) => kept.has(key)).length;
}

async function missingThreads(): Promise<string[]> {
  const cache = await world.caches.open(THREADS);
  const kept = new Set((await cache.keys()).map(({ url }) => url));
  return [...threadKeys].filter(([, { key }]) => !kept.has(key)).map(([url]) => url);
}

/** Says to every window how far it has come. */
async function tell(known: { installed?: number; stopped?: boolean } = {}): Promise<void> {
  const handbook = known.installed ?? (await keptHandbook());
  const threads = threadKeys.size - (await missingThreads()).length;
  const progress: Progress = {
    kind: 'progress',
    handbook: [handbook, HANDBOOK_FILES.length],
    threads: [threads, threadKeys.size],
    stopped: known.stopped ?? false,
  };
  const windows = await world.clients.matchAll({ includeUncontrolled: true, type: 'window' });
  for (const window of windows) {
    // These are windows of this site alone, and take no target.
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    window.postMessage(progress);
  }
}

const pause = (seconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, seconds * 1000));

/**
 * Aborted when a newer copy is to take over: a browser lets the older one finish what it has in hand, and
 * four hundred pages over a poor network are minutes. What is missing then the newer one brings.
 */
const leaving = new AbortController();
const { signal } = leaving;
const left = new Promise<void>((resolve) =>
  signal.addEventListener('abort', () => resolve(), { once: true }),
);
new BroadcastChannel(LEAVING).addEventListener('message', () => leaving.abort());

/** Fetches one thread page, held to its digest, and keeps it. */
async function fetchThread(url: string, options: RequestInit = {}): Promise<Response> {
  const { key, integrity } = threadKeys.get(url)!;
  const response = await fetch(new Request(url, { ...options, integrity, cache: 'no-cache' }));
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  const cache = await world.caches.open(THREADS);
  await cache.put(key, response.clone());
  return response;
}

/** Files of the handbook that the browser has thrown away to make room. */
async function mend(event: Event): Promise<void> {
  const kept = await keptKeys();
  for (const [url, cacheKey] of controller.getURLsToCacheKeys()) {
    if (signal.aborted) return;
    if (kept.has(cacheKey)) continue;
    const integrity = controller.getIntegrityForCacheKey(cacheKey);
    await controller.strategy.handle({
      event,
      request: new Request(url),
      params: { cacheKey, integrity },
    });
  }
}

const AT_ONCE = 4;
/** Seconds to wait before each further try; after the last the next page asks again. */
const TRIES = [0, 2, 8];

/** Brings what is missing, a few at a time, and bears with a network that comes and goes. */
async function complete(event: Event): Promise<void> {
  for (const wait of TRIES) {
    await pause(wait);
    if (signal.aborted) return;
    try {
      await mend(event);
    } catch {
      continue;
    }
    const missing = await missingThreads();
    let failures = 0;
    while (missing.length > 0 && failures < AT_ONCE) {
      const next = missing.splice(0, AT_ONCE);
      const some = await Promise.allSettled(next.map((url) => fetchThread(url, { signal })));
      if (signal.aborted) return;
      failures += some.filter(({ status }) => status === 'rejected').length;
      if (missing.length % (4 * AT_ONCE) < AT_ONCE) await tell();
    }
    if ((await missingThreads()).length === 0) {
      await forgetOldThreads();
      return tell();
    }
  }
  return tell({ stopped: true });
}

/** Only once the new ones are all here: until then an old page is better than none. */
async function forgetOldThreads(): Promise<void> {
  const cache = await world.caches.open(THREADS);
  const wanted = new Set([...threadKeys.values()].map(({ key }) => key));
  for (const { url } of await cache.keys()) if (!wanted.has(url)) await cache.delete(url);
}

/** What the copy before this one needs to go on in windows that show it. */
async function keepEarlierAssets(): Promise<void> {
  const wanted = new Set(controller.getURLsToCacheKeys().values());
  const [old, earlier] = await Promise.all([
    world.caches.open(HANDBOOK),
    world.caches.delete(EARLIER).then(() => world.caches.open(EARLIER)),
  ]);
  for (const request of await old.keys()) {
    if (wanted.has(request.url) || !new URL(request.url).pathname.startsWith(ASSETS)) continue;
    const response = await old.match(request);
    if (response) await earlier.put(request.url, response);
  }
}

/** Says to every window of the copy before this one that it has been replaced. */
async function tellReplaced(): Promise<void> {
  // Nothing is claimed yet, so windows that this worker controls came over from an older one.
  for (const window of await world.clients.matchAll({ type: 'window' })) {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin
    window.postMessage({ kind: 'replaced' } satisfies Replaced);
  }
}

let completing: Promise<void> | null = null;

world.addEventListener('install', (event) => {
  event.waitUntil(controller.install(event).then(() => tell()));
});

world.addEventListener('activate', (event) => {
  event.waitUntil(
    keepEarlierAssets()
      .then(() => controller.activate(event))
      .then(tellReplaced)
      .then(() => world.clients.claim()),
  );
});

world.addEventListener('message', (event) => {
  const order = event.data as Order | null;
  if (order?.kind === 'take-over') event.waitUntil(world.skipWaiting());
  if (order?.kind === 'complete') {
    completing ??= complete(event).finally(() => (completing = null));
    const bringing = completing;
    event.waitUntil(Promise.race([tell().then(() => bringing), left]));
  }
});

async function threadPage(url: string, request: Request): Promise<Response> {
  const cache = await world.caches.open(THREADS);
  const kept = await cache.match(threadKeys.get(url)!.key);
  if (kept) return kept;
  try {
    return await fetchThread(url);
  } catch {
    // One of another build, or none at all: what the network says, else an older page, else why not.
    try {
      return await fetch(request);
    } catch {
      return (await cache.match(url, { ignoreSearch: true })) ?? noNetwork();
    }
  }
}

async function noNetwork(): Promise<Response> {
  const page = await controller.matchPrecache(absolute(NO_NETWORK));
  return page ?? Response.error();
}

async function other(request: Request, url: URL): Promise<Response> {
  if (url.pathname.startsWith(ASSETS)) {
    const earlier = await world.caches.match(url.href, { cacheName: EARLIER });
    if (earlier) return earlier;
  }
  if (request.mode !== 'navigate') return fetch(request);
  const folder = absolute(`${url.pathname}/`);
  const known = controller.getCacheKeyForURL(folder) ?? threadKeys.has(folder);
  if (known) return Response.redirect(`${folder}${url.search}`, 302);
  try {
    return await fetch(request);
  } catch {
    return noNetwork();
  }
}

world.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== world.location.origin) return;
  // What is typed stands after the question mark; the page is the same.
  const plain = url.origin + url.pathname;
  const cacheKey = controller.getCacheKeyForURL(plain);
  if (cacheKey !== undefined) {
    const params = { cacheKey, integrity: controller.getIntegrityForCacheKey(cacheKey) };
    event.respondWith(
      controller.strategy
        .handle({ event, request, params })
        // Thrown away by the browser, and another build or nothing at the other end.
        .catch(() => fetch(request).catch(() => other(request, url))),
    );
  } else if (threadKeys.has(plain)) {
    event.respondWith(threadPage(plain, request));
  } else {
    event.respondWith(other(request, url));
  }
});
