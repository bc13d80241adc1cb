/** Rules about running the tap: speed, torque, fluid, the hand on the wrench, and getting it out again. */

import { powerOf } from '../../../../core/cycle/spindle';
import { tappingSpeed } from '../../../../core/cycle/speed';
import { removalChoices, type StuckTap } from '../../../../core/diagnose/removal';
import { fluidFactor } from '../../../../core/load/fluid';
import type { HoleRequest, HolePlan } from '../../../../core/plan/types';
import { handTapping } from '../../../../core/tap/hand';
import { planned, tapOf } from '../../../lesson/planned';
import { decimals, length, percent, roughLength, rpm, torque } from '../..';
import { inCalculator, inPlanner, materialOf, sure, threadOf } from '../../../rules/reckon';
import type { Rule } from '../../../rules/rule';

const warns = (plan: HolePlan, code: string) => plan.warnings.some((each) => each.code === code);

function peck(): Rule {
  const at = (fullThread: number): HoleRequest => ({
    thread: 'M8x1.25-6H',
    fullThread,
    hole: { kind: 'blind' },
    material: 'steel-medium',
  });
  const deep = at(28);
  const usual = at(12);
  const inD = ({ fullThread = 0 }: HoleRequest) => decimals(fullThread / 8, 1);
  return {
    id: 'peck-deep-holes',
    heard: 'Peck-tap it, to be safe.',
    instead:
      'Every reversal drags chips under the teeth and the tap has to find its thread again. Only for long chips in really deep holes, with all the way out each time, and on a control that stays in step.',
    holds: inPlanner(
      deep,
      warns(planned(deep), 'deep-thread'),
      `M8x1.25, ${inD(deep)} D deep in steel: the plan warns that chips pack at this depth. Here it may be worth a trial.`,
    ),
    fails: inPlanner(
      usual,
      warns(planned(usual), 'deep-thread'),
      `${inD(usual)} D deep: a spiral flute carries the chips out in one go. Pecking adds reversals and nothing else.`,
    ),
    sources: ['common-practice'],
  };
}

function slower(): Rule {
  const deep = 28;
  const steel = tappingSpeed(materialOf('steel-medium'), 8, 12);
  const steelDeep = tappingSpeed(materialOf('steel-medium'), 8, deep);
  const stainless = tappingSpeed(materialOf('stainless-austenitic'), 8, 12);
  if (!steel || !steelDeep || !stainless) throw new Error('A rule’s speed is missing.');
  const crawl = stainless.range.min / 2;
  return {
    id: 'slower-is-safer',
    heard: 'Slower is safer.',
    instead:
      'Slow down for a deep hole, heat, or distance to reverse in. Too slow, and metal that hardens is rubbed instead of cut, while some drives lose torque.',
    holds: inCalculator(
      'speed-and-cycle',
      { thread: 'M8x1.25', full: String(deep), material: 'steel-medium' },
      steelDeep.rpm < steel.rpm,
      `M8x1.25 in medium steel, ${length(deep, 'mm')} deep: start at ${rpm(steelDeep.rpm)}, where a shallow thread gets ${rpm(steel.rpm)}.`,
    ),
    fails: inCalculator(
      'speed-and-cycle',
      { thread: 'M8x1.25', full: '12', material: 'stainless-austenitic', rpm: decimals(crawl, 0) },
      crawl >= stainless.range.min,
      `In austenitic stainless the range begins at ${rpm(stainless.range.min)}. Half of that is no safer: the charts do not go there.`,
    ),
    sources: ['speed-charts', 'common-practice'],
  };
}

function power(): Rule {
  const at = (newtonMetres: number): HoleRequest => ({
    thread: 'M20x2.5-6H',
    fullThread: 30,
    hole: { kind: 'blind' },
    material: 'steel-medium',
    spindle: { drive: 'synchronous', torque: newtonMetres },
  });
  const fits = (request: HoleRequest) => !warns(planned(request), 'spindle-over');
  const plan = planned(at(30));
  const needs = tapOf(plan, 'spiral-flute', 'semi-bottoming').torque.expected;
  const speed = plan.cycle?.rpm ?? 0;
  const kilowatts = powerOf(needs, speed);
  return {
    id: 'more-power',
    heard: 'It stalls: it needs more power.',
    instead:
      'It needs torque at tapping speed. A fast spindle has its power far above the speed a tap runs at.',
    holds: inPlanner(
      at(120),
      fits(at(120)),
      `M20x2.5 in medium steel on a geared spindle with ${torque(120)} at tapping speed: it goes.`,
    ),
    fails: inPlanner(
      at(30),
      fits(at(30)),
      `The tap takes about ${torque(needs)} at ${rpm(speed)}. That is ${decimals(kilowatts, 1)} kW, less than any machine has on its plate; but this spindle gives ${torque(30)} there, and stalls.`,
    ),
    sources: ['tap-chip-model', 'derived'],
  };
}

function handJob(text: string, style: 'straight-flute' | 'spiral-flute') {
  return sure(
    handTapping({
      thread: threadOf(text),
      fullThread: 12,
      hole: { kind: 'blind', shoulder: 24 },
      set: 'same-diameter',
      style,
      material: materialOf('steel-low'),
    }),
  );
}

function backOff(): Rule {
  const state = {
    thread: 'M8x1.25-6H',
    hole: 'blind',
    full: '12',
    shoulder: '24',
    material: 'steel-low',
  };
  const straight = handJob('M8x1.25-6H', 'straight-flute');
  const spiral = handJob('M8x1.25-6H', 'spiral-flute');
  return {
    id: 'back-off-half-turn',
    heard: 'Back it off every half turn.',
    instead:
      'A straight-flute hand tap in metal with long chips, yes: it snaps the chip. Any tap that carries its chip away is kept turning.',
    holds: inCalculator(
      'hand-tapping',
      { ...state, flutes: 'straight-flute' },
      straight.backOff !== null,
      `M8x1.25 by hand in low-carbon steel, straight flutes: on ${decimals(straight.backOff?.on.min ?? 0, 2)} to ${decimals(straight.backOff?.on.max ?? 0, 2)} of a turn, then back.`,
    ),
    fails: inCalculator(
      'hand-tapping',
      { ...state, flutes: 'spiral-flute' },
      spiral.backOff !== null,
      'The same hole with a spiral flute: keep turning. Backing off tears the chip that was on its way out, and chips the teeth.',
    ),
    sources: ['common-practice'],
  };
}

function sameWrench(): Rule {
  const arm = 100;
  const large = handJob('M10x1.5-6H', 'straight-flute').arm.careful;
  const small = handJob('M4x0.7-6H', 'straight-flute').arm.careful;
  const state = {
    hole: 'blind',
    full: '12',
    shoulder: '24',
    flutes: 'straight-flute',
    material: 'steel-low',
  };
  return {
    id: 'one-wrench',
    heard: 'One tap wrench does for all.',
    instead:
      'Twice the arm is twice the torque from the same hand. Small taps get small wrenches, or fingers.',
    holds: inCalculator(
      'hand-tapping',
      { ...state, thread: 'M10x1.5-6H' },
      arm <= large,
      `M10: even a weak tap stands an easy hand at ${roughLength(large, 'mm')} from its axis. A wrench of ${length(arm, 'mm')} to each side stays below that.`,
    ),
    fails: inCalculator(
      'hand-tapping',
      { ...state, thread: 'M4x0.7-6H' },
      arm <= small,
      `M4: the same hand is too strong from ${roughLength(small, 'mm')} on. The long wrench twists the tap off before you feel it.`,
    ),
    sources: ['common-practice', 'from-memory'],
  };
}

function reuse(): Rule {
  const at = (thread: string, fullThread: number, material: HoleRequest['material']) =>
    ({ thread, fullThread, hole: { kind: 'blind' }, material }) satisfies HoleRequest;
  const easy = at('M10x1.5-6H', 15, 'al-wrought');
  const hard = at('M2x0.4-6H', 4, 'stainless-austenitic');
  const worn = (request: HoleRequest) =>
    tapOf(planned(request), 'spiral-flute', 'semi-bottoming').tapShare.worn;
  const fine = 0.5;
  return {
    id: 'last-jobs-tap',
    heard: 'Last job’s tap is still good.',
    instead:
      'Only with its count of holes and its metal known: iron dulls it for stainless. How much wear costs depends on how hard the tap works.',
    holds: inPlanner(
      easy,
      worn(easy) <= fine,
      `M10x1.5 in wrought aluminium: even worn it uses ${percent(worn(easy))} of the tap’s strength.`,
    ),
    fails: inPlanner(
      hard,
      worn(hard) <= fine,
      `M2x0.4 in austenitic stainless: worn it is at ${percent(worn(hard))} of what twists it off. Start with a new one.`,
    ),
    sources: ['tap-chip-model', 'common-practice'],
  };
}

function oilAlways(): Rule {
  const dry = (id: 'al-wrought' | 'iron-grey') => fluidFactor('dry', materialOf(id)).factor;
  return {
    id: 'any-oil',
    heard: 'Any oil is better than none.',
    instead:
      'Motor oil has not what the edge needs, and a thin emulsion cools without lubricating. Some metals and customers forbid sulphur or chlorine. The safety data sheet and the drawing come first.',
    holds: inCalculator(
      'torque',
      { thread: 'M6x1-6H', tap: 'spiral-flute', material: 'al-wrought', fluid: 'dry', depth: '12' },
      dry('al-wrought') > 1,
      `M6x1 in wrought aluminium: dry, the torque is about ${decimals(dry('al-wrought'), 1)} times that with a cutting oil.`,
    ),
    fails: inCalculator(
      'torque',
      {
        thread: 'M6x1-6H',
        tap: 'straight-flute',
        material: 'iron-grey',
        fluid: 'dry',
        depth: '12',
      },
      dry('iron-grey') > 1,
      'The same thread in grey iron: dry costs nothing, for the graphite lubricates. Oil makes a grinding paste of the dust.',
    ),
    sources: ['measured-m3', 'common-practice'],
  };
}

function ironDry(): Rule {
  const iron: HoleRequest = {
    thread: 'M8x1.25-6H',
    fullThread: 12,
    hole: { kind: 'blind' },
    material: 'iron-grey',
  };
  const clean = fluidFactor('dry', materialOf('iron-grey')).factor <= 1;
  return {
    id: 'iron-is-dry',
    heard: 'Cast iron is tapped dry, and that is that.',
    instead: 'Either way works. Choose by what happens to the dust.',
    holds: inCalculator(
      'torque',
      {
        thread: 'M8x1.25-6H',
        tap: 'straight-flute',
        material: 'iron-grey',
        fluid: 'dry',
        depth: '12',
      },
      clean,
      'M8x1.25 in grey iron: torque dry is reckoned the same as oiled.',
    ),
    fails: inPlanner(
      iron,
      !warns(planned(iron), 'dust'),
      'The same hole in the planner: it warns of dust. Where it cannot be drawn off, a fluid with a filter is the better way.',
    ),
    sources: ['common-practice'],
  };
}

function acid(): Rule {
  const stuck = (material: StuckTap['material']): StuckTap => ({
    diameter: 6,
    style: 'straight-flute',
    material,
    stub: 'deep',
    hold: 'wedged',
    machine: false,
    wideBoss: false,
  });
  const offered = (material: StuckTap['material']) =>
    sure(removalChoices(stuck(material))).some(
      ({ method, verdict }) => method === 'dissolve' && verdict === 'try',
    );
  const state = {
    size: 'M6x1',
    tap: 'straight-flute',
    stub: 'deep',
    hold: 'wedged',
    machine: 'no',
    boss: 'no',
  };
  return {
    id: 'dissolve-it',
    heard: 'Dissolve the broken tap.',
    instead:
      'A hot alum bath takes a steel tap out of some metals, over hours or days, with ventilation, training and the safety data sheet. Strong acids have no place in a shop.',
    holds: inCalculator(
      'tap-removal',
      { ...state, material: 'al-wrought' },
      offered('al-wrought'),
      'An M6 tap in aluminium, nothing of steel fitted: the bath is on the list of ways.',
    ),
    fails: inCalculator(
      'tap-removal',
      { ...state, material: 'steel-medium' },
      offered('steel-medium'),
      'The same tap in a steel part: what eats the tap eats the part.',
    ),
    sources: ['common-practice', 'osha-1910-1200'],
  };
}

export const RUNNING_RULES: readonly Rule[] = [
  peck(),
  slower(),
  power(),
  backOff(),
  sameWrench(),
  reuse(),
  oilAlways(),
  ironDry(),
  acid(),
];
