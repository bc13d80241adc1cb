/** The tap-strength and spindle calculators from what is typed to what is said. */
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { initialValues } from '../../../components/state/address';
import { complaints } from '../../../components/calculators/problems';
import { readSpindle } from '../../../components/fields/readSpindle';
import * as spindle from '../../../components/calculators/spindle/state';
import { Result as SpindleResult } from '../../../components/calculators/spindle/Answer';
import { EXAMPLE as SPINDLE } from '../../../components/calculators/spindle/examples';
import {
  INPUTS as SPINDLE_INPUTS,
  type Name as SpindleName,
} from '../../../components/calculators/spindle/inputs';
import { WORDS as SPINDLE_WORDS } from '../../../components/words/en/calculators/spindle/messages';
import { rangesText } from '../../../components/words/en/calculators/spindle/sentences';
import * as strength from '../../../components/calculators/tap-strength/state';
import { Result as StrengthResult } from '../../../components/calculators/tap-strength/Answer';
import { EXAMPLE as STRENGTH } from '../../../components/calculators/tap-strength/examples';
import {
  INPUTS as STRENGTH_INPUTS,
  type Name as StrengthName,
} from '../../../components/calculators/tap-strength/inputs';
import { WORDS as STRENGTH_WORDS } from '../../../components/words/en/calculators/tap-strength/messages';
import { SPINDLE_PROBLEM_CODES } from '../../../core/cycle/spindle';

type StrengthValues = Partial<Record<StrengthName, string>>;
type SpindleValues = Partial<Record<SpindleName, string>>;

const strengthOf = (values: StrengthValues) =>
  strength.attempt({ ...initialValues(STRENGTH_INPUTS.fields), ...values }, 'mm');
const spindleOf = (values: SpindleValues) =>
  spindle.attempt({ ...initialValues(SPINDLE_INPUTS.fields), ...values }, 'mm');

/** The page's text, tags gone. */
const textOf = (html: string) => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

describe('tap strength', () => {
  test.each(['mm', 'in'] as const)(
    'the example answers in %s, with its band and its sources',
    (unit) => {
      const { answer } = strength.attempt(STRENGTH, 'mm');
      const html = render(<StrengthResult answer={answer!} unit={unit} lessons={['torque']} />);
      expect(html).not.toMatch(/NaN|undefined|Infinity| style=|not known/);
      const text = textOf(html);
      expect(text).toContain('It breaks at about');
      expect(text).toContain('28 %');
      expect(text).toContain('Source:');
      expect(html).toContain('href="/lessons/torque/"');
      if (unit === 'in') expect(text).toContain('lbf·ft');
    },
  );

  test('a thread and a tap are enough; then there is no share and no clutch', () => {
    const { answer } = strengthOf({ thread: '#6-32', tap: 'spiral-point' });
    const text = textOf(render(<StrengthResult answer={answer!} unit="mm" lessons={[]} />));
    expect(text).toContain('at least');
    expect(text).not.toContain('Set a clutch to');
    expect(text).toContain('2.3 times');
  });

  test('a tap at half its strength is refused a clutch setting and gets a stop', () => {
    const { answer } = strengthOf({ thread: 'M6', tap: 'spiral-flute', torque: '5' });
    const text = textOf(render(<StrengthResult answer={answer!} unit="mm" lessons={[]} />));
    expect(text).toContain('Stop. No clutch setting will save this tap');
    expect(text).toContain('Stop. A worn tap will break');
  });

  test.each([
    [{}, 'thread', 'missing'],
    [{ thread: 'M6' }, 'tap', 'missing'],
    [{ thread: 'M6x9', tap: 'form' }, 'thread', 'pitch-too-large'],
    [{ thread: 'M6', tap: 'spiral-point', web: '9' }, 'web', 'web-out-of-range'],
    [{ thread: 'M6', tap: 'spiral-point', web: 'thin' }, 'web', 'not-a-length'],
    [{ thread: 'M6', tap: 'spiral-point', torque: 'much' }, 'torque', 'not-a-torque'],
    [{ thread: 'M6', tap: 'spiral-point', torque: '0' }, 'torque', 'not-above-zero'],
  ] as [StrengthValues, StrengthName, string][])('%j is refused at %s', (values, field, code) => {
    const { answer, problems } = strengthOf(values);
    expect(answer).toBeNull();
    const problem = problems.find((each) => each.field === field);
    expect(problem?.problem.code).toBe(code);
    const said = complaints(STRENGTH_WORDS)(field, problem!.problem, 'mm');
    expect(said).toMatch(/^[A-Z“].*[.?]$/);
    expect(said).not.toMatch(/not known|{|}/);
  });
});

describe('a torque curve as typed', () => {
  const pair = [
    { rpm: 50, torque: 60 },
    { rpm: 1200, torque: 60.5 },
  ];

  test.each([
    '50 60; 1200 60.5',
    '50 60;1200 60,5;',
    '50 rpm 60 N·m; 1200 rpm 60.5 Nm',
    '50: 60\n1200: 60,5',
    '50 = 60 ; 1200 @ 60.5',
  ])('%s', (text) => {
    expect(readSpindle(text)).toEqual({ points: pair });
  });

  test.each(['50', '50 60 70', '50 sixty', '50-60', '50 60; 1200'])(
    '%s says which pair is none',
    (text) => {
      const read = readSpindle(text);
      expect(read && 'bad' in read).toBe(true);
    },
  );

  test('nothing is nothing', () => {
    expect(readSpindle('  ')).toBeNull();
    expect(readSpindle(' ; ;')).toBeNull();
  });
});

describe('spindle', () => {
  test.each(['mm', 'in'] as const)('the example answers in %s and draws the curve', (unit) => {
    const { answer } = spindle.attempt(SPINDLE, 'mm');
    const html = render(<SpindleResult answer={answer!} unit={unit} lessons={[]} />);
    expect(html).not.toMatch(/NaN|undefined|Infinity| style=|not known/);
    expect(html).toContain('fig-chart');
    expect(textOf(html)).toContain('Torque is the limit, not power');
  });

  test('M30 on a 30 N·m spindle: no, with both numbers, and never “run slower”', () => {
    const { answer } = spindleOf({
      thread: 'M30',
      tap: 'spiral-point',
      material: 'steel-medium',
      points: '60 30; 3500 30; 10000 10.5',
      depth: '45',
    });
    const text = textOf(render(<SpindleResult answer={answer!} unit="mm" lessons={[]} />));
    expect(text).toMatch(/^.*No: a worn tap needs/);
    expect(text).toMatch(/kW of the 11 kW/);
    expect(text).toContain('Changing the speed does not lower the torque');
    expect(text).not.toMatch(/run slower/i);
  });

  test('one point is answered at its own speed, without a curve', () => {
    const { answer } = spindleOf({
      thread: 'M30',
      tap: 'spiral-point',
      material: 'steel-medium',
      points: '90 320',
      rpm: '90',
    });
    const html = render(<SpindleResult answer={answer!} unit="mm" lessons={[]} />);
    expect(textOf(html)).toContain('Yes: a worn tap needs');
    expect(html).not.toContain('fig-chart');
  });

  test('a speed beyond the points is said to be unknown, not guessed', () => {
    const { answer } = spindleOf({ ...SPINDLE, rpm: '9000' });
    const text = textOf(render(<SpindleResult answer={answer!} unit="mm" lessons={[]} />));
    expect(text).toContain('the points do not reach at 9000 rev/min');
  });

  test.each([
    [{ points: '' }, 'points', 'missing'],
    [{ points: '50' }, 'points', 'not-points'],
    [{ points: '0 50' }, 'points', 'spindle-point-out-of-range'],
    [{ points: '50 60; 50 40' }, 'points', 'spindle-speed-twice'],
    [{ points: '8000 900' }, 'points', 'spindle-power-absurd'],
    [{ rpm: 'fast' }, 'rpm', 'not-a-speed'],
    [{ rpm: '0' }, 'rpm', 'speed-outside'],
    [{ depth: 'deep' }, 'depth', 'not-a-length'],
    [{ material: '' }, 'material', 'missing'],
  ] as [SpindleValues, SpindleName, string][])('%j is refused at %s', (values, field, code) => {
    const { answer, problems } = spindleOf({ ...SPINDLE, ...values });
    expect(answer).toBeNull();
    const problem = problems.find((each) => each.field === field);
    expect(problem?.problem.code).toBe(code);
    const said = complaints(SPINDLE_WORDS)(field, problem!.problem, 'mm');
    expect(said).toMatch(/^[A-Z“0-9].*[.?]$/);
    expect(said).not.toMatch(/not known|{|}/);
  });

  test('every complaint of the core about a curve has words', () => {
    for (const code of SPINDLE_PROBLEM_CODES) expect(SPINDLE_WORDS.problems?.[code]).toBeDefined();
  });

  test('what cannot be tapped is refused in its own words', () => {
    const hard = spindleOf({ ...SPINDLE, material: 'steel-hard' });
    expect(hard.refusal?.code).toBe('too-hard');
    const iron = spindleOf({ ...SPINDLE, material: 'iron-grey', tap: 'form' });
    expect(iron.refusal?.code).toBe('tap-not-planned');
    for (const code of ['too-hard', 'tap-not-planned']) {
      expect(SPINDLE_WORDS.refusals?.[code]?.text).toMatch(/\.$/);
    }
  });

  test('ranges of speed are rounded inward', () => {
    expect(rangesText([{ min: 106.1, max: 159.2 }]).replace('\u2060', '')).toBe('110–150 rev/min');
    expect(rangesText([{ min: 90, max: 90 }])).toBe('90 rev/min');
    expect(rangesText([])).toBe('none');
  });
});
