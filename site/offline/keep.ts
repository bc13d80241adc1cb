/**
 * On the pages: starts the worker that keeps the handbook on the device, says how far it is, and tells
 * when a newer copy is ready. It never reloads a page by itself.
 */
import { OFFLINE } from '../../components/words/en/offline';
import { LEAVING, WORKER_ADDRESS, type Order, type Progress, type Said } from './messages';

/** A page at a machine stays open for weeks. */
const LOOK_AGAIN = 60 * 60 * 1000;
const TRY_AGAIN = 30 * 1000;
/** The page itself comes first. */
const AFTER_LOADING = 1500;

const line = document.querySelector<HTMLElement>('[data-kept]');
const note = document.querySelector<HTMLElement>('[data-newer]');

function say({ handbook: [here, all], threads: [kept, of], stopped }: Progress): void {
  if (!line) return;
  const done = here >= all && kept >= of;
  line.textContent = done
    ? OFFLINE.all
    : stopped
      ? OFFLINE.failed
      : here < all
        ? OFFLINE.keeping.replace('{percent}', String(Math.floor((100 * here) / all)))
        : OFFLINE.threads.replace('{kept}', String(kept)).replace('{of}', String(of));
  line.hidden = false;
}

function button(text: string, look: string, press: () => void): HTMLButtonElement {
  const made = document.createElement('button');
  made.type = 'button';
  made.className = look;
  made.textContent = text;
  made.addEventListener('click', press);
  return made;
}

function announce(text: string, ...buttons: HTMLButtonElement[]): void {
  if (!note) return;
  const words = document.createElement('p');
  words.textContent = `${text} ${OFFLINE.stays}`;
  note.replaceChildren(words, ...buttons);
}

let asked = false;

/** A newer copy answers from now on: the window that asked for it takes it, every other one is told. */
function replaced(): void {
  if (asked) location.reload();
  else
    announce(
      OFFLINE.replaced,
      button(OFFLINE.reload, 'button', () => location.reload()),
    );
}

function offer(waiting: ServiceWorker): void {
  announce(
    OFFLINE.newer,
    button(OFFLINE.use, 'button', () => {
      asked = true;
      // The browser lets the older worker finish first. Asked again it does no more than asked once.
      // oxlint-disable-next-line unicorn/require-post-message-target-origin
      new BroadcastChannel(LEAVING).postMessage(null);
      // A worker takes no target: there is one listener.
      // oxlint-disable-next-line unicorn/require-post-message-target-origin
      waiting.postMessage({ kind: 'take-over' } satisfies Order);
      announce(OFFLINE.taking);
    }),
    button(OFFLINE.keepOld, 'button plain', () => note?.replaceChildren()),
  );
}

/** Has the worker bring what is missing, and say how far it is. */
function ask(): void {
  navigator.serviceWorker.controller?.postMessage({ kind: 'complete' } satisfies Order);
}

function follow(registration: ServiceWorkerRegistration): void {
  const { serviceWorker } = navigator;
  const look = (worker: ServiceWorker): void => {
    worker.addEventListener('statechange', () => {
      if (worker.state === 'installed' && serviceWorker.controller) offer(worker);
      // The network gave out: what has come stays, and the rest is fetched at the next try.
      if (worker.state === 'redundant' && !registration.active) {
        if (line) {
          line.textContent = OFFLINE.failed;
          line.hidden = false;
        }
        window.setTimeout(start, TRY_AGAIN);
      }
    });
  };
  if (registration.waiting && serviceWorker.controller) offer(registration.waiting);
  if (registration.installing) look(registration.installing);
  registration.addEventListener('updatefound', () => {
    if (registration.installing) look(registration.installing);
  });
  ask();
  window.addEventListener('online', ask);
  window.setInterval(() => {
    ask();
    // Without a network there is nothing newer to be found.
    registration.update().catch(() => undefined);
  }, LOOK_AGAIN);
}

let following = false;

function start(): void {
  navigator.serviceWorker.register(WORKER_ADDRESS, { updateViaCache: 'none' }).then(
    // A browser that is told to keep nothing may answer with nothing.
    (registration: ServiceWorkerRegistration | undefined) => {
      if (!registration || following) return;
      following = true;
      follow(registration);
    },
    // Storage is off, or the worker could not be fetched: the pages work as they are.
    () => undefined,
  );
}

/**
 * From the first line on, and not when the worker is started: a newer copy may take over a window that
 * was opened a moment ago.
 */
function listen(): void {
  const { serviceWorker } = navigator;
  let controlled = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (controlled) replaced();
    // The first worker takes the page over without changing anything in it.
    else if (following) ask();
    controlled = true;
  });
  serviceWorker.addEventListener('message', ({ data, source }: MessageEvent<Said>) => {
    // What a worker said before it gave up may come after the news that it did.
    if (source instanceof ServiceWorker && source.state === 'redundant') return;
    if (data.kind === 'progress') say(data);
    // Kept by the browser until the page is read, so it comes even where the change came before this script.
    if (data.kind === 'replaced') replaced();
  });
}

if ('serviceWorker' in navigator && import.meta.env.PROD) {
  listen();
  const later = (): unknown => window.setTimeout(start, AFTER_LOADING);
  if (document.readyState === 'complete') later();
  else window.addEventListener('load', later, { once: true });
}
