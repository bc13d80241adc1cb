/** The calculators without a browser: every number shown is the core's, every refusal has its words. */
import type { ComponentType } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Engine, Inputs, ValuesOf } from '../../components/calculators/calculator';
import { CATALOGUE } from '../../components/calculators/catalogue';
import { Example } from '../../components/calculators/Example';
import * as blind from './calculators/blind-hole-depth';
import * as chamfer from './calculators/chamfer';
import * as direction from './calculators/chip-direction';
import * as room from './calculators/chip-room';
import * as spindle from './calculators/spindle';
import * as strength from './calculators/tap-strength';
import * as drill from './calculators/tap-drill';
import * as engagement from './calculators/engagement';
import * as form from './calculators/form-tap-hole';
import * as gauging from './calculators/gauging';
import * as limits from './calculators/thread-limits';
import * as plating from './calculators/plating';
import * as torque from './calculators/torque';
import { FIELDS as PLANNER } from '../../components/planner/inputs';
import { readAddress, writeAddress, type AddressField } from '../../components/state/address';

/** A calculator as the tests meet it, whatever its names and its answer. */
interface Any {
  View: ComponentType<{ lessons: readonly string[] }>;
  engine: Engine<string, unknown>;
  INPUTS: Inputs<string>;
  EXAMPLE: ValuesOf<string>;
  WORDS: { labels: Record<string, string>; form: string; submit: string; example: string };
}

const ALL = {
  'chip-direction': direction,
  chamfer,
  'blind-hole-depth': blind,
  'chip-room': room,
  torque,
  'tap-strength': strength,
  spindle,
  'thread-limits': limits,
  'tap-drill': drill,
  'form-tap-hole': form,
  gauging,
  plating,
  engagement,
} as unknown as Record<string, Any>;

const NAMES = Object.keys(ALL);

function answered({ engine, EXAMPLE }: Any, values = EXAMPLE, unit: 'mm' | 'in' = 'mm') {
  const { answer } = engine.attempt(values, unit);
  if (answer === null) throw new Error('no answer');
  return answer;
}

function shown(calculator: Any, values = calculator.EXAMPLE, unit: 'mm' | 'in' = 'mm'): string {
  const { Result } = calculator.engine;
  const answer = answered(calculator, values, unit);
  return render(<Result answer={answer} unit={unit} lessons={['naming-a-tap']} />);
}

describe('the list of calculators', () => {
  it('holds each of these once', () => {
    const slugs = CATALOGUE.map(({ slug }) => slug);
    expect(slugs).toEqual(expect.arrayContaining(NAMES));
    expect(new Set(slugs).size).toBe(slugs.length);
  });

  it.each(CATALOGUE)('$slug asks one question, names its sources and its dangers', (entry) => {
    expect(entry.question).toMatch(/\?$/);
    expect(entry.sources.length).toBeGreaterThan(0);
    expect(entry.cautions.length).toBeGreaterThan(0);
    expect(entry.description.length).toBeLessThanOrEqual(180);
  });
});

describe.each(NAMES)('%s', (slug) => {
  const calculator = ALL[slug]!;
  const { engine, INPUTS, EXAMPLE } = calculator;

  it('asks at most six things at once, beside what is folded away', () => {
    const { View } = calculator;
    document.body.innerHTML = render(<View lessons={[]} />);
    const asked = [...document.querySelectorAll('.field')].filter(
      (field) => field.closest('details') === null,
    );
    expect(asked.length).toBeGreaterThan(1);
    expect(asked.length).toBeLessThanOrEqual(6);
  });

  it('answers its worked example, marked as one', () => {
    const html = render(
      <Example
        attempt={engine.attempt}
        Result={engine.Result}
        words={calculator.WORDS as never}
        values={EXAMPLE}
        lessons={[]}
      />,
    );
    expect(html).toContain('<strong>Example</strong>');
    expect(html).toMatch(/<p class="answer/);
  });

  it.each(['mm', 'in'] as const)('shows no broken number and no style attribute, %s', (unit) => {
    const html = shown(calculator, { ...EXAMPLE, units: 'mm' }, 'mm');
    const other = render(<engine.Result answer={answered(calculator)} unit={unit} lessons={[]} />);
    for (const text of [html, other]) {
      expect(text).not.toMatch(/NaN|undefined|Infinity|\[object|\(not known\)| style=/);
    }
  });

  it('says its example in one sentence, with its subject', () => {
    const answer = answered(calculator);
    expect(engine.spoken(answer, 'mm')).toMatch(/^[A-Z0-9].*\.$/);
    expect(engine.subject(answer).length).toBeGreaterThan(2);
  });

  it('comes back from its own address, and answers the same', () => {
    const search = writeAddress(EXAMPLE, INPUTS.fields);
    const { values, notes } = readAddress(search, INPUTS.fields);
    expect(notes).toEqual([]);
    expect(values).toEqual(EXAMPLE);
    expect(engine.attempt(values, 'mm')).toEqual(engine.attempt(EXAMPLE, 'mm'));
  });

  it('on a blank form wants something, and says what in words', () => {
    const blank = Object.fromEntries(INPUTS.fields.map(({ name, initial }) => [name, initial]));
    const { answer, problems } = engine.attempt(blank as ValuesOf<string>, 'mm');
    expect(answer).toBeNull();
    expect(problems.length).toBeGreaterThan(0);
    for (const { field, problem, missing } of problems) {
      expect(missing).toBe(true);
      expect(engine.complaint(field, problem, 'mm')).toMatch(/^[A-Z].*\.$/);
    }
  });

  it('leads only to pages that understand what it hands on', () => {
    const links = [...shown(calculator).matchAll(/href="(\/(?:plan|calculators)\/[^"]*)"/g)];
    expect(links.length).toBeGreaterThan(0);
    for (const [, href = ''] of links) {
      const url = new URL(href.replaceAll('&amp;', '&'), 'http://site');
      const target = url.pathname.split('/')[2] ?? '';
      const fields = (url.pathname.startsWith('/plan/')
        ? PLANNER
        : ALL[target]!.INPUTS.fields) as unknown as readonly AddressField[];
      expect([href, readAddress(url.search, fields).notes]).toEqual([href, []]);
    }
  });
});
