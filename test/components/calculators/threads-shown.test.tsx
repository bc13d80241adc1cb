/** The thread calculators: what they show is the core's, and every refusal has its words. */
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { Engine, Inputs } from '../../../components/calculators/calculator';
import { PURPOSES } from '../../../core/engagement/purposes';
import { initialValues } from '../../../components/state/address';
import * as drill from './tap-drill';
import * as engagement from './engagement';
import * as form from './form-tap-hole';
import * as gauging from './gauging';
import * as limits from './thread-limits';
import * as plating from './plating';

interface Any {
  engine: Engine<string, unknown>;
  INPUTS: Inputs<string>;
  WORDS: { refusals?: Record<string, { title: string; text: string }> };
}

function attempt(calculator: unknown, typed: Record<string, string>, unit: 'mm' | 'in' = 'mm') {
  const { engine, INPUTS } = calculator as Any;
  return engine.attempt({ ...initialValues(INPUTS.fields), ...typed } as never, unit);
}

function shown(calculator: unknown, typed: Record<string, string>, unit: 'mm' | 'in' = 'mm') {
  const { engine } = calculator as Any;
  const { answer, problems } = attempt(calculator, typed, unit);
  if (answer === null) throw new Error(JSON.stringify(problems));
  const html = render(<engine.Result answer={answer} unit={unit} lessons={[]} />);
  expect(html).not.toMatch(/NaN|undefined|Infinity|\(not known\)| style=/);
  return html
    .replaceAll(/<\/?(?:em|strong|span)[^>]*>/g, '')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('\u2060', '')
    .replaceAll(/\s+/g, ' ');
}

describe('thread limits', () => {
  it('gives M8-6H in both units, every class', () => {
    const text = shown(limits, { thread: 'M8' });
    expect(text).toContain('6.647–6.912 mm');
    expect(text).toContain('0.2617–0.2721 in');
    for (const name of ['4H', '8H', '6G']) expect(text).toContain(name);
  });

  it('says that a taper thread has none, and how it is gauged', () => {
    const text = shown(limits, { thread: '1/4 NPT' }, 'in');
    expect(text).toContain('no limits of diameter');
    expect(text).toContain('0.228 in');
    expect(text).toContain('Whether a joint holds pressure is not answered here.');
  });

  it('widens a long Unified engagement and says so', () => {
    expect(shown(limits, { thread: '1/4-20', engagement: '.5' }, 'in')).toContain('1.25 times');
  });
});

describe('tap drill', () => {
  it('1/2-13-2B: 27/64, the trap 7/16 named', () => {
    const text = shown(drill, { thread: '1/2-13' }, 'in');
    expect(text).toContain('Drill 27/64 in for 1/2-13 UNC-2B.');
    expect(text).toContain('7/16 in looks near enough');
  });

  it('says what to bore to where no drill falls inside', () => {
    expect(shown(drill, { thread: 'M55x1.5' })).toContain('bore or ream to 53.376–53.676 mm');
  });
});

describe('form-tap hole', () => {
  it('M6: 5.55, 2.9 % for 0.02 mm, and a measured hole judged', () => {
    const text = shown(form, { thread: 'M6' });
    expect(text).toContain('Drill 5.55 mm, and hold the hole to 5.490–5.592 mm.');
    expect(text).toContain('0.02 mm more costs 2.9 %');
    expect(shown(form, { thread: 'M6', hole: '5.7' })).toContain('too large');
  });
});

describe('gauging', () => {
  it('2.5 turns depends on the rule; 4 turns fails both', () => {
    const base = { thread: 'M10', go: 'all', plain: 'right' };
    expect(shown(gauging, { ...base, turns: '2.5' })).toContain('it depends on the rule');
    expect(shown(gauging, { ...base, turns: '4' })).toContain('it does not pass');
  });
});

describe('plating', () => {
  it('1/4-20-2B, .0002 to .0003 in: .2187 to .2232', () => {
    const text = shown(plating, { thread: '1/4-20', least: '.0002', most: '.0003' }, 'in');
    expect(text).toContain('0.2187–0.2232 in');
    expect(text).toContain('3 steps');
  });
  it('takes micrometres', () => {
    const text = shown(plating, { thread: 'M8', least: '5 µm', most: '8 µm' });
    expect(text).toContain('7.220–7.348 mm');
  });
});

describe('engagement', () => {
  const base = { thread: 'M10', screw: '8.8', material: 'al-wrought' };

  it('M10 8.8 in 6061: 13.0 to 15.7 mm', () => {
    expect(shown(engagement, base)).toContain(
      'Ask for 13.0–15.7 mm of full thread, 1.3–1.6 diameters.',
    );
    expect(shown(engagement, { ...base, have: '10' })).toContain(
      'the thread strips before the screw',
    );
  });

  it('answers one purpose and refuses every other', () => {
    for (const purpose of PURPOSES) {
      const { answer, refusal } = attempt(engagement, { ...base, purpose });
      expect(answer === null).toBe(purpose !== 'static');
      expect(refusal?.code).toBe(purpose === 'static' ? undefined : 'not-rated');
    }
  });
});

describe('every refusal has its words', () => {
  it.each([
    [drill, { thread: '1/4 NPT' }, 'taper-pipe'],
    [drill, { thread: '1/4 NPSM' }, 'no-limits-held'],
    [form, { thread: 'M6', material: 'iron-grey' }, 'not-formable'],
    [form, { thread: 'G1/4' }, 'form-other-thread'],
    [gauging, { thread: '1/4 NPT', go: 'all', turns: '0' }, 'gauge-taper'],
    [gauging, { thread: 'G1/4', go: 'all', turns: '0' }, 'gauge-pipe'],
    [plating, { thread: 'M3', least: '0', most: '0.06' }, 'plating-no-room'],
    [plating, { thread: '1/4 NPT', least: '0', most: '0.01' }, 'taper-pipe'],
    [
      engagement,
      { thread: 'G1/4', screw: '8.8', material: 'al-wrought' },
      'engagement-other-thread',
    ],
    [engagement, { thread: 'M8', screw: '8.8', material: 'nickel' }, 'strength-unknown'],
    [
      engagement,
      { thread: '1/4-20 UNJC', screw: 'SAE 8', material: 'titanium' },
      'engagement-minor-unknown',
    ],
  ] as const)('%#: %o is refused with words', (calculator, typed, code) => {
    const { refusal, answer } = attempt(calculator, typed);
    expect(answer).toBeNull();
    expect(refusal?.code).toBe(code);
    const said = (calculator as unknown as Any).WORDS.refusals?.[code];
    expect(said?.text).toMatch(/\.$/);
  });
});
