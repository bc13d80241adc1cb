/** The answer of the chamfer calculator in words. English. */

import type { ChamferName } from '../../../../../core/chamfer/names';
import type { Part } from '../../../answer';
import { CHAMFERS } from '../../names';
import { decimals, drillName, length, threadRange, type Unit } from '../../../format';
import { materialShort, styleName } from '../../../names';
import { fill } from '../../../template';
import { unbroken } from '../../../../calculators/numbers';
import type { ChamferAnswer } from '../../../../calculators/chamfer/state';

export const TEXT = {
  us: 'US class',
  iso: 'ISO, DIN form',
  uk: 'UK, hand set',
  length: 'Its length',
  room: 'Room in a blind hole',
  load: 'Heaviest tooth',
  torque: 'Torque, sharp',
  between: 'between two classes',
  beyond: 'outside every class',
  ukBeware: 'beware: UK “plug” is the bottoming tap',
  roomBeside: 'below the full thread, with one pitch of stop clearance',
  chooseMaterial: 'Choose a material, and the load on its teeth is worked out too.',
  tooHard:
    'Too hard for an HSS tap: no load is worked out. Thread it before hardening, or mill the thread.',
  rubs: 'A chip that thin is rubbed off, not cut: the edge of a sharp tap is about as round. A shorter chamfer bites.',
  classes: 'The classes for this thread',
  class: 'Class (US)',
  threads: 'Threads',
  form: 'Form',
  ukWord: 'UK',
  long: 'Length',
  yours: 'yours',
  picture: 'Your chamfer beside the middle of each class, to scale.',
  disputed:
    'Shops say a short chamfer takes more torque; chip theory says less. Both are inside the band. That each tooth of it carries more is not in dispute.',
  plan: 'Plan a hole with this thread',
  depth: 'How deep must a blind hole be for it?',
  torqueOf: 'Torque of this tap, sharp and worn',
  chartSource: 'the geometry of the cut, worked out here; published factors of one tool maker',
  rubsTitle: 'The chip is too thin',
  published: '{band} by theory and published factors',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

function either<Name extends string>(
  names: readonly ChamferName<Name>[],
  say: (name: Name) => string,
): string {
  return names.map(({ name }) => say(name)).join(names[0]?.holds ? ' or ' : ' and ');
}

const usWords = ({ names }: ChamferAnswer) => either(names.us, (name) => CHAMFERS[name]);
const isoWords = ({ names }: ChamferAnswer) => either(names.iso, (name) => name);

/** What it is called and how long it is. */
export function answerParts(answer: ChamferAnswer, unit: Unit): Part[] {
  const { count, names, length: long } = answer;
  const holds = names.us[0]?.holds ?? false;
  const between = !holds && names.us.length > 1 ? 'between ' : '';
  const near = !holds && names.us.length === 1 ? 'nearest to ' : '';
  const form = names.iso[0]?.holds ? [{ text: ', form ' }, strong(isoWords(answer))] : [];
  return [
    { text: `${decimals(count, 2)} threads: ${between}${near}` },
    strong(usWords(answer)),
    ...form,
    { text: ', ' },
    strong(length(long, unit)),
    { text: ' long.' },
  ];
}

/** What it does in the work, where that was said. */
export function becauseText({ study, tooHard, thickness }: ChamferAnswer, unit: Unit): string {
  if (tooHard) return TEXT.tooHard;
  if (!study) return TEXT.chooseMaterial;
  const { toothLoad, chip, torque, engaged } = study.here;
  const thin =
    engaged < 0.995 && thickness !== undefined
      ? ' The plate is thinner than the chamfer is long: never more than {engaged:percent} of it cuts at once.'
      : '';
  return fill(
    `The heaviest tooth carries {toothLoad:force} and takes a chip of {chip}; the tap needs about {torque:torque}.${thin}`,
    { toothLoad, chip: chipText(chip, unit), torque: torque.expected, engaged },
    unit,
  );
}

/** A chip's thickness, finer than any other length here. */
export function chipText(mm: number, unit: Unit): string {
  return unit === 'mm' ? `${decimals(mm, 3, 3)} mm` : `${decimals(mm / 25.4, 4, 4)} in`;
}

/** A name with its range, or that the count lies outside it. */
export function nameRows<Name extends string>(
  names: readonly ChamferName<Name>[],
  say: (name: Name) => string,
): { value: string; beside: string[] } {
  const outside = names.length > 1 ? TEXT.between : TEXT.beyond;
  return {
    value: either(names, say),
    beside: [
      ...names.map(
        ({ name, threads }) => `${say(name)}: ${unbroken(threadRange(threads))} threads`,
      ),
      ...(names[0]?.holds ? [] : [outside]),
    ],
  };
}

export function assumed({ study, style, thickness, flutes }: ChamferAnswer, unit: Unit): string[] {
  if (!study) return ['The count is yours: half a thread more or less is a common quarrel.'];
  return [
    `${styleName(style)}, sharp, ${flutes} flutes, point of the tap as small as the hole.`,
    study.drill
      ? `Drilled ${drillName(study.drill)}, the plan’s own drill for this thread and material.`
      : fill(
          'Hole {hole:length}, the middle of the class: no stocked drill passes.',
          { hole: study.hole },
          unit,
        ),
    ...(thickness === undefined ? ['Work thicker than any chamfer is long.'] : []),
    'Torque within about 40 % of a sharp, oiled tap; the load on the tooth is as sure as that.',
  ];
}

export function askedParts(
  { thread, count, style, material, thickness }: ChamferAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    `${decimals(count, 2)} threads of chamfer`,
    styleName(style).toLowerCase(),
    material ? materialShort(material) : '',
    thickness === undefined ? '' : `${length(thickness, unit)} thick`,
  ];
}

export const CHART = {
  title: 'A longer chamfer spares every tooth, and hardly changes the torque',
  titleThin: 'Where the chamfer outgrows the work, the torque falls',
  subtitle: '{thread}, hole {hole:length}, {material}, sharp {style} tap with {flutes} flutes',
  description:
    'Two panels over one axis, the length of the chamfer from one thread to ten. Above, the torque inside its band, widest for short chamfers. Below, the load on the heaviest tooth, falling steeply at first and then ever less. {sentence}',
  work: 'this work',
  workLong: 'in work {thickness:length} thick',
  thick: 'thick work',
  thickLong: 'in work thicker than any chamfer',
} as const;
