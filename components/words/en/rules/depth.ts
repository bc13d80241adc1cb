/** Rules about how deep the hole and the thread must be. */

import { minorLimitsMm } from '../../../../core';
import { chamferOf } from '../../../../core/chamfer/classes';
import { countersinkTakes, quarterRuleDepth, roomInPitches } from '../../../../core/hole/rules';
import type { HoleRequest, SpindleDrive } from '../../../../core/plan/types';
import { planned, tapOf } from '../../../lesson/planned';
import { decimals, length, threadRange } from '../..';
import { engagementOf, inCalculator, inPlanner, limitsOf, threadOf } from '../../../rules/reckon';
import type { Rule } from '../../../rules/rule';

function twoDiameters(): Rule {
  const strong = engagementOf('M10x1.5-6H', '12.9', 'al-wrought');
  const usual = engagementOf('M10x1.5-6H', '8.8', 'steel-low');
  const within = (range: { min: number; max: number }) => 2 >= range.min - 0.01 && 2 <= range.max;
  const said = ({ specify }: typeof strong) =>
    `${decimals(specify.min, 1)} to ${length(specify.max, 'mm')}`;
  const inD = ({ inDiameters: { specify } }: typeof strong) =>
    `${decimals(specify.min, 1)} to ${decimals(specify.max, 1)} D`;
  return {
    id: 'two-diameters-deep',
    heard: 'Tap it two diameters deep. (Or one in steel, one and a half in aluminium.)',
    instead:
      'Work it out from the screw’s grade and the metal. Past what is needed, depth adds cost and broken taps, not strength.',
    holds: inCalculator(
      'engagement',
      { thread: 'M10x1.5-6H', screw: '12.9', material: 'al-wrought' },
      within(strong.inDiameters.specify),
      `M10x1.5, a 12.9 screw in wrought aluminium: ${said(strong)} of full thread, ${inD(strong)}. Two diameters is right.`,
    ),
    fails: inCalculator(
      'engagement',
      { thread: 'M10x1.5-6H', screw: '8.8', material: 'steel-low' },
      within(usual.inDiameters.specify),
      `The same thread, an 8.8 screw in low-carbon steel: ${said(usual)}, ${inD(usual)}. Two diameters is waste.`,
    ),
    sources: ['fed-std-h28', 'screw-grades', 'shear-strength'],
  };
}

function threeThreads(): Rule {
  const threads = 3;
  const trial = (text: string, grade: 'SAE 2' | '8.8', metal: 'steel-alloy-30hrc' | 'al-wrought') =>
    engagementOf(text, grade, metal).matching / threadOf(text).pitch;
  const small = trial('#6-32 UNC-2B', 'SAE 2', 'steel-alloy-30hrc');
  const soft = trial('M10x1.5-6H', '8.8', 'al-wrought');
  return {
    id: 'three-threads-enough',
    heard: 'Three threads are enough: they carry it all.',
    instead:
      'The first threads do carry the most. That does not make three of them strong enough, least of all in a soft part.',
    holds: inCalculator(
      'engagement',
      { thread: '#6-32 UNC-2B', screw: 'SAE 2', material: 'steel-alloy-30hrc' },
      small <= threads,
      `#6-32, a plain SAE 2 screw in alloy steel at 30 HRC: the screw breaks from ${decimals(small, 1)} threads on. There is no margin in that.`,
    ),
    fails: inCalculator(
      'engagement',
      { thread: 'M10x1.5-6H', screw: '8.8', material: 'al-wrought' },
      soft <= threads,
      `M10x1.5, an 8.8 screw in wrought aluminium: three threads strip. The screw breaks first only from ${decimals(soft, 1)} threads on, before any margin.`,
    ),
    sources: ['fed-std-h28', 'shear-strength'],
  };
}

function quarter(): Rule {
  const trial = (fullThread: number) => {
    const depth = quarterRuleDepth(fullThread);
    const request: HoleRequest = {
      thread: 'M20x2.5-6H',
      fullThread,
      hole: { kind: 'blind', limit: { at: 'shoulder', depth } },
      material: 'steel-medium',
    };
    const tap = tapOf(planned(request), 'spiral-flute', 'semi-bottoming');
    const room = roomInPitches(depth, fullThread, threadOf(request.thread).pitch);
    return { request, depth, fullThread, room, fits: tap.verdict !== 'no' };
  };
  const long = trial(40);
  const short = trial(20);
  const wants = chamferOf('semi-bottoming', 'metric').threads;
  const said = ({ fullThread, depth, room }: typeof long) =>
    `M20x2.5, ${length(fullThread, 'mm')} of thread: the rule drills ${length(depth, 'mm')} and leaves ${decimals(room, 1)} pitches`;
  return {
    id: 'quarter-deeper',
    heard: 'Drill a quarter deeper than the thread.',
    instead:
      'Chamfer and stop are counted in pitches, not in shares of the depth. A short coarse thread gets far too little.',
    holds: inPlanner(
      long.request,
      long.fits,
      `${said(long)}: room for a chamfer of ${threadRange(wants)} threads and a pitch to stop in.`,
    ),
    fails: inPlanner(
      short.request,
      short.fits,
      `${said(short)}. The chamfer of ${threadRange(wants)} threads meets the floor.`,
    ),
    sources: ['common-practice', 'derived'],
  };
}

function oneThread(): Rule {
  const trial = (drive: SpindleDrive) => {
    const request: HoleRequest = {
      thread: 'M8x1.25-6H',
      fullThread: 12,
      hole: { kind: 'blind' },
      material: 'steel-medium',
      spindle: { drive },
    };
    const { depth } = tapOf(planned(request), 'spiral-flute', 'semi-bottoming');
    const stop = roomInPitches(depth.shoulder, depth.tip, threadOf(request.thread).pitch);
    return { request, depth, stop };
  };
  const rigid = trial('synchronous');
  const float = trial('floating');
  const enough = (pitches: number) => pitches <= 1 + 1e-9;
  return {
    id: 'one-thread-clearance',
    heard: 'One thread of clearance is enough.',
    instead: 'After the chamfer, and where the spindle stops in step with the feed. Not otherwise.',
    holds: inPlanner(
      rigid.request,
      enough(rigid.stop),
      `M8x1.25 on a synchronous spindle: ${decimals(rigid.stop, 1)} pitch between nose and shoulder, which lies at ${length(rigid.depth.shoulder, 'mm')}.`,
    ),
    fails: inPlanner(
      float.request,
      enough(float.stop),
      `In a floating holder the tap runs on: ${decimals(float.stop, 1)} pitches, shoulder at ${length(float.depth.shoulder, 'mm')}.`,
    ),
    sources: ['common-practice', 'derived'],
  };
}

function countersink(): Rule {
  const text = 'M8x1.25-6H';
  const { diameter } = threadOf(text);
  const minor = minorLimitsMm(limitsOf(text)).min;
  const takes = countersinkTakes(1.1 * diameter, minor);
  const { matching } = engagementOf(text, '8.8', 'al-wrought');
  const weakens = (fullThread: number) => fullThread - takes < matching && fullThread >= matching;
  const short = 9;
  const long = 12;
  const state = { thread: text, screw: '8.8', material: 'al-wrought' };
  const said = (fullThread: number) =>
    `${length(fullThread, 'mm')} less ${length(takes, 'mm')} is ${length(fullThread - takes, 'mm')}, and ${length(matching, 'mm')} are needed for the screw to break first`;
  return {
    id: 'countersink-weakens',
    heard: 'A countersink weakens the thread.',
    instead:
      'It costs less than a pitch or so of thread and saves the first one from being pulled up. Add it to the depth and have both.',
    holds: inCalculator(
      'engagement',
      { ...state, have: decimals(short - takes, 2) },
      weakens(short),
      `M8x1.25 in a thin aluminium cover, an 8.8 screw, a countersink a tenth wider than the screw: ${said(short)}. Here it takes what mattered.`,
    ),
    fails: inCalculator(
      'engagement',
      { ...state, have: decimals(long - takes, 2) },
      weakens(long),
      `The same countersink on a thread of proper length: ${said(long)}. Nothing is lost.`,
    ),
    sources: ['fed-std-h28', 'derived'],
  };
}

export const DEPTH_RULES: readonly Rule[] = [
  twoDiameters(),
  threeThreads(),
  quarter(),
  oneThread(),
  countersink(),
];
