/** What the calculators show is what the core says: sentence by sentence, number by number. */
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { planHole } from '../../../core';
import { chamferNames } from '../../../core/chamfer/names';
import { CHIP_HOLES, chipAdvice } from '../../../core/chips/advice';
import { chipCourse } from '../../../core/chips/direction';
import { FACES, faceLean } from '../../../core/chips/face';
import { blindStudy } from '../../../core/plan/blind-study';
import { chamferStudy } from '../../../core/plan/chamfer-study';
import { chipStudy } from '../../../core/plan/chip-study';
import { tapLoads } from '../../../core/plan/tap-load';
import { spoken } from '../../../components/result/AnswerLine';
import type { Engine, ValuesOf } from '../../../components/calculators/calculator';
import { volume } from '../../../components/calculators/numbers';
import {
  ADVICE,
  COURSE,
  VERDICTS,
} from '../../../components/words/en/calculators/chip-direction/sentences';
import {
  force,
  length,
  percent,
  torque as torqueText,
  torqueBand,
} from '../../../components/words/format';
import * as blind from './blind-hole-depth';
import * as chamfer from './chamfer';
import * as direction from './chip-direction';
import * as room from './chip-room';
import * as torque from './torque';

/** Text of the answer, spaces as plain spaces, the figures' own words included. */
function text<Name extends string, Answer>(
  engine: Engine<Name, Answer>,
  values: ValuesOf<Name>,
  unit: 'mm' | 'in' = 'mm',
): string {
  const { answer, problems } = engine.attempt(values, unit);
  if (answer === null) throw new Error(JSON.stringify(problems));
  return render(<engine.Result answer={answer} unit={unit} lessons={[]} />)
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('\u00a0', ' ')
    .replaceAll('\u2060', '')
    .replace(/\s+/g, ' ');
}

function must<T>(outcome: { ok: true; value: T } | { ok: false }): T {
  if (!outcome.ok) throw new Error('refused');
  return outcome.value;
}

describe('chip direction', () => {
  const cases = FACES.flatMap((see) =>
    (['right', 'left'] as const).flatMap((hand) =>
      CHIP_HOLES.map((hole) => [see, hand, hole] as const),
    ),
  );

  it.each(cases)('%s, %s hand, %s', (see, hand, hole) => {
    const values = { ...direction.EXAMPLE, see, hand, hole, material: '' };
    const lean = faceLean(see, hand);
    const course = lean === null ? 'none' : chipCourse(lean, hand);
    const advice = chipAdvice(course, hole);
    const told = text(direction.engine, values);
    expect(told).toContain(`Chips go ${COURSE[course]}`);
    expect(told).toContain(ADVICE[advice.code]);
    const { answer } = direction.engine.attempt(values, 'mm');
    expect(direction.engine.spoken(answer!, 'mm')).toContain(VERDICTS[advice.verdict].said);
  });

  it('reads a face by its angle: −10° on a right-hand tap is a spiral point', () => {
    const told = text(direction.engine, { ...direction.EXAMPLE, see: 'angle', angle: '−10' });
    expect(told).toContain('go ahead of the tap');
    expect(told).toContain('10° to the left');
  });
});

describe('chamfer', () => {
  const values = {
    ...chamfer.EXAMPLE,
    thread: 'M10x1.5',
    count: '2.5',
    thickness: '',
    tap: 'spiral-flute',
  };
  const study = must(
    chamferStudy(
      { thread: 'M10x1.5', hole: { kind: 'blind' }, material: 'steel-medium' },
      'spiral-flute',
      2.5,
    ),
  );

  it('shows the core’s load, chip and torque', () => {
    const told = text(chamfer.engine, values);
    const { toothLoad, torque: needed, chip } = study.here;
    expect(told).toContain(`The heaviest tooth carries ${force(toothLoad)}`);
    expect(told).toContain(torqueText(needed.expected));
    expect(told).toContain(torqueBand(needed.low, needed.high));
    expect(told).toContain(`chip ${chip.toFixed(3)} mm thick`);
  });

  it('draws that same point: 2.5 threads, its torque, its load', () => {
    const told = text(chamfer.engine, values);
    expect(told).toContain(`your tap: ${torqueText(study.here.torque.expected)}`);
    expect(told).toContain(`your tap: ${force(study.here.toothLoad)}`);
  });

  it.each(['1.25', '2', '2.5', '4', '6', '8', '9', '12'])(
    'names %s threads as the core does',
    (count) => {
      const told = text(chamfer.engine, { ...values, count });
      const { us, iso, uk } = chamferNames(Number(count));
      for (const { name } of us) expect(told).toContain(name);
      if (iso[0]!.holds) expect(told).toContain(`form ${iso.map(({ name }) => name).join(' or ')}`);
      expect(told).toContain(uk.join(' or '));
    },
  );

  it('needs no material for a name, and says so', () => {
    const told = text(chamfer.engine, { ...values, material: '' });
    expect(told).toContain('semi-bottoming');
    expect(told).toContain('Choose a material');
  });

  it('marks the bend where a plate is thinner than the chamfer is long', () => {
    const told = text(chamfer.engine, { ...values, count: '5', thickness: '5' });
    expect(told).toContain('chamfer as long as the work is thick');
    expect(told).toMatch(/never more than \d+ % of it cuts at once/);
  });
});

describe('blind-hole depth', () => {
  const base = { ...blind.EXAMPLE, thread: 'M8x1.25', full: '16', chamfer: 'semi-bottoming' };
  const question = {
    thread: 'M8x1.25',
    drive: 'synchronous',
    centre: 0,
    pointAngle: 118,
  } as const;

  it('how deep: the core’s shoulder, tip and middle', () => {
    const { promised, middle } = must(
      blindStudy({ ...question, fullThread: 16, chamfer: { min: 2, max: 3 } }),
    );
    const told = text(blind.engine, base);
    expect(told).toContain(`Drill ${length(promised.shoulder, 'mm')} to the shoulder`);
    expect(told).toContain(`tap to ${length(promised.tip, 'mm')}`);
    expect(told).toContain(`middle of the class: ${length(middle.shoulder, 'mm')}`);
    expect(told).toContain(`point at ${length(promised.point, 'mm')}`);
  });

  it('how much thread, from the depth that gave it', () => {
    const told = text(blind.engine, { ...base, find: 'full', full: '', hole: '21' });
    expect(told).toContain('16.0 mm of full thread, for certain');
  });

  it('which chamfer, from both depths', () => {
    const told = text(blind.engine, { ...base, find: 'chamfer', chamfer: '', hole: '21' });
    expect(told).toContain('Room for 3 threads of chamfer');
    expect(told).toContain('2–3 fits for certain');
  });

  it('the sum adds up as it is written', () => {
    const told = text(blind.engine, base);
    expect(told).toContain(
      '16.0 mm full thread + 3.75 mm chamfer + 1.25 mm stop clearance = 21.0 mm',
    );
  });

  it('inches in, inches out, and the same hole', () => {
    const inch = text(blind.engine, { ...base, thread: '9/16-18', full: '.80' }, 'in');
    expect(inch).toContain('Drill 1.022 in to the shoulder');
    const metric = text(blind.engine, { ...base, thread: '9/16-18', full: '.80 in' }, 'mm');
    expect(metric).toContain('Drill 25.96 mm');
  });
});

describe('chip room', () => {
  const study = must(
    chipStudy({
      thread: 'M10x1.5',
      fullThread: 20,
      shoulder: 35,
      chamfer: 'plug',
      material: 'steel-medium',
      pointAngle: 118,
    }),
  );

  it('shows the core’s volumes, and every kind of chip', () => {
    const told = text(room.engine, { ...room.EXAMPLE, thread: 'M10x1.5' });
    expect(told).toContain('do not fit');
    for (const { volume: taken } of study.fit.packed) expect(told).toContain(volume(taken, 'mm'));
    expect(told).toContain(volume(study.fit.solid, 'mm'));
    expect(told).toContain(length(study.fit.free, 'mm'));
  });

  it('rounds what it asks for up, never down', () => {
    const told = text(room.engine, { ...room.EXAMPLE, thread: 'M10x1.5' });
    const asked = Number(/about (\d+) mm deeper/.exec(told)?.[1]);
    expect(asked).toBeGreaterThanOrEqual(study.own.deeper);
    expect(asked - study.own.deeper).toBeLessThan(1);
  });

  it('a hole deep enough holds them, and one too short for the tap says so first', () => {
    const deep = { ...room.EXAMPLE, thread: 'M10x1.5', hole: '90' };
    expect(text(room.engine, deep)).toContain('The chips fit under the tap.');
    expect(text(room.engine, { ...deep, hole: '25' })).toContain('3.25 mm too long');
  });
});

describe('torque', () => {
  const loads = must(
    tapLoads(
      {
        thread: '9/16-18 UNF-2B',
        fullThread: 20.32,
        hole: { kind: 'blind' },
        material: 'steel-alloy-30hrc',
        spindle: { drive: 'synchronous', torque: 30 },
      },
      'semi-bottoming',
    ),
  );

  it('shows every style with the core’s torque and shares', () => {
    const told = text(torque.engine, torque.EXAMPLE);
    for (const load of loads) {
      expect(told).toContain(torqueText(load.torque.expected));
      expect(told).toContain(torqueBand(load.torque.low, load.torque.high));
      expect(told).toContain(percent(load.share.worn));
      expect(told).toContain(percent(load.spindle!.worn));
    }
  });

  it('says the same as the planner for the tap it would choose', () => {
    const plan = must(
      planHole({
        thread: 'M10x1.5',
        fullThread: 15,
        hole: { kind: 'blind' },
        material: 'steel-low',
        spindle: { drive: 'synchronous', torque: 30 },
      }),
    );
    const best = plan.taps.find(({ verdict }) => verdict === 'best')!;
    const told = text(torque.engine, {
      ...torque.EXAMPLE,
      thread: 'M10x1.5',
      depth: '15',
      material: 'steel-low',
      tap: best.style,
    });
    expect(told).toContain(`About ${torqueText(best.torque.expected)} sharp`);
    expect(told).toContain(force(best.toothLoad));
  });

  it('refuses what it cannot say, and does not blame the reader', () => {
    const refusal = (change: object) =>
      torque.engine.attempt({ ...torque.EXAMPLE, ...change }, 'mm').refusal?.code;
    expect(refusal({ material: 'steel-hard' })).toBe('too-hard');
    expect(refusal({ material: 'iron-grey', tap: 'form' })).toBe('form-brittle');
    expect(refusal({ material: 'copper', tap: 'form', chamfer: 'taper' })).toBe('form-taper');
    for (const code of ['too-hard', 'form-brittle', 'form-taper']) {
      expect(torque.WORDS.refusals?.[code]?.text).toMatch(/\.$/);
    }
  });
});

/** Fields and what somebody might type into them by mistake. */
const BAD: [string, Engine<never, never>, object, RegExp][] = [
  ['thread', blind.engine as never, { ...blind.EXAMPLE, thread: 'half inch bolt' }, /\w/],
  ['full', blind.engine as never, { ...blind.EXAMPLE, full: 'deep' }, /must be a length, like 16/],
  ['full', blind.engine as never, { ...blind.EXAMPLE, full: '0' }, /more than 0/],
  ['full', blind.engine as never, { ...blind.EXAMPLE, full: '-4' }, /more than 0/],
  ['full', blind.engine as never, { ...blind.EXAMPLE, full: '12000' }, /longer than any/],
  ['centre', blind.engine as never, { ...blind.EXAMPLE, centre: '-1' }, /0 or more/],
  ['point', blind.engine as never, { ...blind.EXAMPLE, point: '20' }, /between 60° and 180°/],
  [
    'hole',
    blind.engine as never,
    { ...blind.EXAMPLE, find: 'chamfer', full: '12', hole: '12.5' },
    /no room for any chamfer/,
  ],
  ['count', chamfer.engine as never, { ...chamfer.EXAMPLE, count: 'four' }, /like 2\.5 or 4/],
  ['count', chamfer.engine as never, { ...chamfer.EXAMPLE, count: '40' }, /between 0\.5 and 16/],
  ['thickness', chamfer.engine as never, { ...chamfer.EXAMPLE, thickness: '0' }, /more than 0/],
  ['hole', room.engine as never, { ...room.EXAMPLE, hole: '15' }, /deeper than the full thread/],
  ['spindle', torque.engine as never, { ...torque.EXAMPLE, spindle: '11 kW' }, /must be a torque/],
  ['spindle', torque.engine as never, { ...torque.EXAMPLE, spindle: '0' }, /more than 0/],
  ['web', torque.engine as never, { ...torque.EXAMPLE, web: 'thin' }, /must be a length/],
  [
    'angle',
    direction.engine as never,
    { ...direction.EXAMPLE, see: 'angle', angle: '80' },
    /−60° and 60°/,
  ],
  [
    'angle',
    direction.engine as never,
    { ...direction.EXAMPLE, see: 'angle', angle: 'left' },
    /like 10 or −10/,
  ],
];

describe('bad input', () => {
  it.each(BAD)('%s: a complaint that says what to type', (field, engine, values, words) => {
    const any = engine as unknown as Engine<string, unknown>;
    const { answer, problems } = any.attempt(values as ValuesOf<string>, 'mm');
    expect(answer).toBeNull();
    const found = problems.find((each) => each.field === field);
    expect(found).toBeDefined();
    const said = any.complaint(field, found!.problem, 'mm');
    expect(said).toMatch(words);
    expect(said).not.toMatch(/\{|please|sorry|invalid|oops/i);
  });

  it('whatever is typed gets an answer or a complaint in words, never a throw', () => {
    const engines = [blind, chamfer, room, torque, direction] as unknown as {
      engine: Engine<string, unknown>;
      EXAMPLE: ValuesOf<string>;
    }[];
    fc.assert(
      fc.property(
        fc.constantFrom(...engines),
        fc.dictionary(
          fc.constantFrom('thread', 'full', 'hole', 'depth', 'count', 'centre'),
          fc.string({ maxLength: 12 }),
        ),
        ({ engine, EXAMPLE }, typed) => {
          const known = Object.entries(typed).filter(
            ([name]) =>
              (name in EXAMPLE && name !== 'hole') || (name === 'hole' && 'full' in EXAMPLE),
          );
          const values = { ...EXAMPLE, ...Object.fromEntries(known) };
          const { answer, problems } = engine.attempt(values, 'mm');
          if (answer !== null) {
            expect(engine.spoken(answer, 'mm')).not.toMatch(/NaN|undefined|Infinity/);
          } else {
            for (const { field, problem } of problems) {
              expect(engine.complaint(field, problem, 'mm')).toMatch(/^[A-Z“#0-9].*[.…?]/s);
            }
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('sentences', () => {
  it('are the same aloud as on the page', () => {
    expect(spoken([{ text: 'Drill ' }, { text: '21.0 mm', strong: true }])).toBe('Drill 21.0 mm');
  });
});
