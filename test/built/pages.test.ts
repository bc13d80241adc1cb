import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, type HTMLElement } from 'node-html-parser';
import { describe, expect, test } from 'vitest';
import { allPages, DIST, fileOf, htmlOf } from '../tools/pages';

const pages = allPages();
const parsed = new Map<string, HTMLElement>(
  pages.map((page) => [page, parse(htmlOf(page), { comment: false })]),
);

/** Lines `page: fault` of every page, for one look at all that is wrong. */
function faults(find: (root: HTMLElement, page: string) => string[]): string[] {
  return [...parsed].flatMap(([page, root]) =>
    find(root, page).map((fault) => `${page}: ${fault}`),
  );
}

function policyOf(root: HTMLElement): Map<string, string[]> {
  const content = root
    .querySelector('meta[http-equiv="content-security-policy"]')
    ?.getAttribute('content');
  const directives = (content ?? '').split(';').map((part) => part.trim().split(/\s+/));
  return new Map(directives.map(([name = '', ...values]) => [name, values]));
}

function hashOf(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

describe('security policy', () => {
  test('every page has one, and it lets nothing in from elsewhere', () => {
    const weak = faults((root) => {
      const policy = policyOf(root);
      const values = [...policy.values()].flat();
      return [
        ...(policy.get('default-src')?.join(' ') === "'self'" ? [] : ['default-src is not self']),
        ...values.filter((value) => /unsafe|https?:|\*/.test(value)),
      ];
    });
    expect(weak).toEqual([]);
  });

  test('it comes before any script or style that it governs', () => {
    const late = faults((root) => {
      const [first] = root.querySelectorAll(
        'meta[http-equiv=content-security-policy], script, style',
      );
      return first?.tagName === 'META' ? [] : [`${first?.tagName} comes first`];
    });
    expect(late).toEqual([]);
  });

  test('no style attribute and no script in an attribute, which it would block', () => {
    const blocked = faults((root) =>
      root.querySelectorAll('*').flatMap((element) =>
        Object.keys(element.attributes)
          .filter((name) => name === 'style' || /^on[a-z]+$/.test(name))
          .map((name) => `<${element.rawTagName} ${name}="${element.getAttribute(name)}">`),
      ),
    );
    expect(blocked).toEqual([]);
  });

  test('every script and style in a page is one it knows by its hash', () => {
    const unknown = faults((root) => {
      const policy = policyOf(root);
      return root
        .querySelectorAll('script:not([src]), style')
        .filter((element) => !/json/.test(element.getAttribute('type') ?? ''))
        .filter((element) => {
          const directive = element.tagName === 'STYLE' ? 'style-src' : 'script-src';
          return !policy.get(directive)?.includes(hashOf(element.rawText));
        })
        .map((element) => `<${element.rawTagName}> ${element.rawText.slice(0, 60)}`);
    });
    expect(unknown).toEqual([]);
  });
});

describe('links', () => {
  /** Where a link on a page leads, without address parameters; null for what is not on this site. */
  function target(page: string, link: string): { path: string; hash: string } | null {
    const url = new URL(link, `http://site${page}`);
    if (url.origin !== 'http://site') return null;
    return { path: decodeURIComponent(url.pathname), hash: decodeURIComponent(url.hash.slice(1)) };
  }

  function linksOf(root: HTMLElement): string[] {
    return root
      .querySelectorAll('[href], [src]')
      .map((element) => element.getAttribute('href') ?? element.getAttribute('src') ?? '');
  }

  test('lead to a page or file that was built', () => {
    const dead = faults((root, page) =>
      linksOf(root).filter((link) => {
        const to = target(page, link);
        return to !== null && !existsSync(fileOf(to.path));
      }),
    );
    expect(dead).toEqual([]);
  });

  test('to a place on a page find that place', () => {
    const lost = faults((root, page) =>
      linksOf(root).filter((link) => {
        const to = target(page, link);
        const there = to && parsed.get(to.path);
        return Boolean(there && to.hash && !there.getElementById(to.hash));
      }),
    );
    expect(lost).toEqual([]);
  });

  test('nothing is loaded from another site', () => {
    const foreign = faults((root) =>
      root
        .querySelectorAll('script[src], link[href], img[src], iframe, source[src], source[srcset]')
        .map((element) => element.getAttribute('src') ?? element.getAttribute('href') ?? '')
        .filter((address) => /^(https?:)?\/\//.test(address)),
    );
    expect(foreign).toEqual([]);
  });
});

describe('markup', () => {
  test('every page says what it is: language, title, description, one main heading', () => {
    const poor = faults((root) => {
      const title = root.querySelector('title')?.text.trim() ?? '';
      const description =
        root.querySelector('meta[name=description]')?.getAttribute('content') ?? '';
      return [
        ...(root.querySelector('html')?.getAttribute('lang') ? [] : ['no language']),
        ...(title ? [] : ['no title']),
        ...(description.length > 20 ? [] : ['no description']),
        ...(root.querySelectorAll('h1').length === 1 ? [] : ['not one main heading']),
      ];
    });
    expect(poor).toEqual([]);
  });

  test('no two pages share a title', () => {
    const titles = [...parsed].map(([, root]) => root.querySelector('title')?.text.trim());
    expect(titles.length - new Set(titles).size).toBe(0);
  });

  test('no id is used twice on a page', () => {
    const twice = faults((root) => {
      const ids = root.querySelectorAll('[id]').map((element) => element.id);
      return [...new Set(ids.filter((id, at) => ids.indexOf(id) !== at))];
    });
    expect(twice).toEqual([]);
  });
});

describe('for the floor’s browsers', () => {
  const styles = [
    ...globSync('_astro/*.css', { cwd: DIST }).map((file) =>
      readFileSync(join(DIST, file), 'utf8'),
    ),
    ...[...parsed.values()].flatMap((root) =>
      root.querySelectorAll('style').map((style) => style.rawText),
    ),
  ];

  test('styles use nothing newer than Chromium 109 and Firefox 115', () => {
    expect(styles.length).toBeGreaterThan(0);
    const newer =
      /light-dark\(|color-mix\(|@scope\b|@starting-style|anchor\(|\bsubgrid\b|\blinear\(/;
    expect(styles.filter((text) => newer.test(text)).map((text) => newer.exec(text)?.[0])).toEqual(
      [],
    );
  });
});
