/**
 * The usual cautions stand wherever a tool turns or is struck: chosen by what is done, not by page.
 * Common practice; the rules that each caution rests on are named with it.
 */
import { globSync, readFileSync } from 'node:fs';
import { cleanup, render } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../components/calculators/catalogue';
import { engine as removal } from '../../components/calculators/tap-removal/engine';
import { EXAMPLE as REMOVAL } from '../../components/calculators/tap-removal/examples';
import { Card } from '../../components/job/Card';
import { cautionsFor } from '../../components/planner/cautions';
import { FIELDS } from '../../components/planner/inputs';
import { initialValues } from '../../components/state/address';
import { cautionText, NOT_A_RATING, type CautionId } from '../../components/words';
import { STANDARD_CAUTIONS } from '../../components/words/cautions';
import { CAUTIONS as SPANISH } from '../../components/words/es/cautions';
import { CAUTION_GROUPS, CAUTIONS } from '../../components/words/en/cautions';
import { FLUIDS } from '../../components/words/en/fluids';
import { FLUIDS as SPANISH_FLUIDS } from '../../components/words/es/fluids';
import { planHole, type HoleRequest } from '../../core';

afterEach(cleanup);

const BLIND: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind' },
  material: 'steel-medium',
};
const TURNS: CautionId[] = ['entanglement', 'part-spins', 'flying-chips', 'chips-by-hand'];

describe('the planner', () => {
  test.each(['synchronous', 'floating', 'hand'] as const)(
    '%s: what turns, clamping and eyes, for by hand the hole is drilled first',
    (drive) => {
      expect(cautionsFor({ ...BLIND, spindle: { drive } })).toEqual(expect.arrayContaining(TURNS));
    },
  );

  test('by hand the key and the wrench come out, by machine it is locked out', () => {
    expect(cautionsFor({ ...BLIND, spindle: { drive: 'hand' } })).toEqual(
      expect.arrayContaining(['hand-tapping', 'key-left-in', 'sharp-tools']),
    );
    expect(cautionsFor(BLIND)).toContain('reaching-in');
  });

  const gallery = { kind: 'through', thickness: 14, chipsMayFall: false } as const;
  test.each<[string, Partial<HoleRequest>, CautionId]>([
    ['a blind hole is not blown out', {}, 'compressed-air'],
    ['nothing soft in a gallery', { hole: gallery }, 'wound-in'],
    ['nor in a cross bore', { crossing: { kind: 'bore', width: 6, cut: 'before' } }, 'wound-in'],
    ['titanium burns', { material: 'titanium' }, 'swarf-fire'],
    ['magnesium burns', { material: 'magnesium' }, 'swarf-fire'],
    ['iron makes dust', { material: 'iron-grey' }, 'dust'],
    ['welded later', { later: ['weld'] }, 'welding'],
  ])('%s', (_, change, caution) => {
    expect(cautionsFor({ ...BLIND, ...change })).toContain(caution);
  });
});

test.each(CATALOGUE.map(({ slug, cautions }) => ({ slug, cautions })))(
  'calculator $slug: eyes are guarded',
  ({ cautions }) => expect(cautions).toContain('flying-chips'),
);

describe('a broken tap', () => {
  test('whatever the way out, the page says how not to be hurt by it', () => {
    const entry = CATALOGUE.find(({ slug }) => slug === 'tap-removal')!;
    expect(entry.cautions).toEqual(
      expect.arrayContaining([
        'reaching-in',
        'broken-tap-struck',
        'broken-tap-cut',
        'broken-tap-spark',
        'broken-tap-dissolved',
        'welding',
      ]),
    );
  });

  test.each([
    ['proud', true],
    ['deep', false],
  ] as const)('a stub that is %s: who may weld is said where a nut may be: %s', (stub, said) => {
    const { answer } = removal.attempt({ ...REMOVAL, size: 'M10', stub, hold: 'loose' }, 'mm');
    const { container } = render(<removal.Result answer={answer!} unit="mm" lessons={[]} />);
    expect(container.textContent!.includes(cautionText('welding').text)).toBe(said);
  });
});

describe('lessons', () => {
  const lessons = globSync('site/content/lessons/*.mdx').map((path) => ({
    path,
    text: readFileSync(path, 'utf8'),
  }));
  const about = (text: string) =>
    [...text.matchAll(/<Cautions\s+about=\{\[([^\]]*)\]/g)].flatMap(([, ids]) =>
      [...ids!.matchAll(/'([^']+)'/g)].map(([, id]) => id!),
    );

  test.each(lessons)('$path guards the eyes', ({ text }) => {
    expect(about(text)).toContain('flying-chips');
    expect(about(text).filter((id) => !(id in CAUTIONS))).toEqual([]);
  });

  test.each(lessons.filter(({ path }) => !/10-gauging|02-chips/.test(path)))(
    '$path drills or taps: what turns, and clamping',
    ({ text }) => {
      expect(about(text)).toEqual(expect.arrayContaining(['entanglement', 'part-spins']));
    },
  );

  const broken = [
    'site/content/lessons/08-torque.mdx',
    'site/content/lessons/11-why-taps-break.mdx',
    'site/content/teaching/torque.yaml',
    'site/content/teaching/why-taps-break.yaml',
  ];
  test.each(broken)(
    '%s: a tap broken on purpose has its shield, its guard and its places',
    (path) => {
      const text = readFileSync(path, 'utf8').replace(/\s+/g, ' ');
      for (const said of [
        /face shield on/i,
        /closed guard/,
        /safety glasses/,
        /stands back/,
        /nobody in line/i,
      ]) {
        expect(text).toMatch(said);
      }
    },
  );
});

test('magnesium: no water-mixed fluid, in any language, and plastic is not blown clean', () => {
  for (const fluids of [FLUIDS, SPANISH_FLUIDS]) {
    expect(fluids.magnesium).not.toMatch(/emuls/i);
    expect(fluids.plastic).not.toMatch(/\b(air|aire)\b/i);
  }
});

describe('on paper', () => {
  test.each([{}, { spindle: { drive: 'hand' } }] as const)('the card %o', (change) => {
    const request = { ...BLIND, ...change };
    const plan = planHole(request);
    if (!plan.ok) throw new Error('not planned');
    const values = initialValues(FIELDS);
    const { container } = render(
      <Card
        {...{ plan: plan.value, request, values }}
        unit="mm"
        example={false}
        address=""
        made=""
      />,
    );
    const text = container.textContent!;
    for (const id of cautionsFor(request)) expect(text).toContain(cautionText(id).title);
    expect(text).toContain(NOT_A_RATING.defer);
    expect(text).toContain(NOT_A_RATING.short);
  });
});

test('every caution stands in a group of the page of all cautions, once, in both languages', () => {
  const grouped = CAUTION_GROUPS.flatMap(({ cautions }) => [...cautions]);
  expect(grouped.toSorted()).toEqual(Object.keys(CAUTIONS).toSorted());
  expect(Object.keys(SPANISH)).toEqual(Object.keys(CAUTIONS));
  expect(STANDARD_CAUTIONS).toEqual(expect.arrayContaining(TURNS));
});
