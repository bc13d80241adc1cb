/** Rules about the size of the hole, its class and its gauges. */

import { beforePlating, formTapHole, readGauges } from '../../../../core';
import {
  formPercent,
  FORM_WINDOW,
  holeForPercent,
  percentThread,
} from '../../../../core/drill/percent';
import type { GaugeReading } from '../../../../core/gauge/reading';
import { judgeTapLimits } from '../../../../core/tap/limits-judge';
import { inchToMm } from '../../../../core/units';
import { decimals, length, limitLength, threadPercent } from '../..';
import {
  engagementOf,
  holeIn,
  inCalculator,
  limitsOf,
  sure,
  threadOf,
} from '../../../rules/reckon';
import type { Rule } from '../../../rules/rule';

function always75(): Rule {
  const percent = 75;
  const trial = (thread: string) => {
    const { diameter, pitch } = threadOf(thread);
    return holeIn(thread, holeForPercent(diameter, pitch, percent));
  };
  const wide = trial('M10x1.5-6H');
  const tight = trial('3/4-10 UNC-3B');
  return {
    id: 'always-75',
    heard: 'Always 75 percent thread.',
    instead:
      'Stay inside the class, and go as large in it as the scatter of your drill allows. The class decides, not the percentage.',
    holds: inCalculator(
      'tap-drill',
      { thread: 'M10x1.5-6H' },
      wide.verdict === 'inside',
      `M10x1.5-6H: 75 % on the shop base is a hole of ${length(wide.diameter, 'mm')}. Even cut ${length(wide.likely - wide.diameter, 'mm')} large it is within ${limitLength(wide.max, 'mm')}.`,
    ),
    fails: inCalculator(
      'tap-drill',
      { thread: '3/4-10 UNC-3B' },
      tight.verdict === 'inside',
      `3/4-10 UNC-3B: the same 75 % is a hole of ${length(tight.diameter, 'in')}. A drill that cuts as large as drills do makes it ${length(tight.likely, 'in')}, and the class ends at ${limitLength(tight.max, 'in')}.`,
    ),
    sources: ['iso-68-1', 'asme-b1-1', 'iso-965-1'],
  };
}

function pitchOff(): Rule {
  const { diameter, pitch } = threadOf('M10x1.5-6H');
  const hole = diameter - pitch;
  const share = percentThread(diameter, pitch, hole);
  const judged = holeIn('M10x1.5-6H', hole);
  const insert = holeIn('EG M8x1.25-5H', threadOf('M8x1.25').diameter - threadOf('M8x1.25').pitch);
  return {
    id: 'diameter-less-pitch',
    heard: 'Diameter minus pitch gives 75 percent.',
    instead: `It gives ${threadPercent(share.shop)} on the shop base and ${threadPercent(share.iso)} on the ISO base, for every 60° thread. As a drill it is good; as a percentage, always say the base.`,
    holds: inCalculator(
      'tap-drill',
      { thread: 'M10x1.5-6H' },
      judged.verdict === 'inside',
      `M10x1.5-6H: the difference is ${length(hole, 'mm')}, and that drill stays inside the class.`,
    ),
    fails: inCalculator(
      'tap-drill',
      { thread: 'EG M8x1.25-5H' },
      insert.verdict === 'inside',
      `A hole for a wire insert of M8x1.25: the tap is larger than the screw. Diameter minus pitch is ${length(insert.diameter, 'mm')}; the hole must be ${limitLength(insert.min, 'mm')} at least.`,
    ),
    sources: ['iso-68-1', 'common-practice'],
  };
}

function sixty(): Rule {
  const { diameter, pitch } = threadOf('M10x1.5-6H');
  const hole = holeIn('M10x1.5-6H', holeForPercent(diameter, pitch, 60));
  const soft = engagementOf('M10x1.5-6H', '8.8', 'al-wrought');
  return {
    id: 'sixty-will-do',
    heard: 'Sixty percent is nearly as strong, so just use that.',
    instead:
      'Where the tapped metal is the weaker one, that is true of strength. It says nothing about the class, and the inspector goes by the class. A form tap forgives a large hole least of all.',
    holds: inCalculator(
      'engagement',
      { thread: 'M10x1.5-6H', screw: '8.8', material: 'al-wrought' },
      soft.governs === 'hole',
      `M10x1.5, a screw of 8.8 in wrought aluminium: the hole’s thread shears first, out where the screw’s crests are. Its ${decimals(soft.holeArea, 1)} mm² for each mm of thread do not depend on the drill.`,
    ),
    fails: inCalculator(
      'tap-drill',
      { thread: 'M10x1.5-6H' },
      hole.verdict !== 'outside',
      `M10x1.5-6H: 60 % on the shop base is a hole of ${length(hole.diameter, 'mm')}. The class ends at ${limitLength(hole.max, 'mm')}: every part is rejected.`,
    ),
    sources: ['fed-std-h28', 'iso-965-1'],
  };
}

function tighter3B(): Rule {
  const chart = inchToMm(21 / 32);
  const loose = holeIn('3/4-10 UNC-2B', chart);
  const tight = holeIn('3/4-10 UNC-3B', chart);
  const number7 = inchToMm(0.201);
  const small = holeIn('1/4-20 UNC-3B', number7);
  return {
    id: 'three-b-smaller-drill',
    heard: '3B means a smaller drill.',
    instead:
      '3B tightens the pitch diameter and the largest minor diameter, both. Sometimes that shuts out the drill on the chart, often not. Look it up for the thread.',
    holds: inCalculator(
      'tap-drill',
      { thread: '3/4-10 UNC-3B' },
      tight.verdict === 'outside' && loose.verdict !== 'outside',
      `3/4-10: the chart’s 21/32 in is inside 2B (to ${limitLength(loose.max, 'in')}) and outside 3B (to ${limitLength(tight.max, 'in')}).`,
    ),
    fails: inCalculator(
      'tap-drill',
      { thread: '1/4-20 UNC-3B' },
      small.verdict === 'outside',
      `1/4-20: the #7 drill of 2B does for 3B as well. The largest hole is ${limitLength(small.max, 'in')}.`,
    ),
    sources: ['asme-b1-1', 'handbook-drills'],
  };
}

function h3(): Rule {
  const listed = (text: string) => {
    const thread = threadOf(text);
    return judgeTapLimits(thread, limitsOf(text)).find(
      (each) => each.system === 'H' && each.listed !== null,
    );
  };
  const tight = listed('1/4-20 UNC-3B');
  const usual = listed('3/8-16 UNC-2B');
  return {
    id: 'h3-is-standard',
    heard: 'H3 is the standard tap.',
    instead:
      'A limit is chosen for a class and a size. Plating and metal that springs back want a higher one.',
    holds: inCalculator(
      'thread-limits',
      { thread: '1/4-20 UNC-3B' },
      tight?.name === 'H3',
      `1/4-20 UNC-3B: the list asks for ${tight?.name}, and it lies in the class with room to cut a step large.`,
    ),
    fails: inCalculator(
      'thread-limits',
      { thread: '3/8-16 UNC-2B' },
      usual?.name === 'H3',
      `3/8-16 UNC-2B: the list asks for ${usual?.name}. An H3 would pass too, but wears out of the class sooner.`,
    ),
    sources: ['handbook-tap-limits', 'tap-limit-lists'],
  };
}

function gauges(reading: Partial<GaugeReading>) {
  const whole = { go: 'all', notGoTurns: 0, threadTurns: 10, minorGo: true, minorNotGo: false };
  return sure(readGauges({ ...whole, ...reading } as GaugeReading));
}

const everyRule = (verdict: ReturnType<typeof gauges>, accepts: boolean) =>
  verdict.rules.every((each) => each.accepts === accepts);

function goGoes(): Rule {
  const state = { thread: 'M8x1.25-6H', go: 'all', full: '12' };
  return {
    id: 'go-goes-so-good',
    heard: 'GO goes in, so the hole is good.',
    instead:
      'GO says that nothing is too small. NOT GO, the plain plugs, the depth and the coating still have to be asked.',
    holds: inCalculator(
      'gauging',
      { ...state, turns: '0', plain: 'right' },
      everyRule(gauges({}), true),
      'M8x1.25-6H: GO goes all the way, NOT GO does not start, both plain plugs do as they should. The hole passes.',
    ),
    fails: inCalculator(
      'gauging',
      { ...state, turns: '6', plain: 'right' },
      everyRule(gauges({ notGoTurns: 6 }), true),
      'The same GO, but NOT GO winds in six turns. The pitch diameter is too large under either rule, and GO could never have shown it.',
    ),
    sources: ['asme-b1-2', 'iso-1502'],
  };
}

function noGoEnters(): Rule {
  const state = { thread: 'M8x1.25-6H', go: 'all', full: '12', plain: 'right' };
  return {
    id: 'not-go-enters-reject',
    heard: 'NOT GO enters: reject it.',
    instead:
      'A little entry is allowed. How much, the standard in the contract says, and the two in use differ.',
    holds: inCalculator(
      'gauging',
      { ...state, turns: '6' },
      everyRule(gauges({ notGoTurns: 6 }), false),
      'M8x1.25-6H: NOT GO goes in six turns. Both standards reject.',
    ),
    fails: inCalculator(
      'gauging',
      { ...state, turns: '1.5' },
      everyRule(gauges({ notGoTurns: 1.5 }), false),
      'NOT GO goes in one turn and a half, then stops by itself. Both standards accept.',
    ),
    sources: ['asme-b1-2', 'iso-1502'],
  };
}

function plating(): Rule {
  const layer = 0.008;
  const window = (text: string) => ({
    bare: sure(
      beforePlating(limitsOf(text), [0.005, layer], 'before', {
        major: 8,
        pitch: limitsOf('M8x1.25-6H').pitch.min,
        minor: limitsOf('M8x1.25-6H').minor.min,
      }),
    ),
    plain: limitsOf(text),
  });
  const thin = window('M8x1.25-6G');
  const usual = window('M8x1.25-6H');
  const added = (each: typeof thin) => each.bare.pitch.min - each.plain.pitch.min;
  return {
    id: 'plating-add-thickness',
    heard: 'Plating: tap it larger by the thickness.',
    instead:
      'On a 60° flank the pitch diameter moves four times the thickness, and the hole twice. A class made for coating already has some of that in it.',
    holds: inCalculator(
      'plating',
      { thread: 'M8x1.25-6G', least: '5 µm', most: '8 µm', rule: 'before' },
      added(thin) <= layer,
      `M8x1.25-6G under a layer of at most ${limitLength(layer, 'mm')}: the class has room built in. One thickness, or ${limitLength(added(thin), 'mm')}, is enough.`,
    ),
    fails: inCalculator(
      'plating',
      { thread: 'M8x1.25-6H', least: '5 µm', most: '8 µm', rule: 'before' },
      added(usual) <= layer,
      `M8x1.25-6H under the same layer: the pitch diameter must start ${limitLength(added(usual), 'mm')} larger, ${decimals(added(usual) / layer, 0)} times the thickness.`,
    ),
    sources: ['derived', 'from-memory'],
  };
}

function formStronger(): Rule {
  const { diameter, pitch } = threadOf('M6x1-6H');
  const form = formTapHole({ major: diameter, pitch });
  const large = form.usual + 0.1;
  const percent = (hole: number) => formPercent(diameter, pitch, hole);
  return {
    id: 'formed-is-stronger',
    heard: 'A formed thread is stronger.',
    instead:
      'With the hole right it is as good as a cut one, with a smoother flank and no chip. Strip tests found it no stronger, and it forgives a large hole far less.',
    holds: inCalculator(
      'form-tap-hole',
      { thread: 'M6x1-6H', material: 'al-wrought', hole: decimals(form.usual, 2) },
      percent(form.usual) >= FORM_WINDOW.min,
      `M6x1, hole ${length(form.usual, 'mm')}: ${threadPercent(percent(form.usual))} on the form-tap scale. The crest is full, and the thread is as good as it gets.`,
    ),
    fails: inCalculator(
      'form-tap-hole',
      { thread: 'M6x1-6H', material: 'al-wrought', hole: decimals(large, 2) },
      percent(large) >= FORM_WINDOW.min,
      `The hole a tenth of a millimetre larger, ${length(large, 'mm')}: ${threadPercent(percent(large))}. The crest is hollow, and GO and NOT GO may both be content with it.`,
    ),
    sources: ['from-memory'],
  };
}

export const HOLE_RULES: readonly Rule[] = [
  always75(),
  pitchOff(),
  sixty(),
  tighter3B(),
  h3(),
  goGoes(),
  noGoEnters(),
  plating(),
  formStronger(),
];
