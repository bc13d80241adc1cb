/** A page of the site made to lie in a folder: links to files, no inline script, a policy of its own. */

import { createHash } from 'node:crypto';
import { posix } from 'node:path';
import { fileOf } from '../folder/start.ts';
import { SCRIPT } from './folderScript.ts';

function sha256(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

/** What a page of the folder may load: its own files, its own inline styles, and nothing else. */
function policy(html: string): string {
  const styles = [...html.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map(([, text]) =>
    sha256(text!),
  );
  return [
    "default-src 'self'",
    "img-src 'self' data:",
    "font-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "connect-src 'none'",
    "script-src 'self'",
    ['style-src', "'self'", ...new Set(styles)].join(' '),
  ].join('; ');
}

interface Around {
  /** Modules of single pages that are no islands, and in the folder's script. */
  loose: readonly string[];
  /** The search's index, as text. */
  index: string;
}

/** A page of the site as a page of a folder. `file`: from the folder's top, with forward slashes. */
export function folderPage(html: string, file: string, { loose, index }: Around): string {
  const up = posix.relative(posix.dirname(file), '.');
  const here = (address: string): string => (up === '' ? './' : `${up}/`) + fileOf(address);
  const needsScript =
    html.includes('<astro-island') || loose.some((url) => html.includes(`src="${url}"`));
  let text = html
    .replaceAll(/<script(?: type="module" src="[^"]+")?>[\s\S]*?<\/script>/g, '')
    .replaceAll(/<link rel="(?:preload|modulepreload)"[^>]*>/g, '')
    .replaceAll(/ renderer-url="[^"]*"/g, '')
    .replaceAll(
      /(\s(?:href|src|action))="(\/[^"]*)"/g,
      (_, name: string, to: string) => `${name}="${here(to)}"`,
    );
  if (file === 'search/index.html')
    text = text.replace(
      '</body>',
      () =>
        `<script type="application/json" id="search-index">${index.replaceAll('<', String.raw`\u003c`)}</script></body>`,
    );
  if (needsScript)
    text = text.replace('</head>', `<script defer src="${here(`/${SCRIPT}`)}"></script></head>`);
  return text.replace(
    /(<meta http-equiv="content-security-policy" content=")[^"]*"/,
    (_, before: string) => `${before}${policy(text)}"`,
  );
}
