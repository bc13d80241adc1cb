/**
 * What the search can find, read from the finished pages: whatever was built is found, and nothing else.
 * A page that is added later needs no line here.
 */

import { HTMLElement, parse } from 'node-html-parser';
import type { Entry, EntryKind } from '../../components/search/entry.ts';
import { SYMPTOM_WORDS } from '../../components/words/en/symptoms.ts';
import { INDEXED } from '../../components/words/en/search.ts';
import { LANGUAGE } from '../../components/words/en/site.ts';
import { isTranslation } from '../language.ts';

/** Shown under a title; more would be read by nobody. */
const NOTE = 150;
/** Pages that are another one at a second address, or the search itself; so are translations. */
const LEFT_OUT = ['/', '/search/', '/404.html', '/no-network/'];

/** The questions at the end of a lesson: called alike everywhere, and found with the part before them. */
const QUESTIONS = 'check-yourself';

const COARSE = new RegExp(`\\b${INDEXED.coarse}\\b|UNC\\b`);

const KINDS: readonly [RegExp, EntryKind][] = [
  [/^\/calculators\/./, 'calculator'],
  [/^\/lessons\/./, 'lesson'],
  [/^\/threads\/tables\/./, 'table'],
  [/^\/threads\/./, 'thread'],
];

function textOf(element: HTMLElement | null | undefined): string {
  return (element?.structuredText ?? '').replace(/\s+/g, ' ').trim();
}

function short(text: string): string {
  if (text.length <= NOTE) return text;
  return `${text.slice(0, text.lastIndexOf(' ', NOTE))} …`;
}

function headings(main: HTMLElement): string {
  return main
    .querySelectorAll('h2, h3, label, legend')
    .map((each) => textOf(each))
    .join(' ');
}

/** The parts of a lesson, each with the text up to the next heading. */
function sections(address: string, title: string, main: HTMLElement): Entry[] {
  const parts: Entry[] = [];
  for (const node of main.querySelector('article')?.childNodes ?? []) {
    if (!(node instanceof HTMLElement)) continue;
    if (node.tagName === 'H2' && node.id !== '' && node.id !== QUESTIONS) {
      parts.push({
        id: `${address}#${node.id}`,
        kind: 'section',
        title: textOf(node),
        note: title,
        also: '',
        text: '',
        takesThread: false,
      });
    } else {
      const part = parts.at(-1);
      if (part) part.text += ` ${textOf(node)}`;
    }
  }
  return parts;
}

function threadEntry(address: string, main: HTMLElement): Entry {
  const title = textOf(main.querySelector('h1'));
  const reading = textOf(main.querySelector('header p.quiet'));
  const size = title.split(/x|-(?=\d+\s)/)[0] ?? '';
  const usual = COARSE.test(`${reading.split(',')[0]} ${title}`);
  return {
    id: address,
    kind: 'thread',
    title,
    note: short(reading),
    // Who types a size alone means its coarse thread.
    also: usual ? `${size} ${size} ${INDEXED.coarse}` : '',
    text: `${reading} ${INDEXED.ofEveryThread}`,
    takesThread: false,
  };
}

function glossary(address: string, main: HTMLElement): Entry[] {
  return main.querySelectorAll('tr[id]').map((row) => {
    const [meaning, ...elsewhere] = row.querySelectorAll('td');
    return {
      id: `${address}#${row.id}`,
      kind: 'word',
      title: textOf(row.querySelector('th')),
      note: short(textOf(meaning?.querySelector('p'))),
      also: elsewhere.map((cell) => textOf(cell).replace('–', '')).join(' '),
      text: textOf(meaning),
      takesThread: false,
    };
  });
}

function rules(address: string, main: HTMLElement): Entry[] {
  return main.querySelectorAll('.rule[id]').map((rule) => ({
    id: `${address}#${rule.id}`,
    kind: 'rule',
    title: textOf(rule.querySelector('h3')),
    note: short(textOf(rule.querySelector('p'))),
    also: '',
    text: textOf(rule),
    takesThread: false,
  }));
}

function symptoms(address: string): Entry[] {
  return Object.entries(SYMPTOM_WORDS).map(([id, { name, seen }]) => ({
    id: `${address}?symptom=${id}`,
    kind: 'symptom',
    title: name,
    note: seen,
    also: '',
    text: '',
    takesThread: false,
  }));
}

function pageEntry(address: string, kind: EntryKind, root: HTMLElement, main: HTMLElement): Entry {
  const title = textOf(root.querySelector('title')).replace(` · ${LANGUAGE.site}`, '');
  const description =
    root.querySelector('meta[name=description]')?.getAttribute('content')?.trim() ?? '';
  return {
    id: address,
    kind,
    title,
    note: short(description),
    also: textOf(main.querySelector('h1')),
    text: `${description} ${headings(main)}`,
    takesThread: main.querySelector('input[name=thread]') !== null,
  };
}

/** The entries of one finished page. */
export function entriesOf(address: string, html: string): Entry[] {
  const root = parse(html, { comment: false, blockTextElements: { script: false, style: false } });
  const main = root.querySelector('main');
  if (LEFT_OUT.includes(address) || isTranslation(address) || !main) return [];
  const kind = KINDS.find(([pattern]) => pattern.test(address))?.[1] ?? 'page';
  if (kind === 'thread') return [threadEntry(address, main)];
  const page = pageEntry(address, kind, root, main);
  if (kind === 'lesson') return [page, ...sections(address, page.title, main)];
  return [
    page,
    ...(address === '/glossary/' ? glossary(address, main) : []),
    ...(address === '/rules-of-thumb/' ? rules(address, main) : []),
    ...(address === '/broken-taps/' ? symptoms(address) : []),
  ];
}
