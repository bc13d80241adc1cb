/** The answer of the form-tap calculator in words. English. */

import { percentLost } from '../../../../../core/drill/form-hole';
import { findMaterial } from '../../../../../core/material/table';
import { STEP } from '../../../../reference/FormHoleList';
import { windowText } from '../../../../reference/limits';
import type { Part } from '../../../answer';
import { decimals, drillName, limitLength, threadPercent, type Unit } from '../../../format';
import { materialShort } from '../../../names';
import { FORM_TIMES } from '../../factors';
import { DRAWER_LABELS } from '../shared';
import type { FormAnswer } from '../../../../calculators/form-tap-hole/state';

export const TEXT = {
  bar: 'Where the hole must land before the form tap',
  barName: 'hole for 75 to 60 % of thread, {unit}',
  barText:
    'A bar from {min} to {max}: holes for 75 to 60 % on the form-tap scale, with the drills near it.',
  measured: 'as measured',
  measuredRow: 'Your hole',
  drills: 'Drills near it',
  drill: 'Drill',
  size: 'Size, {unit}',
  percent: '% of thread as named',
  likely: '% as it likely cuts',
  verdict: 'Verdict',
  limits: 'All limits of this thread',
  cut: 'The drill before a tap that cuts',
  plan: 'Plan this hole',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

export function answerParts({ study }: FormAnswer, unit: Unit): Part[] {
  const { form, measured } = study;
  if (measured && measured.verdict !== 'inside') {
    const what =
      measured.verdict === 'thin'
        ? { text: 'too large', tail: 'of thread, below 60' }
        : { text: 'too small', tail: 'of thread, above 75' };
    return [
      { text: `A hole of ${limitLength(measured.hole, unit)} is ` },
      strong(what.text),
      {
        text: `: it gives ${threadPercent(measured.percent)} ${what.tail} % on the form-tap scale.`,
      },
    ];
  }
  const held = windowText(form.window, unit);
  if (!form.drill) {
    return [
      { text: 'No drill of this drawer falls inside: ' },
      strong(`ream or bore to ${held}`),
      { text: '.' },
    ];
  }
  return [
    { text: 'Drill ' },
    strong(drillName(form.drill)),
    { text: ', and hold the hole to ' },
    strong(held),
    { text: '.' },
  ];
}

const DOUBTS: Record<string, string> = {
  'if-ductile': 'forms only where it is ductile: try it on a piece first.',
  marginal: 'is at the edge of what can be formed: expect high torque and short tap life.',
  rarely: 'is rarely formed: ask whoever makes the tap.',
};

export function becauseText({ study, material }: FormAnswer, unit: Unit): string {
  const { form } = study;
  const lost = decimals(percentLost(form, STEP[unit]), 1, 1);
  const said = unit === 'mm' ? '0.02 mm' : '0.001 in';
  const found = material && findMaterial(material);
  const doubt = found ? DOUBTS[found.forming] : undefined;
  const metal = material && doubt ? ` ${capital(materialShort(material))} ${doubt}` : '';
  return `The hole decides the crest: ${said} more costs ${lost} % of thread. A drill that cuts as large as usual can empty the thread, and GO and NOT GO will not see it: check the minor diameter after forming.${metal}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function askedParts({ thread, material, drawer, study }: FormAnswer, unit: Unit): string[] {
  return [
    thread.designation,
    material ? materialShort(material) : '',
    DRAWER_LABELS[drawer],
    study.measured ? `hole measured ${limitLength(study.measured.hole, unit)}` : '',
  ];
}

export function assumed({ material }: FormAnswer): string[] {
  return [
    'Percent of thread on the form-tap scale, hole = D − 0.0068 × % × P: a third base, from memory of the handbook. Do not set it beside the other two.',
    'A balance of volume asks for a smaller hole. Where they differ, a trial in your own metal decides.',
    ...(material ? [] : ['No material said: taken as one that can be formed.']),
    `Forming torque is ${FORM_TIMES} times that of cutting, and the tap must be oiled.`,
  ];
}
