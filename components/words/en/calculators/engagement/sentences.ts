/** The answer of the engagement calculator in words. English. */

import { ENGAGEMENT_MARGIN } from '../../../../../core/engagement/strip';
import { estimatePair } from '../../../../reference/limits';
import type { Part } from '../../../answer';
import { NOT_A_RATING } from '../../../cautions';
import { decimals, length, type Unit } from '../../../format';
import { materialShort } from '../../../names';
import type { EngagementAnswer } from '../../../../calculators/engagement/state';

export const TEXT = {
  ask: 'Full thread to ask for',
  matching: 'Screw and thread give together at',
  governs: 'Which would strip first',
  hole: 'the tapped thread',
  screw: 'the screw’s thread',
  tensile: 'Stress area of the screw',
  holeArea: 'Sheared in the hole, for each mm',
  screwArea: 'Sheared on the screw, for each mm',
  shear: 'Shear strength reckoned with',
  have: 'What there is',
  others: 'Other screws in this metal',
  grade: 'Screw',
  lengths: 'Full thread to ask for, {unit}',
  diameters: 'In diameters',
  plan: 'Plan this hole: which tap, how deep to drill',
  depth: 'How deep must the hole be for that?',
  limits: 'All limits of this thread',
} as const;

const strong = (text: string): Part => ({ text, strong: true });

function range(answer: EngagementAnswer, unit: Unit): string {
  return `${estimatePair(answer.study.needed.specify, unit)} ${unit}`;
}

export function answerParts(answer: EngagementAnswer, unit: Unit): Part[] {
  const { have, needed } = answer.study;
  const { min, max } = needed.inDiameters.specify;
  const diameters = `${decimals(min, 1, 1)}–${decimals(max, 1, 1)} diameters`;
  const ask: Part[] = [
    { text: 'Ask for ' },
    strong(range(answer, unit)),
    { text: ` of full thread, ${diameters}.` },
  ];
  if (!have || have.verdict === 'enough') return ask;
  const there = length(have.length, unit);
  const said =
    have.verdict === 'strips'
      ? { text: `${there} is too little: `, tail: 'the thread strips before the screw breaks' }
      : { text: `${there} matches the screw `, tail: 'with no margin to spare' };
  return [{ text: said.text }, strong(said.tail), { text: '. ' }, ...ask];
}

export function becauseText(
  { study, screw, material, shearGiven }: EngagementAnswer,
  unit: Unit,
): string {
  const { needed, have } = study;
  const match = length(needed.matching, unit);
  const least = decimals(ENGAGEMENT_MARGIN.least, 2);
  const most = decimals(ENGAGEMENT_MARGIN.most, 2);
  const metal = shearGiven ? 'this metal' : materialShort(material);
  const margin = have ? ` You have ${decimals(have.ratio, 2)} times that.` : '';
  return `At ${match} of engagement a screw of grade ${screw} and its thread in ${metal} give at the same pull. ${least} to ${most} times that allows for load that sits unevenly on the first threads.${margin} More than that buys little.`;
}

export function askedParts(
  { thread, screw, material, study }: EngagementAnswer,
  unit: Unit,
): string[] {
  return [
    thread.designation,
    `screw ${screw}`,
    materialShort(material),
    study.have ? `${length(study.have.length, unit)} of full thread` : '',
  ];
}

export function assumed({ shearGiven }: EngagementAnswer): string[] {
  return [
    'The smallest screw (6g or 2A) in the largest hole of the class; every thread carries alike, then the margin.',
    shearGiven
      ? 'The shear strength is yours.'
      : 'Strengths of screw and metal from memory: the certificate rules.',
    `Static stripping only: no fatigue, shaking, creep or heat. ${NOT_A_RATING.defer}`,
  ];
}
