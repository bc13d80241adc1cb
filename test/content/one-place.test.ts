/**
 * Pages, layouts, components and what makes the site hold no words of their own: all stand in
 * `components/words/en/` or in `site/content/`, where another language can take their place.
 */
import { describe, expect, test } from 'vitest';
import { astroModules, astroUnder, unread } from '../tools/astroFiles';
import { inlineWords } from '../tools/inline';
import { modulesUnder, parse } from '../tools/modules';

/** What the rules take for words and is none, with the reason. */
const NO_WORDS: Readonly<Record<string, string>> = {
  'button plain': 'two classes of the stylesheet, handed to a function that makes a button',
  'above zero': 'the least of a field, a choice of its reader',
  '2X 1/2-13 UNC-2B THRU, 7/16 DRILL THRU': 'a callout as drawings have it, in any language',
  'button, summary, a, label': 'elements that a key belongs to',
  'The planner in English': 'each language is named in its own words on every page',
  'El planificador en español': 'each language is named in its own words on every page',
};

const OF_CONTENT = /^site\/content\/|^components\/words\/(en|es)\//;
const astro = [...astroUnder('site'), ...astroUnder('components')];
const modules = [...modulesUnder('site'), ...modulesUnder('components')];
const files = [...astro, ...modules].filter(({ path }) => !OF_CONTENT.test(path));

const found = files.flatMap(inlineWords);
const said = (text: string, path = 'site/pages/x.astro'): string[] =>
  (path.endsWith('.astro') ? astroModules(path, text) : [parse(path, text)])
    .flatMap(inlineWords)
    .map((each) => each.text);

describe('no words in pages, layouts, components and what makes the site', () => {
  test('all of them are read, to the end', () => {
    expect(new Set(files.map(({ path }) => path)).size).toBeGreaterThan(400);
    expect(astro.flatMap(unread)).toEqual([]);
  });

  test('nobody is spoken to from there', () => {
    const words = found.filter(({ text }) => !(text in NO_WORDS));
    expect(words.map(({ path, line, text }) => `${path}:${line} ${text}`)).toEqual([]);
  });

  test('every exception is still needed', () => {
    const texts = new Set(found.map(({ text }) => text));
    expect(Object.keys(NO_WORDS).filter((text) => !texts.has(text))).toEqual([]);
  });
});

describe('the rules catch what they are for', () => {
  test.each([
    ['text', '<p>Depth</p>', 'Depth'],
    ['text between values', '<p>{n} terms</p>', 'terms'],
    ['text behind a condition', '{n > 0 && <>Used in: {n}</>}', 'Used in:'],
    ['an attribute that is read out', '<nav aria-label="Groups"></nav>', 'Groups'],
    ['one that is worked out', "<nav aria-label={n ? 'All rules' : ''}></nav>", 'All rules'],
    ['a description', '<meta name="description" content="For machinists" />', 'For machinists'],
    ['what a component shows', '<Page title="Safety" />', 'Safety'],
    ['what it is given under another name', '<Page first="Drill it again" />', 'Drill it again'],
    ['markup as a text', '<div set:html={"<p>Drill again</p>"} />', '<p>Drill again</p>'],
    ['a head', "---\nconst a = 'Nothing to show';\n---\n<p>{a}</p>", 'Nothing to show'],
    ['a list', "---\nconst a = [{ title: 'Pages', links }];\n---\n<p>{a}</p>", 'Pages'],
    ['a text with values', '---\nconst a = `${n} threads`;\n---\n<p>{a}</p>', '… threads'],
    ['a script', "<script>\n  say('Copied to here');\n</script>", 'Copied to here'],
  ])('%s', (_, text, words) => {
    expect(said(text)).toEqual([words]);
  });

  test('words of a module, and on which line', () => {
    const [first] = inlineWords(parse('site/x.ts', "\nexport const note = 'Built this morning';"));
    expect(first).toEqual({ path: 'site/x.ts', line: 2, text: 'Built this morning' });
    const inPage = astroModules(
      'site/x.astro',
      '---\nconst a = 1;\n---\n\n<p>\n  {a}\n</p>\n<p>Hole</p>',
    );
    expect(inPage.flatMap(inlineWords)).toEqual([{ path: 'site/x.astro', line: 8, text: 'Hole' }]);
    const inScript = astroModules(
      'site/x.astro',
      "---\n---\n<script>\n  say('Not kept');\n</script>",
    );
    expect(inScript.flatMap(inlineWords)[0]?.line).toBe(4);
  });

  test.each([
    ['a class', '<p class="notice amber no-script" class:list={["screen first", n]}>{text}</p>'],
    ['a drawing', '<svg viewBox="0 0 20 20"><path d="M12.5 12.5 18 18"></path></svg>'],
    ['a setting of the page', '<meta name="viewport" content="width device width" />'],
    ['units and formats', '<th scope="col">mm</th><a href="/x.csv">CSV</a>'],
    ['an import', "---\nimport Page from '../two words/Page.astro';\n---\n<Page {title} />"],
    ['a type', "---\ntype Side = 'holds here' | 'fails here';\n---\n<p>{a}</p>"],
    ['an error for the author', '---\nthrow new Error(`No thread ${n}.`);\n---\n<p>{a}</p>'],
    ['what is sought', "<script>\n  document.querySelector('main article');\n</script>"],
    ['an address', '<a href={`/threads/tables/${slug}/`}>{title}</a>'],
    ['a comment', '<!-- Kept for the old copy. --><p>{/* Said by the core. */}</p>'],
  ])('and nothing else: %s', (_, text) => {
    expect(said(text)).toEqual([]);
    expect(astroModules('site/x.astro', text).flatMap(unread)).toEqual([]);
  });

  test('a file that cannot be read is not passed over', () => {
    expect(astroModules('site/x.astro', '<p>{a</p>').flatMap(unread)).not.toEqual([]);
  });
});
