/** Numbers of the lesson on how deep is enough, from the core's own comparison of screw and thread. */

import { SCREW_STRENGTH, type ScrewGrade } from '../../../core/engagement/screws';
import { ENGAGEMENT_MARGIN } from '../../../core/engagement/strip';
import type { MaterialId } from '../../../core/material/material';
import { roomInPitches } from '../../../core/hole/rules';
import type { Bars } from '../../chart/bars';
import { engagementOf, threadOf } from '../../rules/reckon';
import { bothLengths, decimals, length, materialName } from '../../words';
import { METALS, PICK_METAL, PICK_SCREW } from '../../words/en/howDeep';
import { materialShort } from '../../words/names';
import { fill, type Values } from '../../words/template';
import type { Pick } from '../PickOne';
import { numberOf, planned } from '../planned';
import { CHART_METALS, FOOT, JOINTS, TRY_METALS, TRY_SCREWS, type Joint } from './jobs';
import { FROM_TO } from '../../words/en/lesson';
import { say } from '../../words/say';

export const needed = ({ thread, screw, material }: Omit<Joint, 'drawn'>) =>
  engagementOf(thread, screw, material);

/** One bar a metal, in diameters: from the length that just matches to the most margin, the least as a point. */
export function metalBars(): Bars {
  const { thread, screw } = JOINTS.bracket;
  return {
    title: METALS.title,
    subtitle: fill(METALS.subtitle, { thread, screw }, 'mm'),
    description: METALS.description,
    axis: { label: METALS.axis, unit: METALS.unit, write: (value) => decimals(value, 1, 1) },
    rows: CHART_METALS.map((material) => {
      const { inDiameters } = needed({ thread, screw, material });
      return {
        label: materialName(material),
        low: inDiameters.matching,
        mid: inDiameters.specify.min,
        high: inDiameters.specify.max,
        strong: material === JOINTS.bracket.material,
      };
    }),
    rowsAre: METALS.rows,
    fromZero: true,
    bands: METALS.bands,
  };
}

function told(template: string, joint: Omit<Joint, 'drawn'>, more: Values) {
  const { matching, specify, inDiameters } = needed(joint);
  const values = {
    material: materialShort(joint.material),
    matching,
    diameters: inDiameters.matching,
    least: specify.min,
    most: specify.max,
    ...more,
  };
  return { mm: fill(template, values, 'mm'), in: fill(template, values, 'in') };
}

export const metalPicks: readonly Pick[] = TRY_METALS.map((material: MaterialId) => ({
  value: material,
  label: materialShort(material),
  said: told(PICK_METAL.said, { ...JOINTS.bracket, material }, {}),
}));

export const screwPicks: readonly Pick[] = TRY_SCREWS.map((screw: ScrewGrade) => ({
  value: screw,
  label: screw,
  said: told(
    PICK_SCREW.said,
    { ...JOINTS.bracket, screw },
    { grade: screw, strength: SCREW_STRENGTH[screw] },
  ),
}));

const bracket = needed(JOINTS.bracket);
const block = needed(JOINTS.block);
const soft = needed({ ...JOINTS.bracket, material: 'al-cast' });
const foot = planned(FOOT);
const footDepth = FOOT.hole.kind === 'blind' ? (FOOT.hole.limit?.depth ?? 0) : 0;
const { pitch, diameter } = threadOf(JOINTS.bracket.thread);

export const deepFacts = {
  least: decimals(ENGAGEMENT_MARGIN.least, 2),
  most: decimals(ENGAGEMENT_MARGIN.most, 2),
  bracket: {
    drawn: bothLengths(JOINTS.bracket.drawn),
    drawnDiameters: decimals(JOINTS.bracket.drawn / diameter, 0),
    matching: bothLengths(bracket.matching),
    ask: say(FROM_TO, {
      from: length(bracket.specify.min, 'mm'),
      to: bothLengths(bracket.specify.max),
    }),
    past: bothLengths(JOINTS.bracket.drawn - bracket.specify.max),
    spare: decimals(JOINTS.bracket.drawn / bracket.matching, 1),
    rule: bothLengths(2 * diameter),
    ruleTimes: decimals((2 * diameter) / bracket.matching, 1),
  },
  block: {
    drawn: bothLengths(JOINTS.block.drawn, 'in'),
    matching: bothLengths(block.matching, 'in'),
    ask: say(FROM_TO, {
      from: length(block.specify.min, 'in'),
      to: bothLengths(block.specify.max, 'in'),
    }),
    times: decimals(JOINTS.block.drawn / block.matching, 2),
  },
  soft: {
    matching: soft.matching,
    matchingText: bothLengths(soft.matching),
    least: soft.specify.min,
    leastText: bothLengths(soft.specify.min),
    most: soft.specify.max,
  },
  foot: {
    asked: bothLengths(FOOT.fullThread ?? 0),
    depth: bothLengths(footDepth),
    room: decimals(roomInPitches(footDepth, FOOT.fullThread ?? 0, pitch), 0),
    to: bothLengths(numberOf(foot.remedies, 'deeper-hole', 'to')),
    shorter: bothLengths(numberOf(foot.remedies, 'shorter-thread', 'to')),
    strength: decimals(numberOf(foot.remedies, 'shorter-thread', 'strength'), 2),
  },
} as const;
