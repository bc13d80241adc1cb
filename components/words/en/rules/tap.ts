/** Rules about which tap, which chamfer and where the chips go. */

import type { HoleRequest } from '../../../../core/plan/types';
import type { TapStyle } from '../../../../core/tap/tap';
import { chamferTeeth } from '../../../../core/load/teeth';
import { middleThreads } from '../../../../core/chamfer/classes';
import { planned, tapOf } from '../../../lesson/planned';
import { decimals, force, length, styleName, threadRange, torque } from '../..';
import { inCalculator, inPlanner, materialOf, sure, threadOf } from '../../../rules/reckon';
import type { Rule } from '../../../rules/rule';

const blind = (material: HoleRequest['material'], limit?: number): HoleRequest => ({
  thread: 'M8x1.25-6H',
  fullThread: 12,
  hole: {
    kind: 'blind',
    ...(limit !== undefined && { limit: { at: 'shoulder' as const, depth: limit } }),
  },
  material,
});

const through = (thickness: number, chipsMayFall = true): HoleRequest => ({
  thread: 'M10x1.5-6H',
  hole: { kind: 'through', thickness, chipsMayFall },
  material: 'steel-medium',
});

const firstChoice = (request: HoleRequest) =>
  planned(request).taps.find(({ verdict }) => verdict === 'best')?.style;
const mayBe = (request: HoleRequest, style: TapStyle) =>
  planned(request).taps.some((tap) => tap.style === style && tap.verdict !== 'no');

function spiralFlute(): Rule {
  const named = (request: HoleRequest) => {
    const style = firstChoice(request);
    return style ? styleName(style).toLowerCase() : 'none';
  };
  const long = blind('al-wrought');
  const dust = blind('iron-grey');
  return {
    id: 'spiral-flute-every-blind',
    heard: 'Spiral flute for every blind hole.',
    instead:
      'For long chips. Iron, brass and other short chips want a straight flute, which is stiffer; ductile metal may be formed with no chip at all.',
    holds: inPlanner(
      long,
      firstChoice(long) === 'spiral-flute',
      `M8x1.25 blind in wrought aluminium, long chips: first choice is ${named(long)}.`,
    ),
    fails: inPlanner(
      dust,
      firstChoice(dust) === 'spiral-flute',
      `The same hole in grey iron, chips like dust: first choice is ${named(dust)}.`,
    ),
    sources: ['common-practice'],
  };
}

function spiralPointThrough(): Rule {
  const tight = blind('steel-medium', 18);
  const deep = blind('brass-free', 50);
  return {
    id: 'spiral-point-only-through',
    heard: 'Spiral point: only in through holes.',
    instead:
      'Right unless you have worked out room for the chips below the tap. And wrong in a through hole whose far side must stay clean.',
    holds: inPlanner(
      tight,
      !mayBe(tight, 'spiral-point'),
      'M8x1.25 blind in medium steel, shoulder not far below the thread: the chips go down and there is nowhere for them. No spiral point.',
    ),
    fails: inPlanner(
      deep,
      !mayBe(deep, 'spiral-point'),
      'The same thread in free-cutting brass, with a deep hole below it: the broken chips fit, and a spiral point works.',
    ),
    sources: ['packed-chips', 'common-practice'],
  };
}

function spiralPointBlind(): Rule {
  const deep = blind('brass-free', 50);
  const usual = blind('al-wrought');
  return {
    id: 'spiral-point-for-blind',
    heard: 'Spiral point is the tap for blind holes.',
    instead:
      'Backwards. A spiral point pushes chips ahead of it; a spiral flute draws them back out. The two names sound alike and mean opposite things.',
    holds: inPlanner(
      deep,
      mayBe(deep, 'spiral-point'),
      'Only by way of exception: brass that breaks, and a hole left deep enough to keep the chips.',
    ),
    fails: inPlanner(
      usual,
      mayBe(usual, 'spiral-point'),
      'M8x1.25 blind in wrought aluminium: long chips packed under the tap. Not one spiral point will do.',
    ),
    sources: ['common-practice', 'packed-chips'],
  };
}

function spiralPointAlwaysThrough(): Rule {
  const open = through(12);
  const clean = through(12, false);
  return {
    id: 'through-means-spiral-point',
    heard: 'A through hole always gets a spiral point.',
    instead: 'First ask what lies beyond the hole. If chips must not fall there, draw them back.',
    holds: inPlanner(
      open,
      firstChoice(open) === 'spiral-point',
      'M10x1.5 through a plate of medium steel, nothing beneath: spiral point is the first choice.',
    ),
    fails: inPlanner(
      clean,
      mayBe(clean, 'spiral-point'),
      'The same plate as the wall of a finished bore: chips must not fall in, and the spiral point is out.',
    ),
    sources: ['common-practice'],
  };
}

function longerChamfer(): Rule {
  const at = (thickness: number) => {
    const plan = planned(through(thickness));
    const short = tapOf(plan, 'spiral-point', 'semi-bottoming');
    const long = tapOf(plan, 'spiral-point', 'taper');
    return { short, long, less: 1 - long.torque.expected / short.torque.expected };
  };
  const thin = at(3);
  const thick = at(15);
  const enough = 0.2;
  return {
    id: 'longer-chamfer-less-torque',
    heard: 'A longer chamfer means less torque.',
    instead:
      'It spreads the load over more teeth, so they chip and wear less. The peak torque hardly moves, unless the work is thinner than the chamfer is long.',
    holds: inPlanner(
      through(3),
      thin.less > enough,
      `M10x1.5 through thin steel plate: ${threadRange(thin.long.chamfer.threads)} threads of chamfer never bite all at once. ${torque(thin.long.torque.expected)} against ${torque(thin.short.torque.expected)} with ${threadRange(thin.short.chamfer.threads)}.`,
    ),
    fails: inPlanner(
      through(15),
      thick.less > enough,
      `In a thicker plate: ${torque(thick.long.torque.expected)} against ${torque(thick.short.torque.expected)}. But the load on the first tooth falls from ${force(thick.short.toothLoad)} to ${force(thick.long.toothLoad)}.`,
    ),
    sources: ['tap-chip-model', 'makers-style-factors'],
  };
}

function bottoming(): Rule {
  const cramped: HoleRequest = { ...blind('steel-medium', 16), fullThread: 12 };
  const roomy = blind('steel-medium', 25);
  const best = (request: HoleRequest) =>
    planned(request).taps.find(({ verdict }) => verdict === 'best')?.chamfer.class;
  const plan = planned(roomy);
  const shortest = tapOf(plan, 'spiral-flute', 'bottoming');
  const usual = tapOf(plan, 'spiral-flute', 'semi-bottoming');
  return {
    id: 'bottoming-for-blind',
    heard: 'Blind hole, so a bottoming tap.',
    instead: 'Only where there is no room for anything longer. Its few teeth carry more each.',
    holds: inPlanner(
      cramped,
      best(cramped) === 'bottoming',
      'M8x1.25 with little more than three pitches below the thread: the bottoming chamfer is the only one that reaches.',
    ),
    fails: inPlanner(
      roomy,
      best(roomy) === 'bottoming',
      `The same thread with plenty below it: take ${threadRange(usual.chamfer.threads)} threads. The bottoming tap’s heaviest tooth would carry ${decimals(shortest.toothLoad / usual.toothLoad, 2)} times as much.`,
    ),
    sources: ['tap-chip-model', 'common-practice'],
  };
}

function taperGentlest(): Rule {
  const trial = (text: string, material: 'steel-medium' | 'stainless-austenitic') => {
    const { diameter, pitch } = threadOf(text);
    const groove = { major: diameter, pitch, hole: diameter - pitch };
    const threads = middleThreads({
      class: 'taper',
      form: 'A',
      threads: { min: 6, max: 8 },
    });
    return sure(chamferTeeth(groove, { threads, flutes: 4 }, materialOf(material)));
  };
  const steel = trial('M10x1.5', 'steel-medium');
  const stainless = trial('M6x1', 'stainless-austenitic');
  return {
    id: 'taper-is-gentlest',
    heard: 'A taper tap is the gentlest.',
    instead:
      'In plain steel and iron by hand, yes. In metal that hardens when it is rubbed, each tooth must take a real bite.',
    holds: inCalculator(
      'chamfer',
      { thread: 'M10x1.5-6H', count: '7', material: 'steel-medium' },
      steel.rubbing === 'cuts',
      `M10x1.5 in medium steel: with seven threads of chamfer each tooth still takes a chip of ${length(steel.heaviest.chip, 'mm')}. It cuts.`,
    ),
    fails: inCalculator(
      'chamfer',
      { thread: 'M6x1-6H', count: '7', material: 'stainless-austenitic' },
      stainless.rubbing === 'cuts',
      `M6x1 in austenitic stainless: the chip is down to ${length(stainless.heaviest.chip, 'mm')}, close to rubbing, and rubbing hardens the wall for the next tooth.`,
    ),
    sources: ['tap-chip-model', 'common-practice'],
  };
}

function formRoom(): Rule {
  const plan = planned(blind('al-wrought'));
  const form = tapOf(plan, 'form', 'semi-bottoming');
  const same = tapOf(plan, 'spiral-flute', 'semi-bottoming');
  const shortest = tapOf(plan, 'spiral-flute', 'bottoming');
  return {
    id: 'form-tap-room',
    heard: 'A form tap needs more room at the bottom.',
    instead:
      'The length of its lead decides, as it does for a cutting tap. What it does need is torque, and it is stout enough to stand it.',
    holds: inPlanner(
      blind('al-wrought'),
      form.depth.shoulder > shortest.depth.shoulder,
      `M8x1.25 blind, form tap with ${threadRange(form.chamfer.threads)} threads of lead against a cutting tap with ${threadRange(shortest.chamfer.threads)}: shoulder ${length(form.depth.shoulder, 'mm')} against ${length(shortest.depth.shoulder, 'mm')}.`,
    ),
    fails: inPlanner(
      blind('al-wrought'),
      form.depth.shoulder > same.depth.shoulder,
      `Both with ${threadRange(same.chamfer.threads)} threads: ${length(same.depth.shoulder, 'mm')} either way. The torque is ${decimals(form.torque.expected / same.torque.expected, 1)} times as high, and the share of the tap’s strength is lower.`,
    ),
    sources: ['derived', 'iso-8830'],
  };
}

export const TAP_RULES: readonly Rule[] = [
  spiralFlute(),
  spiralPointThrough(),
  spiralPointBlind(),
  spiralPointAlwaysThrough(),
  longerChamfer(),
  bottoming(),
  taperGentlest(),
  formRoom(),
];
