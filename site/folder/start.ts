/**
 * Brings the pages of a folder to life. Module scripts do not load from a folder, so this is part of
 * one plain script that holds every island; it does what the site's own loader does, and makes links
 * that appear later fit a folder.
 */

type Module = Record<string, unknown>;
/** What the site's renderer gives back for an element of the page. */
type Hydrate = (
  component: unknown,
  props: unknown,
  slots: Record<string, never>,
  how: { client: string },
) => Promise<void>;

/** The kinds of value that this site's islands are given. */
const VALUE = 0;
const LIST = 1;

/** Properties as the build writes them: each value beside the number of its kind. */
function revive(written: unknown): unknown {
  const [kind, value] = written as [number, unknown];
  if (kind === LIST) return (value as unknown[]).map(revive);
  if (kind !== VALUE) throw new Error(`a property of kind ${kind} cannot be read from a folder`);
  return reviveAll(value);
}

function reviveAll(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, revive(each)]));
}

/** `/plan/?thread=M8` as a file of the folder. */
export function fileOf(address: string): string {
  const [, path = '', rest = ''] = /^\/([^?#]*)(.*)$/.exec(address) ?? [];
  return (path === '' || path.endsWith('/') ? `${path}index.html` : path) + rest;
}

function fitLinks(root: string): void {
  const fit = (link: Element): void => {
    const address = link.getAttribute('href');
    if (address?.startsWith('/')) link.setAttribute('href', new URL(fileOf(address), root).href);
  };
  const fitAll = (node: Node): void => {
    if (!(node instanceof Element)) return;
    if (node.matches('a[href^="/"]')) fit(node);
    node.querySelectorAll('a[href^="/"]').forEach(fit);
  };
  new MutationObserver((changes) => {
    for (const { type, target, addedNodes } of changes) {
      if (type === 'attributes') fitAll(target);
      addedNodes.forEach(fitAll);
    }
  }).observe(document.body, {
    subtree: true,
    childList: true,
    attributes: true,
    attributeFilter: ['href'],
  });
  // A link that is pressed by script in the same breath as it was made.
  document.addEventListener(
    'click',
    ({ target }) => {
      const link = target instanceof Element ? target.closest('a') : null;
      if (link) fit(link);
    },
    { capture: true },
  );
}

export async function start(
  renderer: (island: Element) => Hydrate,
  islands: Record<string, () => Promise<Module>>,
  /** The folder's own address. */
  root: string,
): Promise<void> {
  fitLinks(root);
  const wake = async (island: Element): Promise<void> => {
    const load = islands[island.getAttribute('component-url') ?? ''];
    if (!load) return;
    const component = (await load())[island.getAttribute('component-export') ?? 'default'];
    const props = reviveAll(JSON.parse(island.getAttribute('props') ?? '{}'));
    await renderer(island)(component, props, {}, { client: 'load' });
    island.removeAttribute('ssr');
    // As on the site: what waits for an island hears of it.
    island.dispatchEvent(new CustomEvent('astro:hydrate'));
  };
  // Each by itself: one that fails leaves the others working, and says so on the console.
  await Promise.all([...document.querySelectorAll('astro-island[ssr]')].map(wake));
}
