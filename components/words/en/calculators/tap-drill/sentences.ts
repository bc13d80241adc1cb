/** The answer of the tap-drill calculator in words. English. */

import { windowText } from '../../../../reference/limits';
import type { Part } from '../../../answer';
import { drillName, length, limitLength, threadPercent, type Unit } from '../../../format';
import { materialShort } from '../../../names';
import { DRAWER_LABELS } from '../shared';
import type { DrillAnswer } from '../../../../calculators/tap-drill/state';

export const TEXT = {
  drill: 'Drill',
  hole: 'Hole of class {class}',
  likely: 'Hole it likely cuts',
  percent: 'Thread left, US shop base',
  iso: 'The same on the ISO base',
  drills: 'Every drill near, judged',
  limits: 'All limits of this thread',
  form: 'The hole before a form tap',
  plan: 'Plan this hole: which tap, how deep',
  page: 'All of this thread on one page',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ study, thread }: DrillAnswer, unit: Unit): Part[] {
  const { drill, window } = study;
  if (!drill) {
    return [
      { text: 'No drill of this drawer falls inside: ' },
      strong(`bore or ream to ${windowText(window.hole, unit)}`),
      { text: '.' },
    ];
  }
  const risk = drill.verdict === 'risk' ? ', but only if it cuts its own size' : '';
  return [
    { text: 'Drill ' },
    strong(drillName(drill)),
    { text: ` for ${thread.designation}${risk}.` },
  ];
}

export function becauseText({ study, material }: DrillAnswer, unit: Unit): string {
  const { drill, window } = study;
  const hole = `The hole must come out at ${windowText(window.hole, unit)}.`;
  if (!drill) return hole;
  const kind =
    study.largest && material
      ? ` In ${materialShort(material)} the largest hole that surely passes is the kindest to the tap.`
      : '';
  return `${hole} ${drillName(drill)} is likely to cut ${limitLength(drill.likely, unit)} and leaves ${threadPercent(drill.percent.shop)} of thread on the US shop base.${kind}`;
}

export function askedParts(
  { thread, material, drawer, oversize }: DrillAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    material ? materialShort(material) : '',
    DRAWER_LABELS[drawer],
    oversize === undefined ? '' : `drill cuts ${length(oversize, unit)} large`,
  ];
}

export function assumed({ oversize, material, study }: DrillAnswer): string[] {
  return [
    oversize === undefined
      ? 'Likely hole: the usual oversize of a twist drill in steel or iron without a bushing, from memory of a handbook table. A stiff, well-ground drill cuts closer.'
      : 'The oversize is yours, as measured.',
    ...(material ? [] : ['No material said: taken as steel.']),
    ...(study.window.uncertain
      ? ['The largest hole of this J thread is a stand-in: take it from the drawing.']
      : []),
    'The class on the drawing decides, not the percentage. A percentage without its base means nothing.',
  ];
}
